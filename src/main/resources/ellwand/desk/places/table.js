// Table: the marker on the cloth, watched while it is sought, moved by hand.

import {h, s, line, box} from '../draw.js';
import {sentence} from '../server.js';

const FILLS = ['#dfe8ec', '#f4ead2', '#e3ecd9', '#efe0e6', '#e2e2f0', '#f6e2d0', '#d9ecea'];

let cloth = null;
let chosen = null;
let view = null;
let place, board, tools, findings;
let drag = null;

export async function show(desk, at) {
  place = at;
  cloth = desk.tables.has(cloth) ? cloth : [...desk.tables.keys()][0];
  tools = h('div', {class: 'row', role: 'group', 'aria-label': 'What to do'});
  board = h('div');
  findings = h('div', {'aria-live': 'polite'});
  place.append(tools, board, findings);
  if (desk.tables.get(cloth)?.marker && !Object.keys(desk.tables.get(cloth).marker.shapes).length) await refresh(desk);
  draw(desk);
}

/** Fetches shapes that are not known yet; all else may be newer here than there. */
async function refresh(desk) {
  for (const one of await desk.get('/job/tables')) {
    const marker = desk.tables.get(one.goods.name)?.marker;
    if (marker && one.marker) marker.shapes = {...marker.shapes, ...one.marker.shapes};
  }
}

export const changed = desk => draw(desk);

export async function heard(desk, kind, told) {
  if (!told.cloth) return;
  if (kind === 'marker') {
    const marker = desk.tables.get(told.cloth).marker;
    if (marker.copies.some(copy => !marker.shapes[copy.shape])) await desk.attempt(() => refresh(desk));
  }
  if (told.cloth === cloth) draw(desk);
}

function draw(desk) {
  const at = desk.tables.get(cloth);
  if (!at) return;
  draw.tools(desk, at);
  draw.marker(desk, at);
  draw.findings(desk, at);
}

draw.tools = (desk, at) => {
  const ask = (path, body) => () => desk.attempt(() => desk.post(path, {cloth}, body));
  tools.replaceChildren(
      desk.tables.size > 1
        ? h('label', {}, 'Cloth', h('select', {
            onchange: event => { cloth = event.target.value; chosen = null; view = null; draw(desk); },
          }, [...desk.tables.keys()].map(name => h('option', {selected: name === cloth}, name))))
        : '',
      at.searching
        ? h('button', {class: 'main', onclick: ask('/job/table/keep')}, 'Keep this one')
        : h('button', {class: 'main', onclick: ask('/job/table/lay', {seconds: 60})}, at.marker ? 'Look for a shorter one' : 'Lay'),
      h('button', {disabled: !at.marker?.undo, onclick: ask('/job/table/undo')}, 'Put back'),
      h('button', {disabled: chosen === null, onclick: () => step(desk, {do: 'turn', copy: chosen, degrees: 180})}, 'Turn round'),
      h('span', {class: 'hint'}, chosen === null
          ? 'Choose a piece to move it: drag, or use the arrow keys.'
          : 'Drag or arrow keys move it up to its neighbours; with Alt it goes where you put it.'));
};

const step = (desk, body) => desk.attempt(() => desk.post('/job/table/step', {cloth}, body));

draw.marker = (desk, at) => {
  const marker = at.marker;
  const width = marker?.widthMm ?? at.goods.widthMm;
  const length = Math.max(marker?.lengthMm ?? 0, width * .6);
  const edge = width * .05;
  const full = {x: -edge * 1.6, y: -width - edge, w: length + edge * 3, h: width + edge * 2.4};
  const seen = view ?? full;
  const letters = width / 45;
  const amiss = new Set((marker?.findings ?? []).flatMap(f => f.copies));
  const kinds = [...new Set((marker?.copies ?? []).map(c => c.piece))];
  const svg = s('svg', {
    class: 'board', role: 'group', 'aria-label': `${cloth} on the table`,
    viewBox: `${seen.x} ${seen.y} ${seen.w} ${seen.h}`,
    style: `aspect-ratio: ${full.w} / ${full.h}; max-height: 70vh`,
  });
  for (const zone of marker?.zones ?? [{x0: 0, y0: 0, x1: length, y1: width, plies: 1, folds: []}]) {
    const x1 = Math.min(zone.x1, length);
    svg.append(s('rect', {class: 'ground' + (zone.plies > 1 ? ' double' : ''), x: zone.x0, y: -zone.y1, width: Math.max(0, x1 - zone.x0), height: zone.y1 - zone.y0}));
    for (const fold of zone.folds) {
      const y = fold === 'low-y' ? -zone.y0 : -zone.y1;
      svg.append(fold === 'low-x'
        ? s('path', {class: 'fold', d: `M${zone.x0} ${-zone.y0}V${-zone.y1}`})
        : s('path', {class: 'fold', d: `M${zone.x0} ${y}H${x1}`}));
    }
  }
  svg.append(s('path', {class: 'cutend', d: `M0 0V${-width}`}), rulers(length, width, letters, desk.job.unit));
  for (const flaw of marker?.flaws ?? []) {
    svg.append(s('path', {class: 'flaw', d: line(flaw.outline, true)}, s('title', {}, flaw.name)));
  }
  marker?.copies.forEach((copy, i) => svg.append(piece(desk, marker, copy, i, letters, kinds, amiss)));
  svg.addEventListener('wheel', event => zoom(svg, seen, event), {passive: false});
  svg.addEventListener('pointerdown', event => pan(svg, seen, event));
  svg.addEventListener('dblclick', () => { view = null; draw(desk); });
  const focus = board.contains(document.activeElement) ? document.activeElement.dataset.copy : null;
  board.replaceChildren(svg);
  if (focus) svg.querySelector(`[data-copy="${focus}"]`)?.focus();
};

function rulers(length, width, letters, unit) {
  const step = unit === 'inch' || unit === 'yard' ? 25.4 : 10;
  const each = step * Math.max(1, Math.round(width / 12 / step / 5) * 5);
  const g = s('g', {'aria-hidden': 'true'});
  for (let x = 0; x <= length; x += each) {
    g.append(s('path', {class: 'ruler', d: `M${x} 0v${letters}`}),
        s('text', {x, y: letters * 2.2, 'font-size': letters, 'text-anchor': 'middle'}, Math.round(x / step)));
  }
  for (let y = 0; y <= width; y += each) {
    g.append(s('path', {class: 'ruler', d: `M0 ${-y}h${-letters}`}),
        s('text', {x: -letters * 1.4, y: -y + letters * .35, 'font-size': letters, 'text-anchor': 'end'}, Math.round(y / step)));
  }
  return g;
}

function piece(desk, marker, copy, i, letters, kinds, amiss) {
  const shape = marker.shapes[copy.shape];
  if (!shape) return '';
  const turn = copy.turn * Math.PI / 180;
  const points = [];
  for (let k = 0; k < shape.length; k += 2) {
    const px = shape[k], py = copy.flipped ? -shape[k + 1] : shape[k + 1];
    const x = Math.cos(turn) * px - Math.sin(turn) * py + copy.x;
    const y = Math.sin(turn) * px + Math.cos(turn) * py + copy.y;
    points.push(x, y);
  }
  const b = box(points);
  const mx = (b.x0 + b.x1) / 2, my = (b.y0 + b.y1) / 2;
  const label = copy.piece + (desk.job.sizes.length > 1 ? ` ${copy.size}` : '');
  const g = s('g', {
    class: 'copy' + (amiss.has(i) ? ' amiss' : '') + (chosen === i ? ' chosen' : ''),
    style: `--fill: ${FILLS[kinds.indexOf(copy.piece) % FILLS.length]}`,
    tabindex: 0, role: 'button', 'data-copy': i,
    'aria-label': `${label}, garment ${copy.garment}${amiss.has(i) ? ', lies wrongly' : ''}`,
    'aria-pressed': chosen === i,
    onkeydown: event => keys(desk, event, i),
    onpointerdown: event => grab(desk, event, i, g),
  }, s('title', {}, `${label}, garment ${copy.garment}, ${copy.form}`),
  s('path', {d: line(points, true)}),
  s('text', {x: mx, y: -my, 'font-size': letters, 'text-anchor': 'middle'}, label));
  return g;
}

function keys(desk, event, i) {
  const far = event.shiftKey ? 50 : 5;
  const ways = {ArrowLeft: [-far, 0], ArrowRight: [far, 0], ArrowUp: [0, far], ArrowDown: [0, -far]};
  if (event.key === 'Enter' || event.key === ' ') {
    event.preventDefault();
    chosen = chosen === i ? null : i;
    draw(desk);
  } else if (ways[event.key]) {
    event.preventDefault();
    chosen = i;
    const [along, across] = ways[event.key];
    step(desk, {do: event.altKey ? 'move' : 'slide', copy: i, along, across});
  } else if (event.key === 'r' || event.key === 'R') {
    chosen = i;
    step(desk, {do: 'turn', copy: i, degrees: 180});
  }
}

function mm(svg, event) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [at.x, -at.y];
}

function grab(desk, event, i, g) {
  const svg = g.ownerSVGElement;
  const from = mm(svg, event);
  drag = {i, from, moved: false};
  g.setPointerCapture(event.pointerId);
  g.onpointermove = move => {
    const [x, y] = mm(svg, move);
    drag.to = [x - from[0], y - from[1]];
    drag.moved ||= Math.hypot(...drag.to) > 3;
    if (drag.moved) g.setAttribute('transform', `translate(${drag.to[0]} ${-drag.to[1]})`);
  };
  g.onpointerup = up => {
    g.onpointermove = g.onpointerup = null;
    if (drag.moved) {
      chosen = i;
      step(desk, {do: up.altKey ? 'move' : 'slide', copy: i, along: drag.to[0], across: drag.to[1]})
          .then(() => draw(desk));
    } else {
      chosen = chosen === i ? null : i;
      draw(desk);
    }
    drag = null;
  };
}

function look(svg, at) {
  view = at;
  svg.setAttribute('viewBox', `${at.x} ${at.y} ${at.w} ${at.h}`);
}

/** With Ctrl, or two fingers; a double click shows all of it again. */
function zoom(svg, seen, event) {
  if (!event.ctrlKey) return;
  event.preventDefault();
  const now = view ?? seen;
  const [x, y] = mm(svg, event);
  const by = event.deltaY > 0 ? 1.15 : 1 / 1.15;
  look(svg, {x: x - (x - now.x) * by, y: -y - (-y - now.y) * by, w: now.w * by, h: now.h * by});
}

/** The bare cloth is taken hold of. */
function pan(svg, seen, event) {
  if (event.target.closest('.copy')) return;
  const now = view ?? seen;
  const [x, y] = mm(svg, event);
  svg.setPointerCapture(event.pointerId);
  svg.onpointermove = move => {
    const [tx, ty] = mm(svg, move);
    const at = view ?? now;
    look(svg, {...at, x: at.x - (tx - x), y: at.y + (ty - y)});
  };
  svg.onpointerup = () => { svg.onpointermove = svg.onpointerup = null; };
}

draw.findings = (desk, at) => {
  const told = at.marker?.findings ?? [];
  findings.replaceChildren(
      ...(at.problems ?? []).map(p => h('p', {class: 'wrong'}, sentence(p))),
      told.length
        ? h('section', {}, h('h2', {}, 'This cannot be cut:'), h('ul', {}, told.slice(0, 20).map(f =>
            h('li', {}, h('button', {onclick: () => { chosen = f.copies[0] ?? null; draw(desk); }}, f.words)))))
        : h('p', {}, at.marker ? `${at.marker.fold}, ${at.marker.length} of cloth, ${at.marker.used} used. Every rule is kept.` : 'Nothing lies here yet.'));
};
