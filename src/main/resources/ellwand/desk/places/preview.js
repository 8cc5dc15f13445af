// A print looked at before it is printed: all its pages small, one of them large.

import {asked, get, text} from '../server.js';
import {h} from '../draw.js';

/** What each room shows, or waits for: only what was asked for last is shown. */
const wanted = new WeakMap();

/** Shows what comes of an answer, unless something else was asked for meanwhile; nothing where it is refused. */
async function shown(room, title, words, answer, made) {
  wanted.set(room, answer);
  room.replaceChildren(h('h2', {}, title), h('p', {role: 'status'}, words));
  if (room.getBoundingClientRect().top < 0) room.scrollIntoView();
  try {
    const parts = made(await answer);
    if (wanted.get(room) === answer) room.replaceChildren(h('h2', {}, title), ...parts);
  } catch (error) {
    if (wanted.get(room) === answer) room.replaceChildren();
    throw error;
  }
}

/**
 * @param query what the desk makes the PDF from
 * @param name of the file when it is saved
 */
export const pagesOf = (room, title, query, name) => shown(room, title, 'Laying out the pages ...', get('/job/pages', query), ({count}) => {
  const address = '/job/print?' + asked(query);
  const page = (number, dots) => '/job/page?' + asked({...query, number, dots});
  const sheet = h('div', {class: 'sheet'});
  const many = h('div', {class: 'pages'});
  let at = 1;
  const turn = to => {
    at = to;
    sheet.replaceChildren(
        h('div', {class: 'row'},
            count > 1 ? h('button', {disabled: at === 1, onclick: () => turn(at - 1)}, 'Page before') : '',
            count > 1 ? h('button', {disabled: at === count, onclick: () => turn(at + 1)}, 'Next page') : '',
            h('span', {role: 'status'}, `Page ${at} of ${count}`)),
        h('img', {src: page(at, 1400), alt: `Page ${at} of ${count}`}));
    many.querySelectorAll('button').forEach((button, i) => button.setAttribute('aria-current', i + 1 === at ? 'page' : 'false'));
  };
  if (count > 1) {
    many.append(...Array.from({length: count}, (_, i) => h('button', {'aria-label': `Page ${i + 1}`, onclick: () => turn(i + 1)},
        h('img', {src: page(i + 1, 240), alt: '', loading: 'lazy'}), String(i + 1))));
  }
  turn(1);
  return [
    h('div', {class: 'row'}, h('a', {class: 'button', href: address, target: '_blank', rel: 'noopener'}, 'Open to print'), h('a', {href: address, download: name}, `download ${name}`)),
    many, sheet];
});

/** A drawing; fetched first, so that what is refused is told. */
export const picture = (room, title, address) => shown(room, title, 'Drawing ...', text(address), () =>
  [h('img', {src: address, alt: `Drawing ${title}`})]);

export const words = (room, title, address) => shown(room, title, 'Writing ...', text(address), said =>
  [h('pre', {class: 'said', tabindex: 0}, said)]);
