// Order: sizes by colours in a grid, what limits the lays, and the plan.

import {h, renew, say} from '../draw.js';
import {Edits} from '../edits.js';
import {judged} from '../forms.js';
import {sentence} from '../server.js';
import {planned} from './plan.js';

const LIMITS = [
  {at: ['max-plies'], label: 'Most plies in a lay', hint: 'all its colours together', number: true},
  {at: ['max-garments'], label: 'Most garments in a marker', hint: 'side by side in one ply', number: true},
  {at: ['table'], label: 'Length of the table', hint: 'such as 3 m'},
  {at: ['end-loss'], label: 'End loss', hint: 'of each ply, both ends together'},
  {at: ['cost', 'lay'], label: 'What a lay costs', hint: 'to set up, spread and cut'},
  {at: ['tolerance', 'over'], label: 'More than ordered', hint: 'garments of a size and colour, at most', number: true},
];

let order = {};
let place, judge, edits;

export async function show(desk, at) {
  order = {};
  place = at;
  judge = judged(desk);
  edits = new Edits();
  await look(desk);
}

export const changed = desk => desk.attempt(() => look(desk));

async function look(desk) {
  const {name} = desk;
  const told = await desk.get('/job/order');
  if (name === desk.name) take(desk, told);
}

/** Takes the order as the desk tells it, unless what is here is newer. */
function take(desk, told) {
  if (told.told < order.told) return;
  order = told;
  if (order.entries) edits.over(order.entries);
  renew(place, () => drawn(desk));
  desk.steps();
}

/** Back and forth in the order's own file. */
export const history = desk => ({undo: order.undo, redo: order.redo, step: way => async () => take(desk, await edits.turn(() => desk.post('/job/order/' + way)))});

export function heard(desk, kind, told) {
  if (kind === 'order') {
    take(desk, told);
  } else if (kind === 'planning') {
    const at = document.getElementById('planning');
    if (at) at.textContent = `${told.lays} lays so far, ${Math.round(told.share * 100)} % searched`;
  }
}

const number = text => text === '' ? null : Number.isFinite(+text) ? +text : text;

function drawn(desk) {
  const {wrong, attempt} = judge;
  const sizes = desk.job.sizes.map(one => one.name);
  const colours = order.entries?.order?.colours ?? {};
  const put = (at, value, input) => attempt(async () => {
    if (!order.entries) {
      await desk.post('/job/order', {}, {[at[2]]: {[at[3]]: value}});
    } else {
      take(desk, await edits.send(order.entries, at, value, was => desk.post('/job/order/edit', {}, {at, was, value})));
    }
  }, input);
  const cell = (colour, size) => h('td', {}, h('input', {
    class: 'count', inputmode: 'numeric', 'aria-label': `${colour}, size ${size}`,
    value: colours[colour]?.[size] ?? '',
    onchange: event => put(['order', 'colours', colour, size], number(event.target.value.trim()), event.target),
    onclick: event => event.target.select(),
    onpaste: event => paste(desk, event, colour, size, sizes, put),
  }));
  const total = Object.values(colours).flatMap(of => Object.values(of)).reduce((sum, n) => sum + (+n || 0), 0);
  return [
      h('div', {class: 'two'},
          h('section', {},
              h('h2', {}, 'How many of which size'),
              h('div', {class: 'wide'}, h('table', {class: 'grid'},
                  h('thead', {}, h('tr', {}, h('th', {scope: 'col'}, 'Colour'), sizes.map(size => h('th', {scope: 'col'}, size)))),
                  h('tbody', {}, Object.keys(colours).map(colour =>
                    h('tr', {}, h('th', {scope: 'row'}, colour), sizes.map(size => cell(colour, size))))))),
              h('form', {class: 'row', onsubmit: event => {
                event.preventDefault();
                const name = event.target.elements.colour.value.trim();
                event.target.reset();
                if (colours[name]) say(`There is a row for ${name} already.`);
                else if (name) put(['order', 'colours', name, sizes[0]], 1);
              }}, h('label', {}, 'Another colour', h('input', {name: 'colour', placeholder: 'such as ochre'})), h('button', {}, 'Add')),
              h('p', {class: 'hint'}, `${total} garments. You can paste a block of numbers from a spreadsheet into a cell.`),
              wrong,
              h('div', {class: 'row'},
                  order.planning
                    ? h('button', {class: 'main', onclick: () => desk.attempt(() => desk.post('/job/order/keep'))}, 'Keep this plan')
                    : h('button', {class: 'main', disabled: !order.entries, onclick: () => desk.attempt(() => desk.post('/job/order/plan', {}, {seconds: 20}))}, 'Plan the cut'),
                  h('span', {id: 'planning', role: 'status'}, order.planning ? 'Planning ...' : '')),
              (order.problems ?? []).concat(order.refused ?? []).map(p => h('p', {class: 'wrong'}, sentence(p)))),
          h('aside', {class: 'card'}, h('h2', {}, 'What limits the lays'),
              order.entries
                ? h('div', {class: 'fields'}, LIMITS.map(f => h('label', {}, f.label, h('input', {
                    value: f.at.reduce((node, key) => node?.[key], order.entries.order) ?? '',
                    onchange: event => {
                      const text = event.target.value.trim();
                      put(['order', ...f.at], f.number ? number(text) : text || null, event.target);
                    },
                  }), h('small', {}, f.hint))))
                : h('p', {}, 'Add a colour to begin an order.'))),
      h('section', {},
          order.plan
            ? planned(desk, order.plan)
            : h('p', {class: 'hint'}, 'The plan says which sizes are cut together, in how many layers of which colour, and shows the marker of each lay.'),
          order.files
            ? h('details', {}, h('summary', {}, 'Files to print and to keep'), h('ul', {class: 'plain files'}, order.files.map(file => h('li', {},
                h('a', {href: '/job/file?' + new URLSearchParams({name: desk.name, order: 1, file}), download: file}, file)))))
            : '')];
}

/** Rows and columns of a spreadsheet, from this cell on. */
function paste(desk, event, colour, size, sizes, put) {
  const rows = event.clipboardData.getData('text').split(/\r?\n/).filter(Boolean).map(row => row.split('\t'));
  if (rows.length === 1 && rows[0].length === 1) return;
  event.preventDefault();
  const colours = Object.keys(order.entries?.order?.colours ?? {});
  const from = colours.indexOf(colour), first = sizes.indexOf(size);
  desk.attempt(async () => {
    for (let r = 0; r < rows.length && from + r < colours.length; r++) {
      for (let c = 0; c < rows[r].length && first + c < sizes.length; c++) {
        const text = rows[r][c].trim();
        if (text !== '') await put(['order', 'colours', colours[from + r], sizes[first + c]], number(text));
      }
    }
    if (rows.length > colours.length - from || rows.some(row => row.length > sizes.length - first)) {
      say('What was copied is larger than the grid from this cell on; the rest was left out.');
    }
  });
}
