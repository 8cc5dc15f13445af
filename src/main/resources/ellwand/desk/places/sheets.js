// Paper: every page that can be printed or sent, seen before it is.

import {h} from '../draw.js';

export async function show(desk, place) {
  const files = await desk.get('/job/files');
  const link = file => '/job/file?' + new URLSearchParams({name: desk.name, file});
  const preview = h('div', {class: 'preview'});
  const see = file => preview.replaceChildren(
      h('h2', {}, file),
      /\.(svg|png)$/.test(file)
        ? h('img', {src: link(file), alt: `Drawing ${file}`})
        : h('iframe', {src: link(file), title: file}));
  place.append(h('div', {class: 'two'}, preview, h('aside', {class: 'card'},
      h('h2', {}, 'Paper'),
      h('p', {}, 'Close a rotary cutter when it is down, cut away from your body, and count pins and needles back.'),
      h('ul', {class: 'plain'}, files.map(file => h('li', {class: 'row'},
          h('button', {onclick: () => see(file)}, file),
          h('a', {href: link(file), download: file}, 'download')))))));
  if (files.length) see(files.find(file => file.endsWith('.svg')) ?? files[0]);
}
