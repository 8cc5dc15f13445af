// The plan of an order as pictures: each lay from the side, its marker, and what the plan saves.

import {h, s} from '../draw.js';

const INKS = ['#dfe8ec', '#f4ead2', '#e3ecd9', '#efe0e6', '#e2e2f0', '#f6e2d0', '#d9ecea'];
const HATCHES = ['', 'M0 8L8 0', 'M0 0L8 8', 'M4 0V8', 'M0 4H8', 'M0 4H8M4 0V8', 'M0 8L8 0M0 0L8 8'];

/** The same fill for a colour of the order everywhere; hatched, so that they differ in grey as well. */
function fills(colours) {
  return s('svg', {width: 0, height: 0, class: 'defs', 'aria-hidden': 'true'}, s('defs', {}, colours.map((colour, i) =>
    s('pattern', {id: `colour-${i}`, width: 8, height: 8, patternUnits: 'userSpaceOnUse'},
        s('rect', {width: 8, height: 8, fill: INKS[i % INKS.length]}), s('path', {d: HATCHES[i % HATCHES.length], class: 'hatch'})))));
}

export function planned(desk, plan) {
  const colours = [...new Set(plan.lays.flatMap(lay => Object.keys(lay.plies)))];
  const longest = Math.max(...plan.lays.map(lay => lay.lengthMm));
  const several = plan.cloths.length > 1;
  return h('div', {}, fills(colours), savings(plan),
      plan.cloths.map(cloth => h('section', {'aria-label': `Lays of ${cloth.name}`},
          several ? h('h2', {}, cloth.name) : '',
          h('ol', {class: 'lays'}, plan.lays.filter(lay => lay.cloth === cloth.name).map(lay => one(desk, lay, colours, longest))),
          Object.keys(cloth.buy).length
            ? h('p', {}, 'To buy: ', Object.entries(cloth.buy).map(([colour, length], i) => [i ? ', ' : '', h('b', {}, length), ` ${colour}`]).flat())
            : '',
          h('ul', {}, cloth.said.map(words => h('li', {}, words))))),
      plan.cautions.length ? h('section', {}, h('h2', {}, 'Take care'), h('ul', {}, plan.cautions.map(words => h('li', {}, words)))) : '');
}

/** What it takes, beside one lay for each size. */
function savings({planned: now, oneSizeALay: plain, oneSizeALayEstimated: estimated, garments}) {
  const row = (label, sum) => h('tr', {}, h('th', {scope: 'row'}, label), h('td', {}, sum.lays), h('td', {}, h('span', {class: 'bar', style: `width: ${8 * sum.clothMm / Math.max(now.clothMm, plain.clothMm)}rem`}), ` ${sum.cloth}`),
      sum.cost ? h('td', {}, sum.cost) : '');
  return h('table', {class: 'savings'}, h('caption', {}, `${garments} garments`),
      h('thead', {}, h('tr', {}, h('td'), h('th', {scope: 'col'}, 'Lays'), h('th', {scope: 'col'}, 'Cloth'), now.cost ? h('th', {scope: 'col'}, 'Cost') : '')),
      h('tbody', {}, row('This plan', now), row(estimated ? 'One size a lay, estimated' : 'One size a lay', plain)));
}

function one(desk, lay, colours, longest) {
  const sizes = Object.entries(lay.garments).map(([size, n]) => `${n} of size ${size}`).join(', ');
  const address = lay.picture && '/job/file?' + new URLSearchParams({name: desk.name, order: 1, file: lay.picture});
  return h('li', {class: 'lay card'},
      h('h3', {}, `Lay ${lay.number}: ${sizes}`),
      h('p', {}, `${lay.length} long, ${lay.cut} garments from ${lay.clothLength} of cloth`),
      side(lay, colours, longest),
      address
        ? h('button', {class: 'thumb', 'aria-label': `Marker of lay ${lay.number}, large`, onclick: () => large(lay, sizes, address)},
            h('img', {src: address, alt: `Marker of lay ${lay.number}`, loading: 'lazy'}))
        : '');
}

/** The layers on the table from the side, as long as they are beside the longest lay. */
function side(lay, colours, longest) {
  const plies = Object.entries(lay.plies).filter(([, n]) => n > 0);
  const all = plies.reduce((sum, [, n]) => sum + n, 0);
  const each = Math.min(6, 90 / all), width = Math.max(20, 300 * lay.lengthMm / longest);
  let y = 4;
  const stacks = plies.map(([colour, n]) => {
    const high = Math.max(14, n * each);
    const stack = s('g', {}, s('rect', {x: 2, y, width, height: high, class: 'stack', fill: `url(#colour-${colours.indexOf(colour)})`}),
        Array.from({length: high === n * each ? n - 1 : 0}, (_, k) => s('path', {class: 'ply', d: `M2 ${y + each * (k + 1)}h${width}`})),
        s('text', {x: 310, y: y + high / 2 + 5, 'font-size': 13}, `${n} x ${colour}`));
    y += high + 2;
    return stack;
  });
  return s('svg', {class: 'side', viewBox: `0 0 460 ${y + 4}`, role: 'img', 'aria-label': `From the side: ${plies.map(([colour, n]) => `${n} layers ${colour}`).join(', ')}`},
      stacks, s('path', {class: 'cutend', d: `M0 ${y + 1}H304`}));
}

function large(lay, sizes, address) {
  const room = h('dialog', {class: 'large', 'aria-label': `Marker of lay ${lay.number}`},
      h('h2', {}, `Lay ${lay.number}: ${sizes}`), h('img', {src: address, alt: `Marker of lay ${lay.number}: ${sizes}`}),
      h('div', {class: 'row'}, h('button', {class: 'main', onclick: () => room.close()}, 'Close'), h('a', {href: address, download: lay.picture}, 'download')));
  room.addEventListener('close', () => room.remove());
  document.body.append(room);
  room.showModal();
}
