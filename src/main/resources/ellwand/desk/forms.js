// Fields that take what is typed, and say what is wrong with it beside them.

import {h} from './draw.js';
import {Refused} from './server.js';

/** Where a form says what was refused; attempt() does something and tells it there. */
export function judged(desk) {
  const wrong = h('p', {class: 'wrong', role: 'alert'});
  const attempt = (deed, input) => desk.attempt(async () => {
    try {
      wrong.textContent = '';
      input?.removeAttribute('aria-invalid');
      return await deed();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      input?.setAttribute('aria-invalid', 'true');
      wrong.textContent = error.message;
      return undefined;
    }
  });
  return {wrong, attempt};
}

/** A field whose text counts once it is left or Enter is pressed. */
export const field = (label, value, put, more = {}) =>
  h('label', {}, label, h('input', {value: value ?? '', ...more, onchange: event => put(event.target.value.trim(), event.target)}));

/** A name with a button to change it. */
export const nameForm = (what, name, put) =>
  h('form', {class: 'row', onsubmit: event => {
    event.preventDefault();
    const input = event.target.elements.name;
    if (input.value.trim() !== name) put(input.value.trim(), input);
  }}, h('label', {}, what, h('input', {name: 'name', value: name, required: true, maxlength: 60})), h('button', {type: 'submit'}, 'Rename'));

/** Takes files that are let go over an element. */
export function dropped(element, take) {
  element.addEventListener('dragover', event => { event.preventDefault(); element.classList.add('over'); });
  element.addEventListener('dragleave', () => element.classList.remove('over'));
  element.addEventListener('drop', event => {
    event.preventDefault();
    element.classList.remove('over');
    if (event.dataTransfer.files.length) take(event.dataTransfer.files);
  });
}
