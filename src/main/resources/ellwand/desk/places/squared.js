// An outline drawn on squared paper: every click a corner, every length shown and to be typed over.

import {post} from '../server.js';
import {h, s} from '../draw.js';
import {judged} from '../forms.js';

const SIDE = 600;

export function squared(desk) {
  let points = [];
  const {wrong, attempt} = judged(desk);
  const lengths = h('ol', {class: 'lengths'});
  const lines = s('g');
  const squares = [];
  for (let mm = 0; mm <= SIDE; mm += 10) {
    const width = mm % 100 === 0 ? 1.4 : .5;
    squares.push(s('path', {class: 'inside', 'stroke-width': width, d: `M${mm} 0V${SIDE}M0 ${mm}H${SIDE}`, style: `stroke-width: ${width}px; stroke: var(--line)`}));
  }
  const svg = s('svg', {class: 'board squared', viewBox: `0 0 ${SIDE} ${SIDE}`, role: 'img', 'aria-label': 'Squared paper, a square is 1 cm', onclick: event => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
    points.push([Math.round(at.x / 5) * 5, Math.round(at.y / 5) * 5]);
    draw();
  }}, squares, lines);

  const far = (a, b) => Math.hypot(b[0] - a[0], b[1] - a[1]);

  /** The line keeps its direction; what comes after moves along. */
  function measure(i, text) {
    const cm = Number(text.replace(',', '.'));
    const a = points[i], b = points[(i + 1) % points.length];
    if (!(cm > 0) || far(a, b) === 0) return draw();
    const by = cm * 10 / far(a, b) - 1;
    const dx = (b[0] - a[0]) * by, dy = (b[1] - a[1]) * by;
    for (let k = i + 1; k < points.length; k++) points[k] = [points[k][0] + dx, points[k][1] + dy];
    draw();
  }

  function draw() {
    lines.replaceChildren(
        s('path', {class: 'cutting', style: 'fill: #dfe8ecaa', d: points.map((p, i) => `${i ? 'L' : 'M'}${p[0]} ${p[1]}`).join('') + (points.length > 2 ? 'Z' : '')}),
        ...points.map((p, i) => s('circle', {cx: p[0], cy: p[1], r: 5, class: 'flaw'}, s('title', {}, `corner ${i + 1}`))));
    lengths.replaceChildren(...points.slice(0, points.length > 2 ? undefined : -1).map((p, i) => {
      const last = i === points.length - 1;
      const cm = (far(p, points[(i + 1) % points.length]) / 10).toFixed(1);
      return h('li', {}, h('label', {class: 'tick'}, `corner ${i + 1} to ${last ? 1 : i + 2}`,
          h('input', {value: cm, size: 6, disabled: last, inputmode: 'decimal', onchange: event => measure(i, event.target.value)}), 'cm'));
    }));
  }

  const form = h('form', {onsubmit: event => {
    event.preventDefault();
    const name = form.elements.called.value.trim() || 'piece';
    const corner = i => `corner ${i + 1}`;
    const round = v => Math.round(v * 10) / 100;
    // Up the paper is along the grain, x; across it y grows to the left.
    const outline = points.map((p, i) => ({point: corner(i), at: [round(SIDE - p[1]), round(SIDE - p[0])]}));
    const edges = Object.fromEntries(points.map((p, i) => [`edge ${i + 1}`, {from: corner(i), to: corner((i + 1) % points.length)}]));
    attempt(async () => {
      const made = await post('/jobs/made', null, {name, entries: {
        ellwand: 1, unit: 'cm', title: name,
        style: {name, size: 'one size', allowance: form.elements.allowance.value.trim() || 0, pieces: {[name]: {cut: {main: form.elements.cut.value}, outline, edges}}},
      }});
      desk.open(made.name);
    });
  }},
  h('div', {class: 'two even'}, svg, h('div', {},
      h('p', {class: 'hint'}, 'Click the corners one after another, round the piece, on its sewing line. Up is along the grain; a square is 1 cm. Type a length to make it exact.'),
      lengths,
      h('div', {class: 'row'},
          h('label', {}, 'Piece', h('input', {name: 'called', value: 'pocket', size: 12})),
          h('label', {}, 'Cut', h('select', {name: 'cut'}, ['1', '2', 'pair'].map(how => h('option', {}, how)))),
          h('label', {}, 'Allowance', h('input', {name: 'allowance', value: '1 cm', size: 8}))),
      h('div', {class: 'row'},
          h('button', {type: 'submit'}, 'Make it a piece'),
          h('button', {type: 'button', onclick: () => { points.pop(); draw(); }}, 'Take the last corner off')), wrong)));
  return h('details', {}, h('summary', {}, 'On squared paper'), form);
}
