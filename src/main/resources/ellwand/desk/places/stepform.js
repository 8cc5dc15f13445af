// A form for one step of an alteration; edges and points are chosen from lists or on the drawing.

import {h} from '../draw.js';
import {said, share} from '../measure.js';
import {KINDS, kindOf} from './steps.js';

/**
 * @param piece as the desk describes it, with its edges and points
 * @param pieces all of them
 * @param step to begin with, or nothing
 * @param keep takes the finished step
 * @param pick asks that what is clicked on the drawing next goes to a field
 */
export function stepForm(desk, {piece, pieces, step, keep, pick}) {
  const fields = h('div', {class: 'fields narrow'});
  let kind = step ? kindOf(step) : KINDS[0];
  if (!kind) return h('p', {class: 'hint'}, 'This step is written in a way that the form does not know. It can be taken out, or changed in the file.');
  let values = [];
  const groups = [...new Set(KINDS.map(one => one.group))];
  const what = h('select', {name: 'kind', onchange: () => { kind = KINDS[what.value]; fill(); }}, groups.map(group =>
    h('optgroup', {label: group}, KINDS.map((one, i) => one.group === group ? h('option', {value: i, selected: one === kind}, one.group === 'Mark a point' ? `Mark a point ${one.label}` : one.label) : null))));

  function fill() {
    pick(null);
    values = kind.fields.map(field => FIELDS[field.as](field, {desk, piece, pieces, pick, now: step && first(step, field, kind)}));
    fields.replaceChildren(...values.map(value => value.element));
  }
  fill();

  const away = event => { if (!event.target.dataset.pick) pick(null); };
  return h('form', {class: 'step', onfocusin: away, onsubmit: event => {
    event.preventDefault();
    const made = {};
    kind.fields.forEach((field, i) => {
      const value = values[i].value();
      if (value === null) return;
      made[field.key] = made[field.key] === undefined ? value : [made[field.key], value];
    });
    pick(null);
    event.currentTarget.dataset.done = 'yes';
    keep(made);
  }}, h('label', {}, 'What is done', what), fields,
  h('div', {class: 'row'}, h('button', {class: 'main', type: 'submit'}, step ? 'Change the step' : 'Do it')));
}

/** Of two fields with one key each has its own item. */
function first(step, field, kind) {
  const same = kind.fields.filter(one => one.key === field.key);
  return same.length > 1 ? step[field.key][same.indexOf(field)] : step[field.key];
}

const label = (field, ...inside) => h('label', {}, field.label + (field.optional ? ' (if you like)' : ''), ...inside);

function typed(field, {desk, now}, put, hint, mode) {
  const input = h('input', {name: field.key, value: now ?? '', placeholder: hint, required: !field.optional, inputmode: mode});
  return {element: label(field, input), value: () => input.value.trim() === '' ? null : put(input.value, desk.job)};
}

/** One of a list, or what is clicked on the drawing while the field waits for it. */
function chosen(field, {pick, now, piece}, all, kind) {
  const list = now && !all.includes(now) ? [...all, now] : all;
  const select = h('select', {name: field.key, required: !field.optional, 'data-pick': kind !== 'choice' && 'yes', onfocus: () => pick(take)},
      h('option', {value: ''}, kind === 'edge' ? 'click an edge' : kind === 'point' ? 'click a point' : field.optional ? 'as usual' : 'choose'), list.map(one => h('option', {value: one, selected: one === now}, one)));
  const take = {kind, piece: piece.name, put: name => { select.value = name; select.focus(); }};
  return {element: label(field, select), value: () => select.value || null};
}

/** Several, one after another. */
function several(field, about, all, kind) {
  const names = [about.now ?? []].flat();
  const list = h('span', {class: 'chips'});
  const put = name => { if (name && !names.includes(name)) names.push(name); draw(); };
  const select = h('select', {'aria-label': `${field.label}: one more`, 'data-pick': 'yes', onfocus: () => about.pick({kind, piece: about.piece.name, put}), onchange: () => { put(select.value); }},
      h('option', {value: ''}, `click ${kind === 'edge' ? 'edges' : 'points'}`), all.map(one => h('option', {value: one}, one)));
  const draw = () => {
    list.replaceChildren(...names.map((one, i) => h('button', {type: 'button', title: 'take it off', 'aria-label': `${one}: take it off`, onclick: () => { names.splice(i, 1); draw(); }}, one)));
    select.value = '';
    select.required = !field.optional && names.length < (field.two ? 2 : 1);
  };
  draw();
  return {element: h('div', {class: 'field'}, label(field, select), list), value: () => names.length === 0 ? null : names.length === 1 && !field.two ? names[0] : [...names]};
}

const edges = piece => piece.edges.map(edge => edge.name);
const points = piece => (piece.points ?? []).map(point => point.name);

/** How each kind of field is asked for. */
const FIELDS = {
  name: (field, about) => typed(field, about, text => text.trim(), ''),
  names: (field, about) => {
    const inputs = [0, 1].map(i => h('input', {name: `${field.key} ${i}`, value: about.now?.[i] ?? '', required: true, 'aria-label': i ? 'lower part' : 'upper part'}));
    return {element: h('label', {}, field.label, ...inputs), value: () => inputs.map(input => input.value.trim())};
  },
  length: (field, about) => typed(field, about, said, 'such as 2 cm', 'text'),
  reach: (field, about) => typed(field, about, share, '2 cm, or 1/2', 'text'),
  count: (field, about) => typed(field, about, text => Number.isFinite(+text) ? +text : text, 'such as 3', 'numeric'),
  choice: (field, about) => chosen(field, {...about, pick: () => {}}, field.words, 'choice'),
  edge: (field, about) => chosen(field, about, edges(about.piece), 'edge'),
  edges: (field, about) => several(field, about, edges(about.piece), 'edge'),
  point: (field, about) => chosen(field, about, points(about.piece), 'point'),
  points: (field, about) => several(field, about, points(about.piece), 'point'),
  elsewhere: (field, about) => chosen(field, {...about, piece: {name: null}}, about.pieces.filter(one => one !== about.piece).flatMap(one => one.edges.map(edge => `${one.name}.${edge.name}`)), 'edge'),
  manner: (field, about) => chosen(field, {...about, pick: () => {}}, ['free', ...edges(about.piece).flatMap(edge => [`square to ${edge}`, `along ${edge}`])], 'choice'),
};
