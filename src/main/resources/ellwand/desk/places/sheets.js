// Paper: full-size pages, one long page, the projector, and every sheet of the markers.

import {h, renew} from '../draw.js';
import {picture, pagesOf, words} from './preview.js';
import {project} from './projector.js';

const PAPERS = ['A4', 'Letter', 'A4-Letter', 'A3', 'A0', 'roll:91cm'];

const paperName = paper => ({'A4-Letter': 'A4 or Letter', A0: 'A0, at a copy shop', 'roll:91cm': 'a roll 91 cm wide'})[paper] ?? paper;

const GROUPS = [
  {name: 'To take to the cutting table', of: file => file === 'cut-sheet.pdf' || /^shopping-list/.test(file)},
  {name: 'Marker drawings', of: file => /(?<!plot)\.(svg|png|pdf)$/.test(file)},
  {name: 'For plotters and cutting machines', of: file => /\.plot\./.test(file)},
  {name: 'For programs', of: () => true},
];

let preview, list;

/** How often the files were asked for; the last answer counts. */
let asked = 0;

export async function show(desk, place) {
  preview = h('div', {class: 'preview'}, h('p', {class: 'hint'}, 'Choose a sheet: it is shown here before you print it.'));
  list = h('div');
  place.append(h('div', {class: 'two'}, preview, h('aside', {class: 'card'}, h('h2', {}, 'Full size on paper'), pieces(desk), list,
      h('p', {class: 'hint'}, 'Close a rotary cutter when it is down, cut away from your body, and count pins and needles back.'))));
  await look(desk);
}

export const changed = desk => desk.attempt(() => look(desk));

export const heard = (desk, kind) => { if (kind === 'searched') changed(desk); };

async function look(desk) {
  const mine = ++asked;
  const {files, missing} = await desk.get('/job/files');
  if (mine !== asked) return;
  const left = new Set(files);
  renew(list, () => [
    ...GROUPS.flatMap(group => {
      const mine = [...left].filter(group.of);
      mine.forEach(file => left.delete(file));
      return mine.length ? [h('h3', {}, group.name), h('ul', {class: 'plain'}, mine.map(file => row(desk, file)))] : [];
    }),
    missing.length ? h('p', {class: 'hint'}, `${files.length ? 'More' : 'Markers, cut sheet and shopping list'} once ${missing.join(' and ')} can be cut: see Table.`) : '']);
}

const link = (desk, file) => '/job/file?' + new URLSearchParams({name: desk.name, file});

function row(desk, file) {
  const shown = /\.(svg|png|pdf|txt)$/.test(file);
  return h('li', {class: 'row'},
      shown ? h('button', {onclick: () => desk.attempt(() => see(desk, file))}, file) : h('span', {}, file),
      h('a', {href: link(desk, file), download: file, 'aria-label': `download ${file}`}, 'download'));
}

function see(desk, file) {
  return file.endsWith('.pdf')
    ? pagesOf(preview, file, {name: desk.name, file}, file)
    : (file.endsWith('.txt') ? words : picture)(preview, file, link(desk, file));
}

/** Which pieces on which paper. */
function pieces(desk) {
  const choice = (label, name, values) => h('label', {}, label,
      h('select', {name}, values.map(([value, words]) => h('option', {value}, words))));
  const form = h('form', {class: 'print', onsubmit: event => {
    event.preventDefault();
    const data = new FormData(form);
    const cloth = data.get('of');
    const query = {name: desk.name, paper: data.get('paper'), ...(cloth ? {of: 'marker', cloth} : {of: 'pieces', lines: data.get('lines'), size: data.getAll('size')})};
    desk.attempt(() => pagesOf(preview, `${cloth ? `Marker of ${cloth}` : 'Pieces'} on ${paperName(query.paper)}`, query, `${cloth || 'pieces'}.pdf`));
  }},
  choice('What', 'of', [['', 'the pieces'], ...[...desk.tables.keys()].map(cloth => [cloth, `the marker of ${cloth}`])]),
  choice('Paper', 'paper', PAPERS.map(p => [p, paperName(p)])),
  choice('Lines', 'lines', [['both', 'sewing and cutting lines'], ['cutting', 'cutting lines'], ['sewing', 'sewing lines']]),
  desk.job.sizes.length > 1
    ? h('fieldset', {}, h('legend', {}, 'Sizes'), desk.job.sizes.map(size => h('label', {class: 'tick'},
        h('input', {type: 'checkbox', name: 'size', value: size.name, checked: size.garments > 0}), size.name)))
    : '',
  h('div', {class: 'row'}, h('button', {class: 'main', type: 'submit'}, 'Show the pages'),
      h('button', {type: 'button', onclick: () => desk.attempt(() => project(desk))}, 'Projector')));
  return form;
}
