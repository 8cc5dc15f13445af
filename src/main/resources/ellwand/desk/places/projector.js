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
  const svg = s('svg', {class: 'thrown', 'aria-label': `Pieces in size ${size}, true size`, role: 'img'});
  const help = h('p', {}, 'Make the square measure 20 cm on your cloth with + and -. Arrow keys move by half a screen, with Shift by 1 cm. M mirrors, S shows the pieces or the square, Escape ends.');
  const room = h('dialog', {class: 'projector', 'aria-label': 'Projector'}, svg,
      h('div', {class: 'row'}, help,
          h('button', {onclick: () => scale(1.002)}, '+'), h('button', {onclick: () => scale(1 / 1.002)}, '-'),
          h('button', {onclick: () => { square = !square; draw(); }}, 'Square or pieces'),
          h('button', {onclick: () => { mirrored = !mirrored; draw(); }}, 'Mirror'),
          h('button', {onclick: () => room.close()}, 'End')));
  const scale = by => { dots *= by; localStorage.setItem(KEPT, dots); draw(); };

  let x = 0, high = 0;
  const placed = pieces.map(piece => {
    const b = box(piece.cutting);
    const group = {piece, x: x - b.x0, y: b.y1};
    x += b.x1 - b.x0 + 30;
    high = Math.max(high, b.y1 - b.y0);
    return group;
  });

  function draw() {
    const w = innerWidth / dots, hh = innerHeight / dots;
    svg.setAttribute('viewBox', `${at.x} ${at.y} ${w} ${hh}`);
    svg.style.transform = mirrored ? 'scaleX(-1)' : '';
    svg.replaceChildren(
        ...(square ? [] : placed).map(({piece, x: px, y: py}) => s('g', {transform: `translate(${px} ${py})`},
            s('path', {class: 'beam', d: line(piece.cutting, true)}),
            piece.edges.map(edge => s('path', {class: 'beam thin', d: line(edge.line)})),
            piece.notches.map(n => s('path', {class: 'beam', d: line(n)})),
            s('text', {x: box(piece.cutting).x0 + 30, y: -box(piece.cutting).y1 + 40, 'font-size': 18, class: 'word'}, `${piece.name} ${size}`))),
        square ? s('g', {transform: `translate(${at.x + 20} ${at.y + 20})`},
            s('rect', {class: 'beam', width: SQUARE_MM, height: SQUARE_MM, fill: 'none'}),
            s('text', {x: 8, y: 24, 'font-size': 16, class: 'word'}, '20 cm = 7 7/8 in')) : '');
  }

  room.addEventListener('keydown', event => {
    const far = event.shiftKey ? [10, 10] : [innerWidth / dots / 2, innerHeight / dots / 2];
    const ways = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1]};
    if (ways[event.key]) {
      at = {x: at.x + ways[event.key][0] * far[0], y: at.y + ways[event.key][1] * far[1]};
    } else if (event.key === '+' || event.key === '=') return scale(1.002);
    else if (event.key === '-') return scale(1 / 1.002);
    else if (event.key === 'm' || event.key === 'M') mirrored = !mirrored;
    else if (event.key === 's' || event.key === 'S') square = !square;
    else return;
    event.preventDefault();
    draw();
  });
  room.addEventListener('close', () => {
    if (document.fullscreenElement) document.exitFullscreen();
    room.remove();
  });
  document.body.append(room);
  room.showModal();
  await room.requestFullscreen?.().catch(() => {});
  draw();
}
