// The projector: pieces at their true size on the whole screen, once a square of known size is right.

import {h, s, line, box} from '../draw.js';

const SQUARE_MM = 200;
const KEPT = 'ellwand dots per mm';

/** Shows the pieces; Escape ends it. */
export async function project(desk) {
  const size = (desk.job.sizes.find(one => one.garments) ?? desk.job.sizes[0]).name;
  const {pieces} = await desk.get('/job/pieces', {size});
  let dots = Number(localStorage.getItem(KEPT)) || 96 / 25.4;
  let at = {x: 0, y: 0};
  let mirrored = false;
  let square = true;
  let sewing = true;
  const svg = s('svg', {class: 'thrown', tabindex: 0, autofocus: true, 'aria-label': `Pieces in size ${size}, true size`, role: 'img'});
  const where = h('span', {role: 'status'});
  const measured = h('input', {inputmode: 'decimal', size: 6, name: 'measured'});
  const deed = (words, does, label) => h('button', {type: 'button', 'aria-label': label, onclick: () => { does(); draw(); }}, words);
  const help = h('p', {});
  const controls = h('form', {class: 'row', onsubmit: event => { event.preventDefault(); measure(); }}, help,
      h('label', {class: 'tick'}, 'The square measures', measured, 'cm'), h('button', {type: 'submit'}, 'Set'),
      deed('Square or pieces', () => { square = !square; }), deed('Mirror', () => { mirrored = !mirrored; }),
      deed('Sewing lines', () => { sewing = !sewing; }),
      deed('\u2190', () => stretch(-1, 0), 'Stretch to the left'), deed('\u2192', () => stretch(1, 0), 'Stretch to the right'),
      deed('\u2191', () => stretch(0, -1), 'Stretch above'), deed('\u2193', () => stretch(0, 1), 'Stretch below'),
      where, h('button', {type: 'button', onclick: () => room.close()}, 'End'));
  const room = h('dialog', {class: 'projector', 'aria-label': 'Projector'}, svg, controls);

  const keep = to => { dots = to; localStorage.setItem(KEPT, dots); };

  /** What the square came to on the cloth says how large a dot is. */
  function measure() {
    const mm = Number(measured.value.replace(',', '.')) * 10;
    if (!(mm > 20 && mm < 5000)) {
      help.textContent = 'Measure a side of the square on your cloth and type it in cm.';
      return;
    }
    keep(dots * SQUARE_MM / mm);
    measured.value = '';
    draw();
  }

  let x = 0, high = 0;
  const placed = pieces.filter(piece => piece.cutting).map(piece => {
    const b = box(piece.cutting);
    const group = {piece, x: x - b.x0, y: b.y1, b};
    x += b.x1 - b.x0 + 30;
    high = Math.max(high, b.y1 - b.y0);
    return group;
  });
  const full = {w: Math.max(0, x - 30), h: high};
  const seen = () => ({w: innerWidth / dots, h: innerHeight / dots});

  /** Half a screen on, so that what is cut in two can be joined. */
  function stretch(right, down) {
    const {w, h: tall} = seen();
    move(right * w / 2, down * tall / 2);
  }

  function move(right, down) {
    const {w, h: tall} = seen();
    at = {x: Math.max(-w / 2, Math.min(full.w - w / 4, at.x + right)), y: Math.max(-tall / 2, Math.min(full.h - tall / 4, at.y + down))};
  }

  const words = (x, y, wide, text) =>
    s('text', {class: 'word', x, y, 'text-anchor': 'middle', 'font-size': Math.min(18, wide / text.length)}, text);

  function draw() {
    const {w, h: tall} = seen();
    svg.setAttribute('viewBox', `${at.x} ${at.y} ${w} ${tall}`);
    // Each piece is turned over where it lies, its words are not.
    svg.replaceChildren(...(square ? [] : placed).map(({piece, x: px, y: py, b}) => s('g', {class: 'piece', transform: `translate(${px} ${py})`},
        s('g', {transform: mirrored ? `translate(${b.x0 + b.x1} 0) scale(-1 1)` : ''},
            s('path', {class: 'beam', d: line(piece.cutting, true)}),
            piece.edges.map(edge => piece.fold === edge.name
              ? s('path', {class: 'beam folded', d: line(edge.line)})
              : sewing ? s('path', {class: 'beam thin', d: line(edge.line)}) : ''),
            piece.lines.map(inner => s('path', {class: 'beam thin', d: line(inner)})),
            piece.notches.map(n => s('path', {class: 'beam', d: line(n)}))),
        words((b.x0 + b.x1) / 2, -(b.y0 + b.y1) / 2, b.x1 - b.x0, piece.name))),
    square ? s('g', {class: 'square', transform: `translate(${at.x + 20} ${at.y + 20})`},
        s('rect', {class: 'beam', width: SQUARE_MM, height: SQUARE_MM, fill: 'none'}),
        words(SQUARE_MM / 2, 30, SQUARE_MM, '20 cm = 7 7/8 in')) : '');
    const stretches = Math.max(1, Math.ceil(full.w / w * 2 - 1));
    where.textContent = square ? '' : `stretch ${Math.max(1, Math.min(stretches, Math.round(at.x / w * 2) + 1))} of ${stretches}` + (mirrored ? ', mirrored' : '');
    help.textContent = square
      ? 'Measure the square on your cloth: it is to be 20 cm. Type what it measures, or use + and -. Then show the pieces.'
      : 'Arrow keys go on by half a screen, with Shift by 1 cm. M mirrors for lining, L takes the sewing lines off, H hides this line.';
  }

  room.addEventListener('keydown', event => {
    if (event.target === measured) return;
    const ways = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]}[event.key];
    const key = event.key.toLowerCase();
    if (ways && event.shiftKey) move(ways[0] * 10, ways[1] * 10);
    else if (ways) stretch(...ways);
    else if (key === '+' || key === '=') keep(dots * 1.002);
    else if (key === '-') keep(dots / 1.002);
    else if (key === 'm') mirrored = !mirrored;
    else if (key === 'l') sewing = !sewing;
    else if (key === 's') square = !square;
    else if (key === 'h') controls.hidden = !controls.hidden;
    else return;
    event.preventDefault();
    draw();
  });
  const again = () => draw();
  addEventListener('resize', again);
  room.addEventListener('close', () => {
    removeEventListener('resize', again);
    if (document.fullscreenElement) document.exitFullscreen();
    room.remove();
  });
  document.body.append(room);
  // A dialog cannot fill the screen itself, and must open after what does.
  await document.documentElement.requestFullscreen?.().catch(() => {});
  room.showModal();
  draw();
}
