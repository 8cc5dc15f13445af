// What was found in a drawing: the pieces are shown and named before they become a style.

import {post, Refused} from '../server.js';
import {h, s, line, box} from '../draw.js';
import {judged} from '../forms.js';

/**
 * @param what entries of a job, its pieces as they are drawn, and what was said of reading them
 * @param from what they were found in
 */
export function found(desk, place, what, from) {
  const {wrong, attempt} = judged(desk);
  const cloths = Object.keys(what.entries.cloths ?? {});
  const cards = what.pieces.map(piece => card(piece, what.entries.style.pieces[piece.name], cloths[0] ?? 'main'));
  const title = h('input', {name: 'title', value: what.entries.title ?? what.entries.style.name, required: true, maxlength: 60});
  const keep = () => attempt(async () => {
    const pieces = {};
    for (const one of cards) {
      if (!one.wanted()) continue;
      const name = one.name();
      if (pieces[name]) throw twice(name);
      pieces[name] = one.entry();
    }
    const style = {...what.entries.style, name: title.value.trim(), pieces};
    const made = await post('/jobs/made', null, {name: title.value.trim(), entries: {...what.entries, title: title.value.trim(), style}});
    desk.open(made.name);
  });
  const twice = name => new Refused([{what: `two pieces are called ${name}`, remedy: 'Give each a name of its own'}]);
  place.replaceChildren(h('form', {class: 'card', onsubmit: event => { event.preventDefault(); keep(); }},
      h('h2', {}, `Found in ${from}`),
      h('p', {}, 'Give each piece its name, and say how it is cut. Measure one on your paper: is it as large as it says here?'),
      h('div', {class: 'row'}, h('label', {}, 'The style is called', title)),
      h('ul', {class: 'found'}, cards.map(one => one.element)),
      h('details', {open: what.said.length < 8}, h('summary', {}, 'What was read and what was guessed'), h('ul', {}, what.said.map(words => h('li', {}, words)))),
      wrong,
      h('div', {class: 'row'}, h('button', {class: 'main', type: 'submit'}, 'Make it a style'), h('button', {type: 'button', onclick: () => location.reload()}, 'Back'))));
  place.focus({preventScroll: true});
}

function card(piece, entry, cloth) {
  const shape = piece.cutting ?? piece.edges.flatMap(edge => edge.line);
  const b = box(shape);
  const edge = (Math.max(b.x1 - b.x0, b.y1 - b.y0)) * .05;
  const name = h('input', {value: piece.name, required: true, maxlength: 60, 'aria-label': `Name of ${piece.name}`});
  const cut = h('input', {value: entry.cut?.[cloth] ?? '', size: 10, 'aria-label': `How often ${piece.name} is cut`});
  const wanted = h('input', {type: 'checkbox', checked: true, onchange: () => element.classList.toggle('left', !wanted.checked)});
  const [across, up] = [b.y1 - b.y0, b.x1 - b.x0].map(mm => (mm / 10).toFixed(1));
  const element = h('li', {class: 'card'},
      // As it hangs: the top of the piece is up.
      s('svg', {viewBox: `${-b.y1 - edge} ${-b.x1 - edge} ${b.y1 - b.y0 + 2 * edge} ${b.x1 - b.x0 + 2 * edge}`, role: 'img', 'aria-label': `${piece.name}, ${across} by ${up} cm`},
          s('g', {transform: 'rotate(-90)'},
              piece.cutting ? s('path', {class: 'cutting', d: line(piece.cutting, true)}) : '',
              piece.edges.map(one => s('path', {class: 'sewing', d: line(one.line)})),
              piece.lines.map(one => s('path', {class: 'inside', d: line(one)})))),
      h('p', {class: 'hint'}, `${across} cm wide, ${up} cm high, with its allowance`),
      h('label', {}, 'Name', name), h('label', {}, 'Cut', cut),
      h('label', {class: 'tick'}, wanted, 'is a piece'));
  const how = () => /^\d+$/.test(cut.value.trim()) ? Number(cut.value) : cut.value.trim();
  return {
    element,
    wanted: () => wanted.checked,
    name: () => name.value.trim(),
    entry: () => ({...entry, cut: {...entry.cut, [cloth]: how()}}),
  };
}
