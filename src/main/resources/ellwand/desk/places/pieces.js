// Pieces: all of them to one scale; an edge that is clicked tells and takes its allowance.

import {h, s, line, box} from '../draw.js';
import {Refused} from '../server.js';

let size = null;
let chosen = null;
let board, side, drawn;

export async function show(desk, place) {
  board = h('div');
  side = h('aside', {class: 'card', 'aria-live': 'polite'});
  const sizes = desk.job.sizes;
  size = sizes.some(one => one.name === size) ? size : (sizes.find(one => one.garments) ?? sizes[0]).name;
  place.append(
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

async function draw(desk) {
  drawn = await desk.get('/job/pieces', {size});
  const boxes = drawn.pieces.map(piece => box(piece.cutting));
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
  board.replaceChildren(s('svg', {
    class: 'board', role: 'group', 'aria-label': `Pieces in size ${size}`,
    viewBox: `-20 -20 ${row + 40} ${y + high + 40}`,
  }, groups));
  tell(desk);
}

function group(desk, piece, b, transform) {
  const letters = Math.max(14, Math.min(24, (b.y1 - b.y0) / 8));
  const how = piece.cut.map(c => `${c.cloth} ${c.how}`).join(', ');
  return s('g', {transform},
      s('path', {class: 'cutting', d: line(piece.cutting, true)}),
      piece.lines.map(l => s('path', {class: 'inside', d: line(l)})),
      piece.notches.map(n => s('path', {class: 'cutting', d: line(n)})),
      piece.edges.map(edge => s('g', {
        class: 'edge' + (piece.fold === edge.name ? ' folded' : '') + (is(piece, edge) ? ' chosen' : ''),
        tabindex: 0, role: 'button',
        'aria-label': `${piece.name}, ${edge.name}: ${edge.length}, allowance ${edge.allowance}`,
        onclick: () => choose(desk, piece, edge),
        onkeydown: event => { if (event.key === 'Enter' || event.key === ' ') { event.preventDefault(); choose(desk, piece, edge); } },
      }, s('path', {class: 'hit', d: line(edge.line)}), s('path', {class: 'sewing', d: line(edge.line)}))),
      s('text', {x: (b.x0 + b.x1) / 2, y: -(b.y0 + b.y1) / 2, 'text-anchor': 'middle', 'font-size': letters}, piece.name),
      s('text', {x: (b.x0 + b.x1) / 2, y: -(b.y0 + b.y1) / 2 + letters * 1.2, 'text-anchor': 'middle', 'font-size': letters * .7}, how));
}

const is = (piece, edge) => chosen?.piece === piece.name && chosen?.edge === edge.name;

function choose(desk, piece, edge) {
  chosen = {piece: piece.name, edge: edge.name};
  desk.attempt(() => draw(desk));
}

function tell(desk) {
  const piece = drawn.pieces.find(p => p.name === chosen?.piece);
  const edge = piece?.edges.find(e => e.name === chosen?.edge);
  if (!edge) {
    side.replaceChildren(h('h2', {}, 'Pieces'),
        h('p', {}, 'Click an edge to see how long it is and to give it another seam allowance. The dashed line is sewn, the full line is cut.'));
    return;
  }
  const named = desk.job.entries?.style?.pieces?.[piece.name]?.edges?.[edge.name];
  const wrong = h('p', {class: 'wrong', role: 'alert'});
  const input = h('input', {name: 'allowance', value: edge.allowance, 'aria-describedby': 'why'});
  wrong.id = 'why';
  const keep = async () => {
    try {
      await desk.change(['style', 'pieces', piece.name, 'edges', edge.name, 'allowance'], input.value.trim());
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      input.setAttribute('aria-invalid', 'true');
      wrong.textContent = error.message;
    }
  };
  side.replaceChildren(
      h('h2', {}, `${piece.name}: ${edge.name}`),
      h('p', {}, `Sewn length ${edge.length}.` + (piece.fold === edge.name ? ' The piece is cut on the fold here.' : '')
          + (edge.turnedBack ? ' Its allowance is turned back, as a hem.' : '')),
      named
        ? h('form', {onsubmit: event => { event.preventDefault(); desk.attempt(keep); }},
            h('label', {}, 'Seam allowance', input), wrong,
            h('div', {class: 'row'}, h('button', {class: 'main', type: 'submit'}, 'Change')))
        : h('p', {}, `Allowance ${edge.allowance}. The edge has no name of its own in the file.`));
}
