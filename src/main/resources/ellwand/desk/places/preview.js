// A print looked at before it is printed: all its pages small, one of them large.

import {asked, get} from '../server.js';
import {h} from '../draw.js';

/**
 * @param query what the desk makes the PDF from
 * @param name of the file when it is saved
 */
export async function pagesOf(room, title, query, name) {
  room.replaceChildren(h('h2', {}, title), h('p', {role: 'status'}, 'Laying out the pages ...'));
  const {count} = await get('/job/pages', query);
  const address = '/job/print?' + asked(query);
  const page = (number, dots) => '/job/page?' + asked({...query, number, dots});
  const sheet = h('div', {class: 'sheet'});
  const many = h('div', {class: 'pages'});
  let at = 1;
  const turn = to => {
    at = to;
    sheet.replaceChildren(
        h('div', {class: 'row'},
            count > 1 ? h('button', {disabled: at === 1, onclick: () => turn(at - 1)}, 'Page before') : '',
            count > 1 ? h('button', {disabled: at === count, onclick: () => turn(at + 1)}, 'Next page') : '',
            h('span', {role: 'status'}, `Page ${at} of ${count}`)),
        h('img', {src: page(at, 1400), alt: `Page ${at} of ${count}`}));
    many.querySelectorAll('button').forEach((button, i) => button.setAttribute('aria-current', i + 1 === at ? 'page' : 'false'));
  };
  if (count > 1) {
    many.append(...Array.from({length: count}, (_, i) => h('button', {'aria-label': `Page ${i + 1}`, onclick: () => turn(i + 1)},
        h('img', {src: page(i + 1, 240), alt: '', loading: 'lazy'}), String(i + 1))));
  }
  room.replaceChildren(h('h2', {}, title),
      h('div', {class: 'row'}, h('a', {class: 'button', href: address, target: '_blank', rel: 'noopener'}, 'Open to print'), h('a', {href: address, download: name}, `download ${name}`)),
      many, sheet);
  turn(1);
}

export function picture(room, title, address) {
  room.replaceChildren(h('h2', {}, title), h('img', {src: address, alt: `Drawing ${title}`}));
}

export async function words(room, title, address) {
  room.replaceChildren(h('h2', {}, title), h('pre', {class: 'said', tabindex: 0}, await (await fetch(address)).text()));
}
