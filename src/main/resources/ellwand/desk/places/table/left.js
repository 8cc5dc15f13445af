// What is left over: hatched, with the largest pieces that can still be used.

import {h, renew, s, line, say} from '../../draw.js';

/** What has been put on the shelf, by cloth and place. */
const kept = new Map();
let wanted = 0;

/** Asks for what is left of a cloth as it lies now, draws and lists it. */
export async function show(on, desk, cloth, list) {
  const mine = ++wanted;
  const left = await desk.get('/job/table/left', {cloth});
  if (mine === wanted) draw(on, desk, cloth, list, left);
}

/** Takes it off again. */
export function forget(on, list) {
  wanted++;
  on.layers.left.replaceChildren();
  list.replaceChildren();
}

const letter = i => String.fromCharCode(65 + i);
const key = (desk, cloth, place) => [desk.name, cloth, place.zone, place.x, place.y, place.length, place.width].join();

function draw(on, desk, cloth, list, left) {
  on.layers.left.replaceChildren(
      ...left.regions.map(rings => s('path', {class: 'rest', 'fill-rule': 'evenodd', d: rings.map(ring => line(ring, true)).join('')})),
      ...left.places.flatMap((place, i) => [
        s('rect', {class: 'usable', x: place.x, y: -place.y - place.width, width: place.length, height: place.width}),
        s('text', {x: place.x + place.length / 2, y: -place.y - place.width / 2 + on.letters * .35, 'font-size': on.letters, 'text-anchor': 'middle'}, letter(i))]));
  const keep = async place => {
    const names = await desk.post('/job/table/left', {cloth}, place);
    kept.set(key(desk, cloth, place), names.join(' and '));
    say(`Kept among the job\'s remnants as ${names.join(' and ')}.`);
    draw(on, desk, cloth, list, left);
  };
  renew(list, () => h('section', {'aria-label': 'Left over'}, h('h2', {}, 'Left over, hatched'),
      left.places.length
        ? h('ul', {class: 'plain'}, left.places.map((place, i) => h('li', {class: 'row'},
            h('span', {}, h('b', {}, `${letter(i)}: ${place.size}`), `, ${place.where}`),
            kept.has(key(desk, cloth, place))
              ? h('span', {class: 'hint'}, `on the shelf as ${kept.get(key(desk, cloth, place))}`)
              : h('button', {'aria-label': `Keep ${letter(i)} as a remnant`, onclick: () => desk.attempt(() => keep(place))}, 'Keep as remnant'))))
        : h('p', {}, 'Nothing that is worth a place on the shelf.')));
}
