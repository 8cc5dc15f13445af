// New: the jobs of the folder, and where a new one may come from.

import {get, post, Refused, send} from '../server.js';
import {h, tell} from '../draw.js';
import {dropped, judged} from '../forms.js';
import {found} from './found.js';
import {photos} from './photo.js';
import {squared} from './squared.js';

const BLOCKS = {
  'bodice': {label: 'Child\'s bodice, front and back', pieces: {front: 'bodice front', back: 'bodice back'},
    measures: ['chest', 'back width', 'neck', 'armhole depth', 'back waist']},
  'bodice and sleeve': {label: 'Bodice with a set-in sleeve', pieces: {front: 'bodice front', back: 'bodice back', sleeve: {draft: 'sleeve', armhole: ['front.armhole', 'back.armhole']}},
    measures: ['chest', 'back width', 'neck', 'armhole depth', 'back waist', 'arm', 'inner arm', 'wrist']},
};

/** Of size 104, to begin with: an example, not a customer. */
const EXAMPLE = {chest: 58, 'back width': 21.8, neck: 27, 'armhole depth': 13.7, 'back waist': 25, arm: 38, 'inner arm': 29, wrist: 13};

export async function show(desk, place) {
  const {jobs, styles, samples} = await get('/jobs');
  const begin = what => desk.attempt(async () => desk.open((await post('/jobs', null, what)).name));
  place.append(
      h('div', {class: 'two'},
          h('section', {},
              h('h2', {}, 'Your styles'),
              jobs.length
                ? h('ul', {class: 'plain'}, jobs.map(name =>
                    h('li', {}, h('button', {onclick: () => desk.open(name)}, name.replace(/\.ya?ml$/, '')))))
                : h('p', {}, 'This folder is empty. Begin with a sample: it is copied here, and yours to change.'),
              styles.length
                ? h('section', {}, h('h2', {}, 'Styles without cloths yet'), h('ul', {class: 'plain'}, styles.map(style =>
                    h('li', {class: 'row'}, h('span', {}, style), h('button', {onclick: () => begin({style})}, 'Begin a job with it')))))
                : '',
              drawing(desk, place), photos(desk, place), block(desk), squared(desk)),
          h('section', {class: 'card'},
              h('h2', {}, 'Begin with a sample'),
              h('ul', {class: 'plain'}, samples.map(sample =>
                h('li', {}, h('button', {onclick: () => begin({sample})}, sample.replace(/-/g, ' '))))))));
}

/** A file from a drawing program, chosen or dropped here. */
function drawing(desk, place) {
  const {wrong, attempt} = judged(desk);
  const form = h('form', {class: 'drop', onsubmit: event => {
    event.preventDefault();
    attempt(async () => {
      const file = form.elements.file.files[0];
      const lines = form.elements.lines.value, width = form.elements.width.value.trim();
      const query = {file: file.name, ...(lines === 'lack' ? {allowance: width} : lines === 'include' ? {included: width} : {})};
      found(desk, place, await send('/jobs/drawing', query, file), file.name);
    });
  }},
  h('div', {class: 'row'},
      h('label', {}, 'SVG, DXF or PDF file, chosen or dropped here', h('input', {type: 'file', name: 'file', accept: '.svg,.dxf,.pdf', required: true})),
      h('label', {}, 'Its lines', h('select', {name: 'lines'},
          h('option', {value: 'lack'}, 'lack the seam allowance'),
          h('option', {value: 'include'}, 'include the seam allowance'),
          h('option', {value: 'as drawn'}, 'say it themselves'))),
      h('label', {}, 'Allowance', h('input', {name: 'width', value: '1 cm', size: 8})),
      h('button', {type: 'submit'}, 'Read it')), wrong);
  dropped(form, files => { form.elements.file.files = files; form.requestSubmit(); });
  return h('section', {}, h('h2', {}, 'From a drawing'), form);
}

/** Refuses what nobody measures: another unit, a slip of the hand. */
function sane(measure, cm) {
  const usual = EXAMPLE[measure];
  if (cm > usual / 3 && cm < usual * 3) return;
  throw new Refused([{what: `${measure} cannot be '${cm}'`, remedy: `Write how many cm it is, such as ${usual}`}]);
}

/** Drafted from body measures. */
function block(desk) {
  const {wrong, attempt} = judged(desk);
  const fields = h('div', {class: 'fields'});
  const kind = h('select', {name: 'kind', onchange: () => ask()}, Object.entries(BLOCKS).map(([value, of]) => h('option', {value}, of.label)));
  const ask = () => fields.replaceChildren(...BLOCKS[kind.value].measures.map(measure =>
    h('label', {}, measure, h('input', {name: measure, value: EXAMPLE[measure], inputmode: 'decimal'}))));
  ask();
  const form = h('form', {onsubmit: event => {
    event.preventDefault();
    const of = BLOCKS[kind.value];
    const body = Object.fromEntries(of.measures.map(m => [m, Number(form.elements[m].value.replace(',', '.')) || form.elements[m].value]));
    const size = form.elements.size.value.trim() || 'one size';
    const name = form.elements.called.value.trim() || 'block';
    const entries = {
      ellwand: 1, unit: 'cm', title: name,
      sizes: {names: [size], body: {[size]: body}},
      style: {name, size, wear: ['children'], allowance: 1,
        pieces: Object.fromEntries(Object.entries(of.pieces).map(([piece, draft]) => [piece, {block: draft, cut: {main: piece === 'sleeve' ? 'pair' : '1 on fold'}}]))},
    };
    attempt(async () => {
      of.measures.forEach(measure => sane(measure, body[measure]));
      const made = await post('/jobs/made', null, {name, entries});
      await tell('A block is a start', ['Sew a toile of it, try it on, and alter before good cloth is cut.']);
      desk.open(made.name);
    });
  }},
  h('div', {class: 'row'}, h('label', {}, 'Block', kind), h('label', {}, 'Called', h('input', {name: 'called', value: 'bodice'})),
      h('label', {}, 'Size', h('input', {name: 'size', value: '104', size: 6}))),
  h('p', {class: 'hint'}, 'Measures of the body in cm, without ease. These are an example: measure your customer.'),
  fields, h('div', {class: 'row'}, h('button', {type: 'submit'}, 'Draft it')), wrong);
  return h('section', {}, h('h2', {}, 'From body measures'), form);
}
