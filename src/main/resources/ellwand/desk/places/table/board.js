// The cloth with what lies on it: drawn once, then only what has changed.

import {h, s, line} from '../../draw.js';
import {label, outline, same, told} from './copies.js';
import {ticks} from '../../measure.js';

export const FILLS = ['#dfe8ec', '#f4ead2', '#e3ecd9', '#efe0e6', '#e2e2f0', '#f6e2d0', '#d9ecea'];

/** A letter is about so wide, in its height. */
const LETTER = .58;

/** Names are so high at least, in pixels, where there is room. */
const LEAST = 13;

/** A board: its svg, and what is drawn on it. */
export function board() {
  const layers = Object.fromEntries(['ground', 'left', 'copies', 'over', 'rulers'].map(name => [name, s('g')]));
  layers.rulers.setAttribute('aria-hidden', 'true');
  const svg = s('svg', {class: 'board table', role: 'group', 'aria-roledescription': 'cloth'},
      s('defs', {}, s('pattern', {id: 'hatch', width: 14, height: 14, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)'},
          s('path', {class: 'hatching', d: 'M0 0V14'}))),
      ...Object.values(layers));
  return {svg, layers, drawn: [], view: null, full: null, letters: 20, held: false};
}

/** Draws what lies there; what is as before stays. */
export function draw(on, desk, at, chosen, waiting) {
  const marker = at.marker;
  const width = marker?.widthMm ?? at.goods.widthMm;
  const length = Math.max(marker?.lengthMm ?? 0, width * .6);
  const edge = width * .06;
  on.full = {x: -edge * 1.6, y: -width - edge * .6, w: length + edge * 2.6, h: width + edge * 2};
  on.job = desk.job;
  on.svg.setAttribute('aria-label', `${at.goods.name} on the table. Page up and page down go from piece to piece.`);
  on.svg.style.cssText = `aspect-ratio: ${on.full.w} / ${on.full.h}; max-height: 70vh`;
  on.letters = Math.max(width / 45, LEAST * mmPerPixel(on));
  ground(on, marker, width, length);
  // What is in a hand stays in it.
  if (!on.held) copies(on, desk, marker, chosen, waiting);
  look(on, on.view);
}

/** With all of it in sight. */
function mmPerPixel(on) {
  const {width, height} = on.svg.getBoundingClientRect();
  return width && height ? Math.max(on.full.w / width, on.full.h / height) : 0;
}

function ground(on, marker, width, length) {
  const parts = [];
  for (const zone of marker?.zones ?? [{x0: 0, y0: 0, x1: length, y1: width, plies: 1, folds: []}]) {
    const x1 = Math.min(zone.x1, length);
    parts.push(s('rect', {class: 'ground' + (zone.plies > 1 ? ' double' : ''), x: zone.x0, y: -zone.y1, width: Math.max(0, x1 - zone.x0), height: zone.y1 - zone.y0}));
    for (const fold of zone.folds) {
      const y = fold === 'low-y' ? -zone.y0 : -zone.y1;
      parts.push(s('path', {class: 'fold', d: fold === 'low-x' ? `M${zone.x0} ${-zone.y0}V${-zone.y1}` : `M${zone.x0} ${y}H${x1}`}));
    }
  }
  parts.push(s('path', {class: 'cutend', d: `M0 0V${-width}`}));
  for (const flaw of marker?.flaws ?? []) {
    parts.push(s('path', {class: 'flaw', d: line(flaw.outline, true)}, s('title', {}, flaw.name)));
  }
  on.layers.ground.replaceChildren(...parts);
}

function copies(on, desk, marker, chosen, waiting) {
  const amiss = new Set((marker?.findings ?? []).flatMap(f => f.copies));
  const pinned = new Set(marker?.pinned ?? []);
  const kinds = [...new Set((marker?.copies ?? []).map(copy => copy.piece))];
  const focused = document.activeElement?.dataset?.copy;
  (marker?.copies ?? []).forEach((copy, i) => {
    if (!marker.shapes[copy.shape]) return;
    let one = on.drawn[i];
    if (!one || one.copy.shape !== copy.shape || one.shape !== marker.shapes[copy.shape]) {
      const fresh = {g: s('g', {class: 'copy', role: 'button', tabindex: -1, 'data-copy': i}), shape: marker.shapes[copy.shape]};
      fresh.path = s('path', {d: line(fresh.shape, true)});
      fresh.title = s('title');
      fresh.g.append(fresh.title, fresh.path);
      if (one) one.g.replaceWith(fresh.g); else on.layers.copies.append(fresh.g);
      one = on.drawn[i] = fresh;
    }
    if (!one.copy || !same(one.copy, copy) || one.letters !== on.letters) put(on, desk, marker, copy, one);
    one.copy = copy;
    one.g.removeAttribute('transform');
    const pin = pinned.has(i);
    if (Boolean(one.pin) !== pin) {
      if (pin) one.g.append(one.pin = s('g', {class: 'pin'}, s('path'), s('circle')));
      else { one.pin.remove(); one.pin = null; }
    }
    if (one.pin) placePin(on, one);
    const looks = 'copy' + (amiss.has(i) ? ' amiss' : '') + (chosen.has(i) ? ' chosen' : '') + (waiting?.has(i) ? ' waiting' : '') + (pin ? ' pinned' : '');
    const words = told(desk, marker, i);
    const fill = FILLS[kinds.indexOf(copy.piece) % FILLS.length];
    if (one.state === looks + words + fill) return;
    one.state = looks + words + fill;
    one.g.style.setProperty('--fill', fill);
    one.g.setAttribute('class', looks);
    one.g.setAttribute('aria-label', words);
    one.g.setAttribute('aria-pressed', chosen.has(i));
    one.title.textContent = words;
  });
  const count = marker?.copies.length ?? 0;
  on.drawn.splice(count).forEach(one => one.g.remove());
  const stop = on.drawn[focused] ?? on.drawn[on.stop] ?? on.drawn.find(Boolean);
  on.drawn.forEach(one => one.g.setAttribute('tabindex', one === stop ? 0 : -1));
  if (focused !== undefined && document.activeElement?.dataset?.copy === undefined) on.drawn[focused]?.g.focus({preventScroll: true});
}

/** Outline and name of a copy where it lies; the name as large as there is room for. */
function put(on, desk, marker, copy, one) {
  one.path.setAttribute('transform', `translate(${copy.x} ${-copy.y}) rotate(${-copy.turn})${copy.flipped ? ' scale(1 -1)' : ''}`);
  const {points, box} = outline(marker, copy);
  const words = label(desk, copy);
  const [long, high] = [box.x1 - box.x0, box.y1 - box.y0];
  const upright = high > long * 1.4;
  const {at: [x, up], room} = widest(points, box, upright);
  const y = -up;
  const size = Math.min(on.letters, room * .9 / (LETTER * words.length), (upright ? long : high) * .7);
  one.text?.remove();
  one.text = s('text', {x, y: y + size * .35, 'font-size': size, 'text-anchor': 'middle', transform: upright ? `rotate(-90 ${x} ${y})` : null}, words);
  one.g.append(one.text);
  one.name = [x, y, size];
  one.letters = on.letters;
}

/** Where a name has most room inside an outline: the widest of some lines across it. */
function widest(points, box, upright) {
  const [u, v] = upright ? [1, 0] : [0, 1];
  const [low, high] = upright ? [box.x0, box.x1] : [box.y0, box.y1];
  let best = {room: 0, at: [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2]};
  for (const part of [.5, .4, .6, .3, .7, .2, .8]) {
    const level = low + (high - low) * part;
    const met = [];
    for (let i = 0; i < points.length; i += 2) {
      const j = (i + 2) % points.length;
      const [a, b] = [points[i + v], points[j + v]];
      if (a < level !== b < level) met.push(points[i + u] + (points[j + u] - points[i + u]) * (level - a) / (b - a));
    }
    met.sort((a, b) => a - b);
    for (let k = 0; k + 1 < met.length; k += 2) {
      const room = met[k + 1] - met[k];
      if (room > best.room * 1.15) best = {room, at: upright ? [level, (met[k] + met[k + 1]) / 2] : [(met[k] + met[k + 1]) / 2, level]};
    }
  }
  return best;
}

/** A pin stuck in above the name. */
function placePin(on, {name: [x, y, letters], pin}) {
  const size = Math.min(on.letters * .8, letters * 1.5);
  const [foot, top] = [y - letters * .8, y - letters * .8 - size];
  const [stick, head] = pin.children;
  stick.setAttribute('d', `M${x} ${foot}L${x + size * .7} ${top}`);
  head.setAttribute('cx', x + size * .7);
  head.setAttribute('cy', top);
  head.setAttribute('r', size * .45);
}

/** Moves the drawing of some copies along while they are dragged. */
export function drag(on, copies, dx, dy) {
  on.held = true;
  copies.forEach(i => on.drawn[i]?.g.setAttribute('transform', `translate(${dx} ${-dy})`));
}

export function drop(on) {
  on.held = false;
}

/** Looks at a part of the table, or at all of it; the rulers stay in sight. */
export function look(on, view) {
  on.view = view;
  const at = filling(on, view ?? on.full);
  on.svg.setAttribute('viewBox', `${at.x} ${at.y} ${at.w} ${at.h}`);
  rulers(on, at);
}

/** As much more on the sides as the page has room for. */
function filling(on, at) {
  const {width, height} = on.svg.getBoundingClientRect();
  if (!width || !height) return at;
  const [w, h] = [Math.max(at.w, at.h * width / height), Math.max(at.h, at.w * height / width)];
  return {x: at.x - (w - at.w) / 2, y: at.y - (h - at.h) / 2, w, h};
}

export function zoom(on, by, x, y) {
  const now = on.view ?? on.full;
  const times = Math.min(by, on.full.w * 1.5 / now.w);
  const [cx, cy] = [x ?? now.x + now.w / 2, y === undefined ? now.y + now.h / 2 : -y];
  look(on, {x: cx - (cx - now.x) * times, y: cy - (cy - now.y) * times, w: now.w * times, h: now.h * times});
}

export function pan(on, dx, dy) {
  const now = on.view ?? on.full;
  look(on, {...now, x: now.x + dx, y: now.y + dy});
}

/** Where on the cloth, mm. */
export function mm(on, event) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(on.svg.getScreenCTM().inverse());
  return [at.x, -at.y];
}

/** How many mm a pixel shows. */
export const pixel = on => 1 / (on.svg.getScreenCTM()?.a || 1);

function rulers(on, at) {
  const size = 11 * pixel(on);
  const {each, word, at: words} = ticks(Math.max(at.w, at.h), on.job);
  const [low, left] = [at.y + at.h, at.x];
  const parts = [
    s('rect', {class: 'scale', x: left, y: low - size * 2.2, width: at.w, height: size * 2.2}),
    s('rect', {class: 'scale', x: left, y: at.y, width: size * 3.6, height: at.h - size * 2.2}),
  ];
  for (let x = Math.max(0, Math.ceil((left + size * 4.4) / each)) * each; x < at.x + at.w - size * 2; x += each) {
    parts.push(s('path', {class: 'ruler', d: `M${x} ${low - size * 2.2}v${size * .6}`}),
        s('text', {x, y: low - size * .5, 'font-size': size, 'text-anchor': 'middle'}, words(x)));
  }
  for (let y = Math.max(0, Math.ceil((-low + size * 3) / each)) * each; y < -at.y - size; y += each) {
    parts.push(s('path', {class: 'ruler', d: `M${left + size * 3.6} ${-y}h${-size * .6}`}),
        s('text', {x: left + size * 2.8, y: -y + size * .35, 'font-size': size, 'text-anchor': 'end'}, words(y)));
  }
  parts.push(s('text', {x: left + size * .4, y: low - size * .5, 'font-size': size}, word));
  on.layers.rulers.replaceChildren(...parts);
}

/** The key to the drawing: fills go with names, so that nothing is told by colour alone. */
export function swatch(marker, piece) {
  const kinds = [...new Set(marker.copies.map(copy => copy.piece))];
  return h('span', {class: 'dot', style: `background: ${FILLS[kinds.indexOf(piece) % FILLS.length]}`, 'aria-hidden': 'true'});
}
