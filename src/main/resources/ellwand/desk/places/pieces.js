// Pieces: all of them to one scale; an edge that is clicked tells and takes its allowance.

import {h, s, line, box} from '../draw.js';
import {Refused} from '../server.js';

const GRAINS = ['along', 'across', 'either', 'bias', 'any'];

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
      s('text', {
        class: 'name', tabindex: 0, role: 'button', 'aria-label': `${piece.name}, how it is cut and altered`,
        x: (b.x0 + b.x1) / 2, y: -(b.y0 + b.y1) / 2, 'text-anchor': 'middle', 'font-size': letters,
        onclick: () => choose(desk, piece, null),
        onkeydown: event => { if (event.key === 'Enter' || event.key === ' ') { event.preventDefault(); choose(desk, piece, null); } },
      }, piece.name),
      s('text', {x: (b.x0 + b.x1) / 2, y: -(b.y0 + b.y1) / 2 + letters * 1.2, 'text-anchor': 'middle', 'font-size': letters * .7}, how));
}

const is = (piece, edge) => chosen?.piece === piece.name && chosen?.edge === edge.name;

function choose(desk, piece, edge) {
  chosen = {piece: piece.name, edge: edge?.name ?? null};
  desk.attempt(() => draw(desk));
}

function tell(desk) {
  const piece = drawn.pieces.find(p => p.name === chosen?.piece);
  const edge = piece?.edges.find(e => e.name === chosen?.edge);
  if (piece && !edge) {
    whole(desk, piece);
    return;
  }
  if (!edge) {
    side.replaceChildren(h('h2', {}, 'Pieces'),
        h('p', {}, 'Click an edge to see how long it is and to give it another seam allowance; click the name of a piece to say how it is cut and to alter it. The dashed line is sewn, the full line is cut.'));
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

/** How a piece is cut and altered. */
function whole(desk, piece) {
  const at = ['style', 'pieces', piece.name];
  const entry = desk.job.entries?.style?.pieces?.[piece.name] ?? {};
  const wrong = h('p', {class: 'wrong', role: 'alert'});
  const attempt = (deed, input) => desk.attempt(async () => {
    try {
      await deed();
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      input?.setAttribute('aria-invalid', 'true');
      wrong.textContent = error.message;
    }
  });
  const cloths = Object.keys(desk.job.entries?.cloths ?? {});
  const alter = h('form', {onsubmit: event => {
    event.preventDefault();
    const input = alter.elements.sentence;
    attempt(async () => {
      desk.job = await desk.post('/job/alter', {}, {piece: piece.name, sentence: input.value.trim()});
      await draw(desk);
      before(desk);
    }, input);
  }}, h('label', {}, 'One more step', h('input', {name: 'sentence', placeholder: 'mark: v, on: centre front, at: 6 cm'})),
  h('div', {class: 'row'}, h('button', {type: 'submit'}, 'Do it')));
  side.replaceChildren(
      h('h2', {}, piece.name), wrong,
      h('h3', {}, 'Cut for one garment'),
      ...cloths.map(cloth => h('label', {}, cloth, h('input', {
        value: entry.cut?.[cloth] ?? '', placeholder: 'not from this cloth', 'data-cut': cloth,
        onchange: event => attempt(() => desk.change([...at, 'cut', cloth], event.target.value.trim() || null), event.target),
      }))),
      h('p', {class: 'hint'}, '2, pair, or 1 on fold'),
      h('label', {}, 'Grain', h('select', {onchange: event => attempt(() => desk.change([...at, 'grain'], event.target.value))},
          [...new Set([...GRAINS, piece.grain])].map(grain => h('option', {selected: grain === piece.grain}, grain)))),
      h('h3', {}, 'Alterations'),
      piece.altered.length
        ? h('ol', {}, piece.altered.map(words => h('li', {}, words)))
        : h('p', {class: 'hint'}, 'None yet. The piece is as it was drawn.'),
      h('div', {class: 'row'},
          h('button', {disabled: !piece.altered.length, onclick: () => before(desk)}, 'See before and after'),
          h('button', {disabled: !piece.altered.length, onclick: () => attempt(() =>
            desk.change([...at, 'alter', String(piece.altered.length - 1)], null))}, 'Take the last one back')),
      alter);
}

/** Old and new lines on one another. */
function before(desk) {
  const picture = h('img', {src: '/job/before?' + new URLSearchParams({name: desk.name, size, at: Date.now()}), alt: 'Altered pieces before and after'});
  const room = h('dialog', {class: 'large', 'aria-label': 'Before and after'}, picture,
      h('div', {class: 'row'}, h('button', {class: 'main', onclick: () => room.close()}, 'Close')));
  room.addEventListener('close', () => room.remove());
  document.body.append(room);
  room.showModal();
}
