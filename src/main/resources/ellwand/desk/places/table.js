// Table: the marker on the cloth, watched while it is sought, moved by hand.

import {h, renew, say} from '../draw.js';
import {sentence} from '../server.js';
import {FOLDS, foldPicture} from './cloths.js';
import * as boards from './table/board.js';
import {groups, told} from './table/copies.js';
import {hands} from './table/hands.js';
import * as left from './table/left.js';
import {tape} from './table/measure.js';

const KEYS = [
  ['Page up, Page down', 'to the next or the last piece; Home, End: to the first, the very last'],
  ['Enter', 'choose the piece; with Shift: choose it too'],
  ['Arrows', 'push it up to its neighbours; with Shift: farther; with Alt: whatever lies there'],
  ['R', 'turn round'],
  ['P', 'pin, or take the pin out'],
  ['X', 'change places: two that are chosen, or with the next you choose'],
  ['+, -, 0', 'nearer, farther, all of it; Ctrl with arrows: along the cloth'],
  ['M', 'measure'],
  ['Escape', 'let go'],
];

let cloth = null;
let chosen = new Set();
let waiting = null;
let several = false;
let exactly = false;
let trying = false;
let showsLeft = false;
let measuring = null;
let sought = null;
let on, tools, hand, view, ways, about, findings, legend, rest, prints;

const table = desk => desk.tables.get(cloth);

export async function show(desk, place) {
  cloth = desk.tables.has(cloth) ? cloth : [...desk.tables.keys()][0];
  [chosen, waiting, measuring, exactly] = [new Set(), null, null, false];
  on = boards.board();
  tools = group('What to do');
  hand = group('By hand');
  view = group('What to see');
  ways = h('div', {});
  about = h('p', {class: 'about', role: 'status'});
  findings = h('div', {'aria-live': 'polite'});
  legend = h('div', {});
  rest = h('div', {});
  prints = h('div', {});
  place.append(tools, ways, hand, on.svg, view, about, h('div', {class: 'two'}, h('div', {}, findings, rest), h('aside', {}, legend, prints)),
      h('details', {class: 'keys'}, h('summary', {}, 'Keys'), h('dl', {}, KEYS.flatMap(([key, does]) => [h('dt', {}, key), h('dd', {}, does)]))));
  hands(on, {
    touched: (i, more) => touched(desk, i, more || several),
    dragged: (i, x, y, alt) => dragged(desk, i, x, y, alt),
    key: (i, event) => key(desk, i, event),
    tape: () => measuring,
    together,
    place: i => table(desk)?.marker?.copies[i],
    over: i => over(desk, i),
  });
  if (table(desk)?.marker) await refresh(desk);
  draw(desk);
}

const group = name => h('div', {class: 'row', role: 'group', 'aria-label': name});

/** Fetches shapes that are not known yet; all else may be newer here than there. */
async function refresh(desk) {
  const known = [...desk.tables.values()].every(at => (at.marker?.copies ?? []).every(copy => at.marker.shapes[copy.shape]));
  if (known) return;
  for (const one of await desk.get('/job/tables')) {
    const marker = desk.tables.get(one.goods.name)?.marker;
    if (marker && one.marker) marker.shapes = {...marker.shapes, ...one.marker.shapes};
  }
}

export function changed(desk) {
  if (!desk.tables.has(cloth)) take(desk, [...desk.tables.keys()][0]);
  else draw(desk);
}

export async function heard(desk, kind, what) {
  if (!what.cloth) return;
  if (kind === 'marker') await desk.attempt(() => refresh(desk));
  if (what.cloth !== cloth) return;
  const at = table(desk);
  if (kind === 'searched' && sought && sought === at.marker && !at.problems.length) say('Nothing shorter was found.');
  if (kind === 'searched') sought = null;
  draw(desk);
}

function take(desk, name) {
  cloth = name;
  letGo();
  stopMeasuring();
  on.view = null;
  draw(desk);
}

function draw(desk) {
  const at = table(desk);
  if (!at) return;
  const count = at.marker?.copies.length ?? 0;
  chosen = new Set([...chosen].filter(i => i < count));
  boards.draw(on, desk, at, chosen, waiting);
  drawTools(desk, at);
  drawWays(desk, at);
  drawHand(desk, at);
  drawView(desk, at);
  drawFindings(desk, at);
  drawLegend(desk, at);
  drawPrints(desk);
  if (showsLeft && at.marker) desk.attempt(() => left.show(on, desk, cloth, rest));
  else left.forget(on, rest);
}

const button = (words, deed, more = {}) => h('button', {onclick: deed, ...more}, words);

function drawTools(desk, at) {
  const ask = (path, body) => () => {
    if (body) sought = table(desk).marker;
    desk.attempt(() => desk.post(path, {cloth}, body));
  };
  renew(tools, () => [
      desk.tables.size > 1
        ? h('label', {}, 'Cloth', h('select', {onchange: event => take(desk, event.target.value)},
            [...desk.tables.keys()].map(name => h('option', {selected: name === cloth}, name))))
        : '',
      at.searching
        ? button('Keep this one', ask('/job/table/keep'), {class: 'main'})
        : button(at.marker ? 'Look for a shorter one' : 'Lay', ask('/job/table/lay', {seconds: 60}), {class: 'main'}),
      button('Tidy from here', ask('/job/table/tidy', {seconds: 20}), {disabled: !at.marker || at.searching}),
      button('Try another way', () => { trying = !trying; draw(desk); }, {'aria-expanded': String(trying)}),
      button('Put back', ask('/job/table/undo'), {disabled: !at.marker?.undo})]);
}

/** Every way in which the cloth can lie, and why it cannot lie in others. */
function drawWays(desk, at) {
  const ask = body => () => {
    trying = false;
    desk.attempt(() => desk.post('/job/table/lay', {cloth}, {seconds: 60, ...body}));
  };
  renew(ways, () => trying
    ? h('section', {class: 'card', 'aria-label': 'Another way'},
        h('p', {class: 'hint'}, 'The marker that lies here now can be put back. More ways to choose from: Cloths, How it is folded.'),
        h('div', {class: 'choices'}, at.goods.ways.map(way => h('button', {class: 'choice way', disabled: Boolean(way.why), onclick: ask({way: way.name})},
            foldPicture(way.name), h('span', {}, FOLDS[way.name] ?? way.name,
              way.why ? `: ${way.why}` : at.marker?.fold === way.name ? ' (as it lies now)' : '')))),
        h('div', {class: 'row'}, button('Another try', ask({})), h('span', {class: 'hint'}, 'Every search begins differently; what is shorter takes the place of this one.')))
    : '');
}

function drawHand(desk, at) {
  const some = chosen.size > 0;
  const pinned = some && [...chosen].every(i => at.marker.pinned.includes(i));
  renew(hand, () => [
      button('Turn round', () => step(desk, {do: 'turn', copies: [...chosen], degrees: 180}), {disabled: !some}),
      button(pinned ? 'Take pin out' : 'Pin', () => pin(desk), {disabled: !some, 'aria-keyshortcuts': 'P'}),
      button(waiting ? 'Change places now' : chosen.size === 2 ? 'Change places' : 'Change places with ...', () => exchange(desk),
          {disabled: !some, 'aria-keyshortcuts': 'X'}),
      button('Several', () => { several = !several; draw(desk); }, {'aria-pressed': String(several)}),
      button('Exactly', () => { exactly = !exactly; draw(desk); }, {'aria-pressed': String(exactly), title: 'Pieces stay where they are put, whatever lies there'}),
      button('Let go', () => { letGo(); draw(desk); }, {disabled: !some && !waiting}),
      h('span', {class: 'hint'}, waiting
        ? 'Now choose what changes places with it.'
        : !some ? 'Choose a piece to move it.'
          : exactly ? 'Drag or arrow keys put it anywhere, also on others.'
            : 'Drag or arrow keys push it up to its neighbours; with Exactly, or Alt, it goes where you put it.')]);
}

function drawView(desk, at) {
  renew(view, () => [
      button('+', () => boards.zoom(on, 1 / 1.4), {'aria-label': 'Nearer'}),
      button('\u2212', () => boards.zoom(on, 1.4), {'aria-label': 'Farther'}),
      button('All of it', () => boards.look(on, null)),
      button('Measure', () => measure(desk), {'aria-pressed': String(Boolean(measuring))}),
      button('Left over', () => { showsLeft = !showsLeft; draw(desk); }, {'aria-pressed': String(showsLeft), disabled: !at.marker})]);
}

/** A step by hand ends the search. */
function step(desk, body) {
  sought = null;
  return desk.attempt(() => desk.post('/job/table/step', {cloth}, body));
}

function letGo() {
  chosen = new Set();
  waiting = null;
}

function touched(desk, i, more) {
  if (i === null) {
    letGo();
  } else if (waiting && !waiting.has(i)) {
    chosen = more || waiting.size > 1 ? new Set(chosen).add(i) : new Set([i]);
    if (waiting.size === 1 && !more) exchange(desk);
  } else if (more) {
    if (!chosen.delete(i)) chosen.add(i);
  } else {
    chosen = chosen.size === 1 && chosen.has(i) ? new Set() : new Set([i]);
  }
  if (i !== null) over(desk, i);
  draw(desk);
}

const together = i => chosen.has(i) ? [...chosen] : [i];

function dragged(desk, i, along, across, alt) {
  const copies = together(i);
  if (!chosen.has(i)) chosen = new Set([i]);
  step(desk, {do: exactly || alt ? 'move' : 'slide', copies, along, across}).then(done => {
    // It is drawn when it is heard of; who draws it before sees it jump back.
    if (!done || table(desk)?.told >= done.told) draw(desk);
  });
}

function pin(desk) {
  const all = [...chosen].every(i => table(desk).marker.pinned.includes(i));
  step(desk, {do: all ? 'unpin' : 'pin', copies: [...chosen]});
}

/** Two that are chosen, or what was chosen before with what is chosen now. */
function exchange(desk) {
  const pinned = [...chosen].find(i => table(desk).marker.pinned.includes(i));
  if (pinned !== undefined) {
    say(`${table(desk).marker.copies[pinned].piece} is pinned where it lies. Take its pin out to move it.`);
    return;
  }
  if (!waiting && chosen.size !== 2) {
    waiting = chosen;
    chosen = new Set();
  } else if (chosen.size) {
    const [copies, others] = waiting ? [[...waiting], [...chosen]] : [...chosen].map(i => [i]);
    step(desk, {do: 'exchange', copies, others});
    waiting = null;
  }
  draw(desk);
}

function measure(desk) {
  if (measuring) stopMeasuring();
  else measuring = tape(on, desk, () => table(desk).marker, words => { about.textContent = words; });
  draw(desk);
}

function stopMeasuring() {
  measuring?.end();
  measuring = null;
  if (about) about.textContent = '';
}

/** Whether the key was for the table. */
function key(desk, i, event) {
  const at = table(desk);
  if (measuring?.key(event)) return true;
  const ways = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};
  if (ways[event.key] && event.ctrlKey) {
    const seen = on.view ?? on.full;
    boards.pan(on, ways[event.key][0] * seen.w / 8, -ways[event.key][1] * seen.h / 8);
    return true;
  }
  if (ways[event.key] && i !== null) {
    const far = event.shiftKey ? 50 : 5;
    const [along, across] = ways[event.key].map(way => way * far);
    dragged(desk, i, along, across, event.altKey);
    return true;
  }
  if (event.ctrlKey || event.metaKey) return false;
  const count = at.marker?.copies.length ?? 0;
  const order = place => on.drawn[place]?.g.focus({preventScroll: true});
  const deeds = {
    Enter: () => touched(desk, i, event.shiftKey || several),
    ' ': () => touched(desk, i, event.shiftKey || several),
    r: () => deedWith(i, () => step(desk, {do: 'turn', copies: [...chosen], degrees: 180})),
    p: () => deedWith(i, () => pin(desk)),
    x: () => deedWith(i, () => exchange(desk)),
    PageDown: () => order(next(desk, i, 1)),
    PageUp: () => order(next(desk, i, -1)),
    Home: () => order(next(desk, null, 1)),
    End: () => order(next(desk, null, -1)),
    '+': () => boards.zoom(on, 1 / 1.4),
    '-': () => boards.zoom(on, 1.4),
    0: () => boards.look(on, null),
    m: () => measure(desk),
    Escape: () => { letGo(); stopMeasuring(); draw(desk); },
  };
  const deed = deeds[event.key.length === 1 ? event.key.toLowerCase() : event.key];
  if (!deed || (i === null && ['Enter', ' ', 'r', 'p', 'x'].includes(event.key.toLowerCase())) || !count) return false;
  deed();
  return true;
}

/** With the piece in hand, and those that are chosen with it. */
function deedWith(i, deed) {
  chosen = new Set(together(i));
  deed();
}

/** From the cut end on, across within a hand's breadth. */
function next(desk, i, way) {
  const marker = table(desk).marker;
  const order = marker.copies.map((copy, k) => k)
      .sort((a, b) => marker.copies[a].x - marker.copies[b].x || marker.copies[a].y - marker.copies[b].y);
  const at = i === null ? (way > 0 ? -1 : order.length) : order.indexOf(i);
  return order[(at + way + order.length) % order.length];
}

function over(desk, i) {
  const marker = table(desk)?.marker;
  if (measuring) return;
  const words = i !== undefined && i !== null && marker?.copies[i] ? told(desk, marker, Number(i)) : '';
  if (words) about.textContent = words[0].toUpperCase() + words.slice(1) + '.';
}

function drawFindings(desk, at) {
  const all = at.marker?.findings ?? [];
  const fresh = h('div', {},
      ...(at.problems ?? []).map(p => h('p', {class: 'wrong'}, sentence(p))),
      all.length
        ? h('section', {}, h('h2', {}, 'This cannot be cut:'), h('ul', {}, all.slice(0, 20).map(f =>
            h('li', {}, button(f.words, () => { chosen = new Set(f.copies); draw(desk); })))),
          all.length > 20 ? h('p', {}, `and ${all.length - 20} more`) : '',
          h('p', {class: 'hint'}, 'Tidy from here parts what overlaps; Put back takes the last step back.'))
        : h('p', {}, at.marker ? `${at.marker.fold}, ${at.marker.length} of cloth, ${at.marker.used} used. Every rule is kept.` : 'Nothing lies here yet.'));
  // It is read out when it changes, so it changes only when there is news.
  if (findings.textContent !== fresh.textContent || all.length) renew(findings, () => [...fresh.childNodes]);
}

/** The key to the drawing, and a way to choose what belongs together. */
function drawLegend(desk, at) {
  const marker = at.marker;
  renew(legend, () => (marker ? groups(desk, marker) : []).map(({name, sets}) => h('fieldset', {}, h('legend', {}, `Choose by ${name.toLowerCase()}`),
      h('div', {class: 'choices'}, sets.map(({words, value, copies}) => button(
          [name === 'Piece' ? boards.swatch(marker, value) : '', words, copies.length > 1 ? ` (${copies.length})` : ''],
          () => {
            const all = copies.every(i => chosen.has(i));
            chosen = several || waiting ? new Set([...chosen, ...copies]) : new Set(all ? [] : copies);
            draw(desk);
          },
          {class: 'small', 'aria-pressed': String(copies.every(i => chosen.has(i)))}))))));
}

/** Everything that can be printed: of this cloth once it can be cut, of all once all can. */
function drawPrints(desk) {
  const missing = [...desk.tables].filter(([, at]) => !at.marker || at.marker.findings.length).map(([name]) => name);
  const file = name => '/job/file?' + new URLSearchParams({name: desk.name, file: name});
  const page = paper => '/job/print?' + new URLSearchParams({name: desk.name, of: 'marker', cloth, paper});
  const own = missing.includes(cloth) ? [] : [
    ['Marker', file(`${cloth}.pdf`)], ['Marker, SVG', file(`${cloth}.svg`)],
    ['Full size, A4', page('A4')], ['Full size, A0', page('A0')],
    ['Plotter, HP-GL', file(`${cloth}.plot.hpgl`)], ['Plotter, DXF', file(`${cloth}.plot.dxf`)],
  ];
  const whole = missing.length ? [] : [['Cut sheet', file('cut-sheet.pdf')], ['Shopping list', file('shopping-list.pdf')]];
  const waits = own.length ? 'Cut sheet and shopping list' : 'Everything to print';
  renew(prints, () => h('section', {'aria-label': 'Prints'}, h('h2', {}, 'Prints'),
      h('ul', {class: 'plain prints'}, [...own, ...whole].map(([words, href]) => h('li', {}, h('a', {href, target: '_blank'}, words)))),
      missing.length ? h('p', {class: 'hint'}, `${waits}: once ${(own.length ? missing : [cloth]).join(' and ')} can be cut.`) : ''));
}
