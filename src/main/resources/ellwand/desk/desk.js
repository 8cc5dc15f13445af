// The page: which job, which place, and the slip that stays in sight.

import {get, post, Refused, sentence} from './server.js';
import {h, renew, say} from './draw.js';
import {Edits} from './edits.js';
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
  {id: 'new', name: 'New', place: fresh, always: true},
  {id: 'guide', name: 'First steps', place: guide, always: true},
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
  take,
  steps,
  attempt,
};

/** The place that is shown, and whether it shows why the job cannot be read. */
let shown = null, stuck = false;
let news = null;

/** When the job that is followed has been read. */
let reading = null;

/** How often a place was gone to, and the tables were asked for: only the last counts. */
let went = 0, asked = 0;

/** The job as it was shown last. */
let seen = null;

let edits = new Edits();

/** News of tables that are not here yet. */
let early = [];

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
  await take(await edits.send(desk.job.entries, at, value ?? null, was => desk.post('/job/edit', {}, {at, was, value: value ?? null})));
}

/** Goes to a job: to its pieces, unless another of its places was asked for already. */
function open(name) {
  const {id, always} = placeOf(where()[1]);
  location.hash = address(name, always ? 'pieces' : id);
}

/** Fetches a job, unless it is here, and hears what becomes of it. */
function follow(name) {
  if (name === desk.name) return reading;
  news?.close();
  Object.assign(desk, {name, job: null});
  desk.tables.clear();
  [shown, stuck, seen, early] = [null, false, null, []];
  asked++;
  edits = new Edits();
  document.getElementById('place').replaceChildren();
  news = new EventSource('/job/news?' + new URLSearchParams({name}));
  news.addEventListener('changed', () => attempt(look));
  for (const kind of ['marker', 'searching', 'searched', 'order', 'planning']) {
    news.addEventListener(kind, event => heard(kind, JSON.parse(event.data)));
  }
  // What happened while nothing could be heard is seen by looking.
  let lost = false;
  news.addEventListener('error', () => { lost = true; });
  news.addEventListener('open', () => {
    if (lost) attempt(() => { seen = null; return look(); });
    lost = false;
  });
  reading = look();
  return reading;
}

async function look() {
  await take(await desk.get('/job'));
}

/** Takes a job as the desk tells it, unless a later answer is here; where nothing is new, all stays as it is. */
async function take(job) {
  if (job.name !== desk.name || job.told < desk.job?.told) return;
  desk.job = job;
  edits.over(job.entries);
  const now = JSON.stringify({...job, told: 0});
  if (now === seen) return;
  seen = now;
  document.getElementById('title').textContent = job.title ?? desk.name;
  document.title = (job.title ?? desk.name) + ' - Ellwand';
  await lookAtTables();
  if (job.name !== desk.name) return;
  slip();
  steps();
  if (shown && (stuck || unreadable(shown))) await go();
  else shown?.place.changed?.(desk);
}

async function lookAtTables() {
  const mine = ++asked;
  const all = desk.job.problems.length ? [] : await desk.get('/job/tables');
  if (mine !== asked) return;
  const before = new Map(desk.tables);
  desk.tables.clear();
  for (const one of all) {
    const was = before.get(one.goods.name);
    // What was heard since is newer.
    if (was?.told > one.told) {
      const {told, searching, problems} = was;
      Object.assign(one, {told, searching, problems, marker: was.marker && {...was.marker, shapes: one.marker?.shapes ?? {}}});
    }
    desk.tables.set(one.goods.name, one);
  }
  for (const [kind, told] of early.splice(0)) heard(kind, told);
}

function heard(kind, told) {
  if (told.cloth === undefined) {
    shown?.place.heard?.(desk, kind, told);
    return;
  }
  const at = desk.tables.get(told.cloth);
  if (!at) {
    early.push([kind, told]);
    return;
  }
  if (told.told <= at.told) return;
  at.told = told.told;
  if (kind === 'marker') {
    const before = at.marker;
    if (told.moved && before?.laid !== told.after) {
      attempt(async () => {
        at.told = 0;
        await lookAtTables();
        slip();
        shown?.place.changed?.(desk);
      });
      return;
    }
    // Of what was moved by hand only that is told.
    at.marker = {...told, copies: told.copies ?? before.copies.map((copy, i) => told.moved[i] ?? copy), shapes: before?.shapes ?? {}};
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
  const at = document.getElementById('slip');
  // It is read out when it changes.
  if (at.textContent !== parts.map(part => part.textContent).join('')) at.replaceChildren(...parts);
}

/** Back and forth in the file that has what this place shows. */
function steps() {
  const other = desk.job.elsewhere[shown?.section];
  const step = way => async () => take(await edits.turn(() => desk.post('/job/' + way, other ? {section: shown.section} : {})));
  const of = shown?.place.history?.(desk) ?? {...other ?? desk.job, step};
  const button = (label, way) =>
    h('button', {disabled: !of[way], title: other ? `in ${other.file}` : null, onclick: () => attempt(of.step(way))}, label);
  renew(document.getElementById('back'), () => [button('Undo', 'undo'), button('Redo', 'redo')]);
}

function nav() {
  const [name, id] = where();
  document.getElementById('places').replaceChildren(...PLACES.map(({id: one, name: words}) =>
    h('a', {href: address(name || desk.name || '', one), 'aria-current': one === id ? 'page' : null}, words)));
}

const address = (name, id) => `#${encodeURIComponent(name)}/${id}`;

/** The job and the place that the page's address names. */
function where() {
  const [name, id] = location.hash.slice(1).split('/');
  return [decodeURIComponent(name ?? ''), id || 'new'];
}

const placeOf = id => PLACES.find(place => place.id === id) ?? PLACES[0];

const unreadable = place => desk.job.problems.length > 0 && !place.always;

async function go() {
  const mine = ++went;
  const [name, id] = where();
  nav();
  try {
    if (name) await follow(name);
  } catch (error) {
    if (desk.name === name) desk.name = null;
    if (mine === went) location.hash = address('', 'new');
    throw error;
  }
  if (mine !== went) return;
  const next = placeOf(desk.job || id === 'guide' ? id : 'new');
  // Who still draws for the place before draws where nobody looks.
  const place = h('main', {id: 'place', tabindex: -1});
  document.getElementById('place').replaceWith(place);
  shown = next;
  stuck = Boolean(desk.job) && unreadable(next);
  if (desk.job) steps();
  if (stuck) {
    place.append(h('div', {class: 'card'}, h('h2', {}, 'This job cannot be read yet'),
        h('ul', {}, desk.job.problems.map(p =>
          h('li', {}, (p.line ? `line ${p.line}: ` : '') + sentence(p))))));
    return;
  }
  await next.place.show(desk, place);
  if (mine === went) place.focus({preventScroll: true});
}

addEventListener('hashchange', () => attempt(go));
attempt(go);
