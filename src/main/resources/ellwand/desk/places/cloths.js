// Cloths: each as a form that explains itself, drawn as it lies; widths compared as a chart.

import {h, renew, s} from '../draw.js';
import {judged} from '../forms.js';
import {mmOf, show as shown} from '../measure.js';

export const FOLDS = {
  'any': 'Whichever way takes least',
  'open': 'Open, one layer',
  'lengthwise fold': 'Folded lengthwise, edges together',
  'part fold': 'One edge folded over only as far as needed',
  'double fold': 'Both edges folded to a line between them',
  'crosswise fold': 'Folded across, end to end',
  'crosswise turned': 'Cut across, the upper length turned round',
};

const DIRECTIONS = {
  'any way': 'Pieces may head up or down',
  'one way': 'All pieces head the same way (nap, one-way print)',
  'one way per garment': 'The pieces of a garment head the same way',
};

const FIELDS = [
  {key: 'width', label: 'Width', hint: 'edge to edge, as bought'},
  {key: 'selvedge', label: 'Selvedge', hint: 'not used, along each edge'},
  {key: 'gap', label: 'Gap', hint: 'least distance between pieces'},
  {key: 'ends', label: 'Ends', hint: 'lost at both cut ends together'},
  {key: 'price', label: 'Price', hint: 'such as GBP 8.50 per m'},
  {key: 'shop-step', label: 'Sold in steps of', hint: 'what the shop cuts'},
  {key: 'grain-tolerance', label: 'Off the grain by', hint: 'at most, such as 2 deg'},
];

const DEEPER = [
  {at: ['shrinkage', 'along'], label: 'Shrinks along by', hint: 'such as 4 %'},
  {at: ['shrinkage', 'across'], label: 'Shrinks across by', hint: 'such as 2 %'},
  {at: ['repeat', 'along'], label: 'Stripes along, every', hint: 'from stripe to stripe'},
  {at: ['repeat', 'across'], label: 'Stripes across, every', hint: 'from stripe to stripe'},
];

let place;

/** What was wrong, by cloth. */
let judges;

export function show(desk, at) {
  place = at;
  judges = new Map();
  draw(desk);
}

export const changed = desk => draw(desk);

function draw(desk) {
  renew(place, () => Object.entries(desk.job.entries.cloths ?? {}).map(([name, cloth]) => card(desk, name, cloth)));
}

function card(desk, name, cloth) {
  if (!judges.has(name)) judges.set(name, judged(desk));
  const {wrong, attempt} = judges.get(name);
  const put = (at, value, input) => attempt(() => desk.change(['cloths', name, ...at], value === '' ? null : value), input);
  const field = (at, label, hint) => {
    const now = at.reduce((node, key) => node?.[key], cloth);
    return h('label', {}, label, h('input', {
      value: now ?? '', 'data-at': at.join('.'),
      onchange: event => put(at, event.target.value.trim(), event.target),
    }), h('small', {}, hint));
  };
  const folds = [cloth.fold ?? 'open'].flat();
  return h('section', {class: 'card cloth', 'aria-label': `Cloth ${name}`},
      h('h2', {}, name), wrong,
      h('div', {class: 'two'},
          h('div', {},
              h('div', {class: 'fields'}, FIELDS.map(f => field([f.key], f.label, f.hint)),
                  DEEPER.map(f => field(f.at, f.label, f.hint))),
              choices(`${name}-direction`, 'Which way pieces head', DIRECTIONS, [cloth.direction ?? 'any way'], directionPicture,
                  value => put(['direction'], value))),
          h('div', {}, swatch(desk, name, cloth, put), compare(desk, name))),
      choices(`${name}-fold`, 'How it is folded', FOLDS, folds, foldPicture,
          value => put(['fold'], value)),
      folds.length > 1 ? h('p', {class: 'hint'}, `The file allows ${folds.map(fold => FOLDS[fold] ?? fold).join('; ')}. What you choose here takes the place of these.`) : '');
}

/** A choice of one, each with a small picture. */
function choices(id, label, all, chosen, picture, choose) {
  return h('fieldset', {}, h('legend', {}, label), h('div', {class: 'choices'},
      Object.entries(all).map(([value, words]) => h('label', {class: 'choice'},
          h('input', {type: 'radio', name: id, value, checked: chosen.length === 1 && chosen[0] === value, onchange: () => choose(value)}),
          picture(value), h('span', {}, words)))));
}

/** Seen from the cut end: the layers one over another, folds as bends. */
export function foldPicture(fold) {
  const layers = {
    'open': 'M4 20H60',
    'any': 'M4 20H60M18 12l14 16M32 12l-14 16',
    'lengthwise fold': 'M60 24H10a4 4 0 0 1 0-8H60',
    'part fold': 'M60 24H10a4 4 0 0 1 0-8H34',
    'double fold': 'M30 16H10a4 4 0 0 0 0 8H54a4 4 0 0 0 0-8H34',
    'crosswise fold': 'M10 30V10H26V30M26 10l8-6v20l-8 6',
    'crosswise turned': 'M6 24H58M6 16H58M46 10l8 6-8 6M18 18l-8 6 8 6',
  }[fold];
  return s('svg', {viewBox: '0 0 64 36', class: 'mini', 'aria-hidden': 'true'}, s('path', {d: layers, class: 'mini-line'}));
}

function directionPicture(direction) {
  const arrows = {
    'any way': 'M12 18H28M24 13l5 5-5 5M52 18H36M40 13l-5 5 5 5',
    'one way': 'M10 12H50M45 8l5 4-5 4M10 24H50M45 20l5 4-5 4',
    'one way per garment': 'M10 12H50M45 8l5 4-5 4M50 24H10M15 20l-5 4 5 4',
  }[direction];
  return s('svg', {viewBox: '0 0 64 36', class: 'mini', 'aria-hidden': 'true'}, s('path', {d: arrows, class: 'mini-line'}));
}

/** A stretch of the open cloth; a click puts a flaw there. */
function swatch(desk, name, cloth, put) {
  const width = desk.tables.get(name)?.goods.widthMm ?? 1000;
  const length = width * .9;
  const mm = text => mmOf(text, desk.job);
  const all = cloth.flaws ?? [];
  const add = (at, radius) => {
    const flaw = {name: 'flaw', at, radius};
    return all.length ? put(['flaws', String(all.length)], flaw) : put(['flaws'], [flaw]);
  };
  const off = i => put(all.length > 1 ? ['flaws', String(i)] : ['flaws'], '');
  const svg = s('svg', {class: 'board swatch', viewBox: `${-width * .06} ${-width * 1.04} ${length + width * .1} ${width * 1.1}`, 'aria-label': `${name}, with its flaws`, role: 'group',
    onclick: event => {
      const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
      if (at.x >= 0 && at.y <= 0 && -at.y <= width) add([at.x, -at.y].map(v => shown(v, desk.job)), shown(20, desk.job));
    }},
  s('rect', {class: 'ground', x: 0, y: -width, width: length, height: width}),
  s('path', {class: 'cutend', d: `M0 0V${-width}`}),
  s('path', {class: 'inside', d: `M${length * .3} ${-width * .5}H${length * .7}m${-length * .03} ${-width * .02}l${length * .03} ${width * .02}l${-length * .03} ${width * .02}`}),
  all.map((flaw, i) => flaw.radius && flaw.at
    ? s('circle', {class: 'flaw', cx: mm(flaw.at[0]), cy: -mm(flaw.at[1]), r: mm(flaw.radius), onclick: event => { event.stopPropagation(); off(i); }}, s('title', {}, `${flaw.name ?? 'flaw'}: take it off`))
    : ''));
  const place = words => h('input', {name: words, size: 7, required: true});
  const [along, across, radius] = ['along', 'across', 'radius'].map(place);
  return h('figure', {}, svg, h('figcaption', {}, 'Cut end at the left, the arrow along the selvedge. Click where the cloth has a hole or a stain.'),
      all.length
        ? h('ul', {class: 'plain'}, all.map((flaw, i) => h('li', {class: 'row'}, h('span', {}, where(flaw)), h('button', {class: 'small', 'aria-label': `Take flaw ${i + 1} off`, onclick: () => off(i)}, 'Take off'))))
        : '',
      h('details', {}, h('summary', {}, 'Type where a flaw is'), h('form', {class: 'row', onsubmit: event => {
        event.preventDefault();
        add([along, across].map(input => input.value.trim()), radius.value.trim());
      }}, h('label', {}, 'From the cut end', along), h('label', {}, 'From the lower edge', across), h('label', {}, 'Radius', radius), h('button', {type: 'submit'}, 'Add the flaw'))));
}

const where = flaw => flaw.at
  ? `${flaw.name ?? 'flaw'}: ${flaw.at[0]} from the cut end, ${flaw.at[1]} from the lower edge${flaw.radius ? `, radius ${flaw.radius}` : ''}`
  : flaw.name ?? 'flaw';

/** Charts of widths, by cloth, with what they were true of. */
const charts = new Map();

/** Widths beside one another, to be taken over with a click. */
function compare(desk, name) {
  const of = JSON.stringify([desk.name, desk.job.entries.style, desk.job.sizes, {...desk.job.entries.cloths[name], width: 0, fold: 0}]);
  if (charts.get(name)?.of !== of) charts.set(name, {of, chart: h('div', {class: 'chart', 'aria-live': 'polite'})});
  const {chart} = charts.get(name);
  const take = width => desk.attempt(async () => {
    await desk.change(['cloths', name, 'width'], width.widthWords);
    await desk.change(['cloths', name, 'fold'], width.fold);
  });
  const go = async () => {
    chart.replaceChildren('Laying it in every usual width ...');
    const widths = await desk.get('/job/compare', {cloth: name}).catch(error => { chart.replaceChildren(); throw error; });
    const most = Math.max(...widths.filter(w => w.toBuy).map(w => w.toBuy));
    chart.replaceChildren(h('table', {}, h('thead', {}, h('tr', {}, ['Width', 'Fold', 'To buy', ''].map(t => h('th', {scope: 'col'}, t)))),
        h('tbody', {}, widths.map(w => h('tr', {},
            h('td', {}, w.widthWords), h('td', {}, FOLDS[w.fold] ?? w.fold),
            w.reason
              ? h('td', {colspan: 2}, w.reason)
              : [h('td', {}, h('span', {class: 'bar', style: `width: ${80 * w.toBuy / most}px`}), ` ${w.toBuyWords}${w.costWords ? ', ' + w.costWords : ''}`),
                h('td', {}, h('button', {'aria-label': `Take ${w.widthWords}, ${w.fold}`, onclick: () => take(w)}, 'Take this'))])))));
  };
  return h('div', {}, h('button', {onclick: () => desk.attempt(go)}, 'Compare widths'), chart);
}
