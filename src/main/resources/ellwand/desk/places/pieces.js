// Pieces: all of them to one scale; what is clicked is told, and changed, at the side.

import {h, renew, s, line, box} from '../draw.js';
import {judged} from '../forms.js';
import {said, show as shown} from '../measure.js';
import {room} from './label.js';
import {edgePanel, piecePanel, pointPanel} from './piece.js';

let size = null;
let chosen = null;
let board, side, drawn, judge;

/** How often the pieces were asked for; the last answer counts. */
let asked = 0;

/** A letter is about so wide, in its height. */
const LETTER = .58;

/** Where the words of each piece have room. */
const rooms = new WeakMap();

/** The field that takes what is clicked next, if one waits. */
let waiting = null;

export async function show(desk, place) {
  board = h('div');
  side = h('aside', {class: 'card', 'aria-live': 'polite'});
  judge = judged(desk);
  const sizes = desk.job.sizes;
  size = sizes.some(one => one.name === size) ? size : (sizes.find(one => one.garments) ?? sizes[0]).name;
  const other = desk.job.elsewhere.style;
  place.append(
      other
        ? h('p', {class: 'hint'}, `These pieces are in ${other.file}. What you change here changes for all that use it: ${other.jobs.join(', ')}.`)
        : '',
      sizes.length > 1
        ? h('div', {class: 'row'}, h('label', {}, 'Size shown', h('select', {
            onchange: event => { size = event.target.value; desk.attempt(() => draw(desk)); },
          }, sizes.map(one => h('option', {value: one.name, selected: one.name === size},
              one.name + (one.garments ? ` (${one.garments} wanted)` : ''))))))
        : '',
      h('div', {class: 'two'}, board, side));
  await draw(desk);
}

export const changed = desk => desk.attempt(() => draw(desk));

const outline = piece => piece.cutting ?? piece.edges.flatMap(edge => edge.line);

async function draw(desk) {
  const mine = ++asked;
  const told = await desk.get('/job/pieces', {size});
  if (mine !== asked) return;
  drawn = told;
  drawBoard(desk);
  tell(desk, true);
}

const drawBoard = desk => renew(board, () => pieces(desk));

function pieces(desk) {
  const boxes = drawn.pieces.map(piece => box(outline(piece)));
  const widest = Math.max(...boxes.map(b => b.x1 - b.x0));
  const row = Math.max(widest, Math.sqrt(boxes.reduce((sum, b) => sum + (b.x1 - b.x0) * (b.y1 - b.y0), 0)) * 1.7);
  const gap = 40;
  let x = 0, y = 0, high = 0;
  const groups = drawn.pieces.map((piece, i) => {
    const b = boxes[i];
    if (x > 0 && x + b.x1 - b.x0 > row) {
      x = 0;
      y += high + gap;
      high = 0;
    }
    const at = `translate(${x - b.x0} ${y + b.y1})`;
    x += b.x1 - b.x0 + gap;
    high = Math.max(high, b.y1 - b.y0);
    return group(desk, piece, b, at);
  });
  return s('svg', {
    class: 'board', role: 'group', 'aria-label': `Pieces in size ${size}`,
    viewBox: `-20 -20 ${row + 40} ${y + high + 40}`,
  }, groups);
}

const pressed = deed => event => {
  if (event.key === 'Enter' || event.key === ' ') {
    event.preventDefault();
    deed(event);
  }
};

function group(desk, piece, b, transform) {
  const how = piece.cut.length ? piece.cut.map(c => `${c.cloth} ${c.how}`) : ['only to make others from'];
  const mine = chosen?.piece === piece.name;
  const turned = turn(piece);
  const lines = [{words: piece.name, size: 1}, ...how.map(words => ({words, size: .65}))];
  const arrow = turned === null ? [] : [{long: 4, high: turned % 180 === 0 ? 1 : 4}];
  if (!rooms.has(piece)) {
    const sizes = lines.map(one => ({long: one.words.length * one.size * LETTER, high: one.size * 1.25}));
    rooms.set(piece, room(piece.edges.flatMap(edge => edge.line), piece.lines, [...sizes, ...arrow], Math.max(14, Math.min(24, (b.y1 - b.y0) / 8))));
  }
  const {x: mx, y: top, letters} = rooms.get(piece);
  let down = -top;
  for (const one of lines) {
    one.y = down + letters * one.size;
    down += letters * one.size * 1.25;
  }
  return s('g', {transform},
      mine && piece.before ? s('path', {class: 'before', d: line(piece.before, true)}, s('title', {}, `${piece.name} before it was altered`)) : '',
      piece.cutting ? s('path', {class: 'cutting', d: line(piece.cutting, true)}) : '',
      piece.lines.map(l => s('path', {class: 'inside', d: line(l)})),
      piece.notches.map(n => s('path', {class: 'cutting', d: line(n)})),
      turned === null ? '' : grain(turned, piece.grain === 'either', mx, down + letters * arrow[0].high / 2, letters),
      piece.edges.map(edge => s('g', {
        class: 'edge' + (piece.fold === edge.name ? ' folded' : '') + (is(piece, {edge: edge.name}) ? ' chosen' : ''),
        tabindex: 0, role: 'button',
        'aria-label': `${piece.name}, ${edge.name}: ${edge.length}, allowance ${edge.allowance}`,
        onclick: event => choose(desk, piece, {edge: edge.name, at: along(edge, event)}),
        onkeydown: pressed(() => choose(desk, piece, {edge: edge.name})),
      }, s('path', {class: 'hit', d: line(edge.line)}), s('path', {class: 'sewing', d: line(edge.line)}))),
      s('text', {
        class: 'name', tabindex: 0, role: 'button', 'aria-label': `${piece.name}, how it is cut and altered`,
        x: mx, y: lines[0].y, 'text-anchor': 'middle', 'font-size': letters,
        onclick: () => choose(desk, piece, {}),
        onkeydown: pressed(() => choose(desk, piece, {})),
      }, piece.name),
      lines.slice(1).map(one => s('text', {x: mx, y: one.y, 'text-anchor': 'middle', 'font-size': letters * one.size}, one.words)),
      mine ? (piece.points ?? []).map(point => dot(desk, piece, point, letters, point.x > (b.x0 + b.x1) / 2, point.y > (b.y0 + b.y1) / 2)) : '',
      mine && chosen.spot ? s('circle', {class: 'spot', cx: chosen.spot[0], cy: -chosen.spot[1], r: letters / 4}) : '');
}

/** Its name stands towards the middle of the piece. */
function dot(desk, piece, point, letters, right, above) {
  return s('g', {
    class: 'point' + (is(piece, {point: point.name}) ? ' chosen' : ''), tabindex: 0, role: 'button', 'aria-label': `${piece.name}, point ${point.name}`,
    onclick: () => choose(desk, piece, {point: point.name}),
    onkeydown: pressed(() => choose(desk, piece, {point: point.name})),
  }, s('circle', {class: 'hit', cx: point.x, cy: -point.y, r: letters * .7}), s('circle', {cx: point.x, cy: -point.y, r: letters / 4}),
  s('text', {x: point.x + letters * (right ? -.5 : .5), y: -point.y + letters * (above ? .75 : -.35), 'text-anchor': right ? 'end' : 'start', 'font-size': letters * .55}, point.name));
}

/** How the grain runs on the drawn piece, degrees; null where any way will do. */
function turn(piece) {
  const degrees = {along: 0, across: 90, either: 0, bias: 45}[piece.grain] ?? Number.parseFloat(piece.grain);
  return Number.isFinite(degrees) ? degrees : null;
}

function grain(degrees, either, x, y, letters) {
  const half = letters * 2, head = letters * .35;
  return s('g', {transform: `translate(${x} ${y}) rotate(${-degrees})`, 'aria-hidden': 'true'},
      s('path', {class: 'inside', d: `M${-half} 0H${half}m${-head} ${-head}l${head} ${head}l${-head} ${head}` + (either ? `M0 ${-half / 2}V${half / 2}` : '')}));
}

/** How far along the edge, from its first point as drawn, something was clicked; and where. */
function along(edge, event) {
  const path = event.currentTarget.querySelector('.sewing');
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(path.getScreenCTM().inverse());
  const x = at.x, y = -at.y;
  let best = {far: Infinity}, gone = 0;
  for (let i = 0; i + 3 < edge.line.length; i += 2) {
    const [ax, ay, bx, by] = edge.line.slice(i, i + 4);
    const length = Math.hypot(bx - ax, by - ay);
    const t = length === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length ** 2));
    const spot = [ax + t * (bx - ax), ay + t * (by - ay)];
    const far = Math.hypot(x - spot[0], y - spot[1]);
    if (far < best.far) best = {far, mm: gone + t * length, spot};
    gone += length;
  }
  return {mm: edge.backwards ? gone - best.mm : best.mm, spot: best.spot};
}

const is = (piece, {edge = null, point = null}) =>
  chosen?.piece === piece.name && (chosen.edge ?? null) === edge && (chosen.point ?? null) === point;

function choose(desk, piece, {edge = null, point = null, at = null}) {
  if (waiting && (waiting.kind === 'edge' ? edge : point)) {
    if (waiting.piece === null) waiting.put(`${piece.name}.${edge}`);
    else if (waiting.piece === piece.name) waiting.put(edge ?? point);
    return;
  }
  waiting = null;
  // A second click on an edge says where on it.
  const again = edge !== null && is(piece, {edge});
  chosen = {piece: piece.name, edge, point, spot: again ? at?.spot : null, mm: again ? at?.mm : null};
  judge = judged(desk);
  drawBoard(desk);
  tell(desk);
}

/** @param goesOn whether who fills a form in goes on with it, whatever has changed meanwhile */
function tell(desk, goesOn = false) {
  renew(side, () => {
    const form = goesOn ? side.querySelector('form.step:not([data-done])') : null;
    if (!form) waiting = null;
    const parts = panel(desk);
    // Its place is the last there.
    if (form && drawn.pieces.some(piece => piece.name === chosen?.piece)) parts.at(-1).replaceChildren(form);
    return parts;
  });
}

function panel(desk) {
  const piece = drawn.pieces.find(p => p.name === chosen?.piece);
  if (!piece) {
    return [h('h2', {}, 'Pieces'),
      h('p', {}, 'Click an edge to see how long it is, to give it another seam allowance or a notch; click the name of a piece to say how it is cut and to alter it. The dashed line is sewn, the full line is cut.')];
  }
  const about = {
    desk, piece, pieces: drawn.pieces, size, judge,
    entry: desk.job.entries?.style?.pieces?.[piece.name] ?? {},
    at: ['style', 'pieces', piece.name],
    choose: what => choose(desk, piece, what),
    pick: take => { waiting = take; },
    length: text => said(text, desk.job),
    show: mm => shown(mm, desk.job),
    renamed: to => { chosen = to; },
  };
  const edge = piece.edges.find(e => e.name === chosen.edge);
  const point = piece.points?.find(p => p.name === chosen.point);
  return edge ? edgePanel(about, edge, chosen.mm) : point ? pointPanel(about, point) : piecePanel(about);
}
