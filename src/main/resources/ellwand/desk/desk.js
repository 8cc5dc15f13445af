// The page: which job, which place, and the slip that stays in sight.

import {get, post, Refused, sentence} from './server.js';
import {h, say} from './draw.js';
import * as cloths from './places/cloths.js';
import * as guide from './places/guide.js';
import * as fresh from './places/new.js';
import * as order from './places/order.js';
import * as pieces from './places/pieces.js';
import * as sheets from './places/sheets.js';
import * as table from './places/table.js';

const PLACES = [
  {id: 'pieces', name: 'Pieces', place: pieces, section: 'style'},
  {id: 'cloths', name: 'Cloths', place: cloths, section: 'cloths'},
  {id: 'table', name: 'Table', place: table},
  {id: 'order', name: 'Order', place: order},
  {id: 'paper', name: 'Paper', place: sheets},
  {id: 'new', name: 'New', place: fresh},
  {id: 'guide', name: 'First steps', place: guide},
];

/** What every place may use. */
const desk = {
  name: null,
  job: null,
  tables: new Map(),
  get: (path, query) => get(path, {name: desk.name, ...query}),
  post: (path, query, body) => post(path, {name: desk.name, ...query}, body),
  open,
  change,
  again: looked,
  slip,
  attempt,
};

let shown = null;
let news = null;

/** The job as it was shown last. */
let seen = null;

/** Does something that may be refused, and says why it was. */
async function attempt(deed) {
  try {
    return await deed();
  } catch (error) {
    if (!(error instanceof Refused)) console.error(error);
    say(error.message);
    return undefined;
  }
}

/** Changes one entry of the job's file; throws what is wrong with it. */
async function change(at, value) {
  desk.job = await desk.post('/job/edit', {}, {at, was: entry(at) ?? null, value: value ?? null});
  await looked();
}

function entry(at) {
  return at.reduce((node, name) => node?.[name], desk.job.entries);
}

/** Shows its pieces, unless another place was asked for while it was read. */
async function open(name) {
  const before = location.hash;
  await follow(name);
  const place = location.hash === before ? 'pieces' : where()[1];
  location.hash = '#' + encodeURIComponent(name) + '/' + place;
}

/** Fetches a job and hears what becomes of it. */
async function follow(name) {
  desk.name = name;
  seen = null;
  news?.close();
  news = new EventSource('/job/news?' + new URLSearchParams({name}));
  news.addEventListener('changed', () => attempt(look));
  for (const kind of ['marker', 'searching', 'searched', 'order', 'planning']) {
    news.addEventListener(kind, event => heard(kind, JSON.parse(event.data)));
  }
  await look();
}

async function look() {
  desk.job = await desk.get('/job');
  await looked();
}

/** Where nothing is new, who is typing is left alone. */
async function looked() {
  const now = JSON.stringify(desk.job);
  if (now === seen) return;
  seen = now;
  document.getElementById('title').textContent = desk.job.title ?? desk.name;
  document.title = (desk.job.title ?? desk.name) + ' - Ellwand';
  // Whoever looks meanwhile sees the tables as they were.
  const tables = desk.job.problems.length ? [] : await desk.get('/job/tables');
  desk.tables.clear();
  for (const one of tables) desk.tables.set(one.goods.name, one);
  slip();
  steps();
  shown?.place.changed?.(desk);
}

function heard(kind, told) {
  const at = desk.tables.get(told.cloth);
  if (!at) {
    shown?.place.heard?.(desk, kind, told);
    return;
  }
  if (kind === 'marker') {
    at.marker = {...told, shapes: at.marker?.shapes ?? {}};
  } else {
    at.searching = told.searching;
    at.problems = told.problems;
  }
  slip();
  shown?.place.heard?.(desk, kind, told);
}

/** What it comes to, for each cloth. */
function slip() {
  const parts = [];
  for (const [cloth, at] of desk.tables) {
    const marker = at.marker;
    const amiss = marker?.findings?.length;
    parts.push(h('span', amiss ? {class: 'stale'} : {},
        `${cloth}: `,
        marker
          ? h('b', {}, `buy ${marker.buy}${marker.cost ? ', ' + marker.cost : ''}`)
          : 'not laid yet',
        marker ? `, ${marker.length} laid, ${marker.used} used` : '',
        amiss ? ' - cannot be cut like this' : at.searching ? ' ... searching' : ''));
  }
  document.getElementById('slip').replaceChildren(...parts);
}

/** Back and forth in the file that has what this place shows. */
function steps() {
  const other = desk.job?.elsewhere[shown?.section];
  const of = other ?? desk.job ?? {};
  const button = (label, path, can) =>
    h('button', {disabled: !can, title: other ? `in ${other.file}` : null,
      onclick: () => attempt(() => desk.post(path, other ? {section: shown.section} : {}).then(look))}, label);
  document.getElementById('back').replaceChildren(
      button('Undo', '/job/undo', of.undo), button('Redo', '/job/redo', of.redo));
}

function nav() {
  const [, id] = where();
  document.getElementById('places').replaceChildren(...PLACES.map(({id: one, name}) =>
    h('a', {
      href: '#' + encodeURIComponent(desk.name ?? '') + '/' + one,
      'aria-current': one === id ? 'page' : null,
    }, name)));
}

function where() {
  const [name, id] = location.hash.slice(1).split('/');
  return [decodeURIComponent(name ?? ''), id || 'new'];
}

async function go() {
  const [name, id] = where();
  if (name && name !== desk.name) await follow(name);
  const next = PLACES.find(p => p.id === (desk.name || id === 'guide' ? id : 'new')) ?? PLACES[0];
  nav();
  const place = document.getElementById('place');
  place.replaceChildren();
  shown = next;
  if (desk.job) steps();
  if (desk.job?.problems.length && !['new', 'guide'].includes(next.id)) {
    place.append(h('div', {class: 'card'}, h('h2', {}, 'This job cannot be read yet'),
        h('ul', {}, desk.job.problems.map(p =>
          h('li', {}, (p.line ? `line ${p.line}: ` : '') + sentence(p))))));
    return;
  }
  await next.place.show(desk, place);
  place.focus({preventScroll: true});
}

addEventListener('hashchange', () => attempt(go));
attempt(go);
