// What is told of a piece, an edge or a point at the side of the table, and how it is changed.

import {h} from '../draw.js';
import {field, nameForm} from '../forms.js';
import {stepForm} from './stepform.js';

const GRAINS = {along: 'along the warp', across: 'across', either: 'along or across', bias: 'on the bias', any: 'any way'};

const rename = (about, what, name, chosen) => (to, input) => about.judge.attempt(async () => {
  about.renamed(chosen(to));
  try {
    await about.desk.take(await about.desk.post('/job/rename', {}, {what, piece: about.piece.name, name, to}));
  } catch (error) {
    about.renamed(chosen(name));
    throw error;
  }
}, input);

const back = about => h('button', {onclick: () => about.choose({})}, `To ${about.piece.name}`);

/** One edge: name, length, allowance, notches. */
export function edgePanel(about, edge, mm) {
  const {desk, piece, entry} = about;
  const {wrong, attempt} = about.judge;
  const at = [...about.at, 'edges', edge.name];
  const put = rename(about, 'edge', edge.name, to => ({piece: piece.name, edge: to}));
  // As it was written, since what is shown is rounded.
  const written = entry.edges?.[edge.name]?.allowance;
  const allowance = h('input', {name: 'allowance', value: typeof written === 'string' ? written : edge.allowance});
  const folded = piece.fold === edge.name;
  return [
    h('h2', {}, `${piece.name}: ${edge.name}`),
    h('p', {}, `Sewn length ${edge.length}.` + (folded ? ' The piece is cut on the fold here.' : '')
        + (edge.turnedBack ? ' Its allowance is turned back, as a hem.' : '')),
    wrong,
    nameForm('Name', edge.name, put),
    edge.named
      ? h('form', {class: 'row', onsubmit: event => { event.preventDefault(); attempt(() => desk.change([...at, 'allowance'], about.length(allowance.value)), allowance); }},
          h('label', {}, 'Seam allowance', allowance), h('button', {class: 'main', type: 'submit'}, 'Change'))
      : h('p', {class: 'hint'}, `Allowance ${edge.allowance}, as the whole piece has it. Give the edge a name to give it one of its own.`),
    edge.named
      ? h('label', {class: 'tick'}, h('input', {type: 'checkbox', checked: edge.turnedBack,
          onchange: event => attempt(() => desk.change([...at, 'turned-back'], event.target.checked || null), event.target)}), 'Turned back, as a hem')
      : '',
    ...notches(about, edge, mm, attempt, entry.notches ?? []),
    h('div', {class: 'row'}, back(about)),
  ];
}

function notches(about, edge, mm, attempt, all) {
  const {desk} = about;
  const list = [...about.at, 'notches'];
  const mine = all.map((notch, i) => ({notch, i})).filter(one => one.notch.edge === edge.name);
  const put = (i, key, value, input) => attempt(() => desk.change([...list, String(i), key], value), input);
  const row = ({notch, i}, n) => h('li', {class: 'row'},
      field(`Notch ${n + 1} at`, notch.at, (text, input) => put(i, 'at', about.length(text), input), {size: 8, 'data-notch': i}),
      h('label', {}, 'Kind', h('select', {onchange: event => put(i, 'double', event.target.value === 'double' || null, event.target)},
          h('option', {value: 'single', selected: !notch.double}, 'one stroke'), h('option', {value: 'double', selected: notch.double}, 'two strokes'))),
      field('Deep', notch.depth, (text, input) => put(i, 'depth', text === '' ? null : about.length(text), input), {size: 6, placeholder: '3 mm'}),
      h('button', {'aria-label': `Take notch ${n + 1} off`, onclick: () => attempt(() => desk.change([...list, String(i)], null))}, 'Take off'));
  const place = h('input', {name: 'at', required: true, size: 8, value: mm === null || mm === undefined ? '' : about.show(mm), placeholder: 'such as 7.5 cm'});
  const kind = h('select', {name: 'strokes'}, h('option', {value: ''}, 'one stroke'), h('option', {value: 'double'}, 'two strokes'));
  const add = h('form', {class: 'row', onsubmit: event => {
    event.preventDefault();
    const notch = {edge: edge.name, at: about.length(place.value), ...(kind.value ? {double: true} : {})};
    attempt(() => all.length
      ? desk.change([...list, String(all.length)], notch)
      : desk.change(list, [notch]), place);
  }}, h('label', {}, 'Another at', place), h('label', {}, 'Kind', kind), h('button', {type: 'submit'}, 'Add a notch'));
  return [
    h('h3', {}, 'Notches'),
    mine.length ? h('ul', {class: 'plain'}, mine.map(row)) : '',
    add,
    h('p', {class: 'hint'}, 'Measured along the sewing line from the first point of the edge. Click the edge once more where the notch should be.'),
  ];
}

/** One point: its name. */
export function pointPanel(about, point) {
  const {wrong} = about.judge;
  const put = rename(about, 'point', point.name, to => ({piece: about.piece.name, point: to}));
  return [
    h('h2', {}, `${about.piece.name}: point ${point.name}`), wrong,
    nameForm('Name', point.name, put),
    h('div', {class: 'row'}, back(about)),
  ];
}

/** How a piece is cut, and altered step by step. */
export function piecePanel(about) {
  const {desk, piece, entry} = about;
  const {wrong, attempt} = about.judge;
  const put = rename(about, 'piece', piece.name, to => ({piece: to}));
  return [
    h('h2', {}, piece.name), wrong,
    nameForm('Name', piece.name, put),
    h('h3', {}, 'Cut for one garment'),
    ...Object.keys(desk.job.entries?.cloths ?? {}).map(cloth =>
      field(cloth, entry.cut?.[cloth], (text, input) => attempt(() => desk.change([...about.at, 'cut', cloth], text || null), input),
          {placeholder: 'not from this cloth', 'data-cut': cloth})),
    h('p', {class: 'hint'}, 'Such as 2 (all alike), pair (left and right), or 1 on fold.'),
    h('label', {}, 'Grain', h('select', {onchange: event => attempt(() => desk.change([...about.at, 'grain'], event.target.value))},
        [...new Set([...Object.keys(GRAINS), piece.grain])].map(grain => h('option', {value: grain, selected: grain === piece.grain}, GRAINS[grain] ?? grain)))),
    ...(piece.points ? alterations(about, attempt) : []),
  ];
}

function alterations(about, attempt) {
  const {desk, piece, pieces, entry} = about;
  const steps = entry.alter ?? [];
  const list = [...about.at, 'alter'];
  const room = h('div');
  const form = (step, keep) => room.replaceChildren(stepForm(desk, {piece, pieces, step, pick: about.pick, keep}));
  const add = made => attempt(async () => desk.take(await desk.post('/job/alter', {}, {piece: piece.name, step: made})));
  return [
    h('h3', {}, 'Alterations'),
    steps.length
      ? h('ol', {class: 'steps'}, piece.altered.map((words, i) => h('li', {}, steps[i]?.mark ? `mark ${steps[i].mark}: ${words}` : words, h('div', {class: 'row'},
          h('button', {'aria-label': `Change step ${i + 1}`, onclick: () => form(steps[i], made => attempt(() => desk.change([...list, String(i)], made)))}, 'Change'),
          h('button', {'aria-label': `Take step ${i + 1} out`, onclick: () => attempt(() => desk.change([...list, String(i)], null))}, 'Take out')))))
      : h('p', {class: 'hint'}, 'None yet. The piece is as it was drawn.'),
    h('div', {class: 'row'},
        h('button', {onclick: () => form(null, add)}, 'Add a step'),
        h('button', {disabled: !steps.length, onclick: () => before(about)}, 'See before and after')),
    room,
  ];
}

/** Old and new lines on one another, with what was done. */
function before({desk, size}) {
  const picture = h('img', {src: '/job/before?' + new URLSearchParams({name: desk.name, size, at: Date.now()}), alt: 'Altered pieces before and after'});
  const room = h('dialog', {class: 'large', 'aria-label': 'Before and after'}, picture,
      h('div', {class: 'row'}, h('button', {class: 'main', onclick: () => room.close()}, 'Close')));
  room.addEventListener('close', () => room.remove());
  document.body.append(room);
  room.showModal();
}
