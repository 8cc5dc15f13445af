// New: the jobs of the folder, and where a new one may come from.

import {get, post} from '../server.js';
import {h} from '../draw.js';

export async function show(desk, place) {
  const {jobs, samples} = await get('/jobs');
  place.append(
      h('div', {class: 'two'},
          h('section', {},
              h('h2', {}, 'Your styles'),
              jobs.length
                ? h('ul', {class: 'plain'}, jobs.map(name =>
                    h('li', {}, h('button', {onclick: () => desk.attempt(() => desk.open(name))},
                        name.replace(/\.ya?ml$/, '')))))
                : h('p', {}, 'This folder is empty. Begin with a sample: it is copied here, and yours to change.')),
          h('section', {class: 'card'},
              h('h2', {}, 'Begin with a sample'),
              h('ul', {class: 'plain'}, samples.map(sample =>
                h('li', {}, h('button', {
                  onclick: () => desk.attempt(async () => {
                    const {name} = await post('/jobs', null, {sample});
                    await desk.open(name);
                  }),
                }, sample.replace(/-/g, ' '))))))));
}
