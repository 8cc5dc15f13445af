// Photos of paper pieces: the straightened picture with the traced outline over it, which is
// dragged into place before it becomes a style.

import {post, send} from '../server.js';
import {h, s} from '../draw.js';
import {dropped, judged} from '../forms.js';
import {found} from './found.js';
import {Traced} from './traced.js';

/** Chosen or dropped photos. */
export function photos(desk, place) {
  const {wrong, attempt} = judged(desk);
  const told = h('span', {role: 'status'});
  const form = h('form', {class: 'drop', onsubmit: event => {
    event.preventDefault();
    attempt(async () => {
      const files = [...form.elements.photos.files];
      const look = form.querySelector('button');
      look.disabled = true;
      try {
        const {lot} = await post('/jobs/photos', null);
        for (const [i, file] of files.entries()) {
          told.textContent = `Taking photo ${i + 1} of ${files.length} ...`;
          await send('/jobs/photo', {lot, file: file.name}, file);
        }
        told.textContent = 'Straightening and tracing ...';
        const seen = await post('/jobs/photos/look', {lot, dots: form.elements.dots.value.trim()});
        show(desk, place, lot, seen, files[0].name);
      } finally {
        told.textContent = '';
        look.disabled = false;
      }
    });
  }},
  h('div', {class: 'row'},
      h('label', {}, 'Photos of the same table, or scans of one piece; chosen or dropped here', h('input', {type: 'file', name: 'photos', accept: 'image/jpeg,image/png,.jpg,.jpeg,.png', multiple: true, required: true})),
      h('label', {}, 'Dots per inch, of scans', h('input', {name: 'dots', size: 8, inputmode: 'numeric', placeholder: 'none for photos'})),
      h('button', {type: 'submit'}, 'Look at them')), told, wrong,
  h('p', {class: 'hint'}, 'Lay the paper piece flat on a dark table, with reference sheets beside it, and photograph it from above. Print the sheets at 100 % on ',
      ...['A4', 'Letter'].flatMap((paper, i) => [i ? ' or ' : '', h('a', {href: '/reference?' + new URLSearchParams({paper}), target: '_blank', rel: 'noopener'}, paper)]), ' paper; their first page says how. Scans of a piece that is larger than the glass are joined by crosses drawn on it, at least two that each scan has in common with another.'));
  dropped(form, files => { form.elements.photos.files = files; form.requestSubmit(); });
  return h('section', {}, h('h2', {}, 'From photos of paper pieces'), form);
}

function show(desk, place, lot, seen, file) {
  let traced = null;
  const {wrong, attempt} = judged(desk);
  const left = -seen.mmPerPixel / 2 + seen.cornerMm[0], top = -seen.cornerMm[1] - seen.mmPerPixel / 2;
  const wide = seen.width * seen.mmPerPixel, high = seen.height * seen.mmPerPixel;
  const over = s('g');
  const svg = s('svg', {class: 'board', viewBox: `${left} ${top} ${wide} ${high}`, role: 'group', 'aria-label': 'The photo from straight above, with what was traced'},
      s('image', {href: '/jobs/photos/picture?' + new URLSearchParams({lot}), x: left, y: top, width: wide, height: high, preserveAspectRatio: 'none'}), over);
  const names = h('div'), doubts = h('div', {'aria-live': 'polite'});
  const name = h('input', {name: 'called', required: true, maxlength: 60});
  const ways = {onFold: 'Lies on the fold', half: 'Is half of the piece, mirrored at', grain: 'Grain runs along'};
  const selects = Object.entries(ways).map(([key, label]) => [key, label, h('select', {name: key})]);
  const lines = h('select', {name: 'lines'}, h('option', {value: 'lack'}, 'lacks the seam allowance'), h('option', {value: 'include'}, 'includes the seam allowance'));
  const width = h('input', {name: 'width', value: '1 cm', size: 8});

  const edgeNames = () => selects.forEach(([key, , select]) => {
    const now = select.selectedIndex;
    const ways = key !== 'grain' ? [['', 'none']]
      : [['', traced.arrow ? 'the arrow drawn on it' : 'the fold, or up the picture'], ['up', 'up the picture']];
    select.replaceChildren(...[...ways, ...traced.edges.map(edge => [edge, edge])].map(([value, words], i) => h('option', {value, selected: i === now}, words)));
  });
  const lengths = () => names.querySelectorAll('.length').forEach((at, i) => { at.textContent = `${(traced.length(i) / 10).toFixed(1)} cm`; });
  const take = piece => {
    traced = new Traced(piece, wide / 130, lengths);
    over.replaceChildren(traced.element);
    doubts.replaceChildren(...piece.doubts.map(d => h('p', {class: 'wrong'}, `${d.what}. ${d.remedy}.`)));
    names.replaceChildren(...traced.edges.map((edge, i) => h('label', {class: 'tick'},
        h('input', {value: edge, size: 14, maxlength: 60, 'aria-label': `Name of edge ${edge}`, onfocus: () => traced.choose(i), onchange: event => { traced.edges[i] = event.target.value.trim() || edge; edgeNames(); }}),
        h('span', {class: 'length'}))));
    lengths();
    edgeNames();
    name.value ||= file.replace(/\.[^.]*$/, '');
  };
  const keep = () => attempt(async () => {
    const query = {lot, [lines.value === 'lack' ? 'allowance' : 'included']: width.value.trim()};
    const body = {...traced.drawn(), name: name.value.trim(), ...Object.fromEntries(selects.map(([key, , select]) => [key, select.value]))};
    found(desk, place, await post('/jobs/photos/style', query, body), file);
  });
  const zoom = h('select', {onchange: () => { svg.style.width = zoom.value; }}, [['100%', 'all of it'], ['200%', 'twice as large'], ['400%', 'four times as large']].map(([value, words]) => h('option', {value}, words)));

  place.replaceChildren(
      h('h2', {}, `Seen in ${file}`),
      h('div', {class: 'row'},
          seen.pieces.length > 1
            ? h('label', {}, 'Piece', h('select', {onchange: event => take(seen.pieces[event.target.value])}, seen.pieces.map((piece, i) => h('option', {value: i}, `${piece.number}, true to ${piece.errorMm.toFixed(1)} mm`))))
            : h('p', {}, `True to ${seen.pieces[0].errorMm.toFixed(1)} mm or better, 95 times of 100.`),
          h('label', {}, 'Show', zoom)),
      h('div', {class: 'two'}, h('div', {class: 'wide photo'}, svg),
          h('form', {class: 'card', onsubmit: event => { event.preventDefault(); keep(); }},
              h('p', {class: 'hint'}, 'Drag corners and edges until they lie on the border of the paper; arrow keys move what is chosen by 1 mm, with Shift by a tenth.'),
              doubts, h('label', {}, 'Piece', name), h('h3', {}, 'Edges'), names,
              selects.map(([, label, select]) => h('label', {}, label, select)),
              h('div', {class: 'row'}, h('label', {}, 'Its border', lines), h('label', {}, 'Allowance', width)),
              wrong, h('div', {class: 'row'}, h('button', {class: 'main', type: 'submit'}, 'Go on'), h('button', {type: 'button', onclick: () => location.reload()}, 'Back')),
              h('ul', {class: 'hint'}, seen.notes.map(words => h('li', {}, words))))));
  take(seen.pieces[0]);
}
