// What lies on the table, in words and as outlines in place.

import {box} from '../../draw.js';

const placed = new WeakMap();

/** The outline of a copy in place: x, y, x, y, ... in mm. */
export function outline(marker, copy) {
  const shape = marker.shapes[copy.shape];
  if (!shape) return null;
  if (placed.has(copy)) return placed.get(copy);
  const turn = copy.turn * Math.PI / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const points = [];
  for (let k = 0; k < shape.length; k += 2) {
    const px = shape[k], py = copy.flipped ? -shape[k + 1] : shape[k + 1];
    points.push(cos * px - sin * py + copy.x, sin * px + cos * py + copy.y);
  }
  const found = {points, box: box(points)};
  placed.set(copy, found);
  return found;
}

export const same = (a, b) => a.shape === b.shape && a.x === b.x && a.y === b.y && a.turn === b.turn
    && a.flipped === b.flipped && a.garment === b.garment && a.zone === b.zone;

export const label = (desk, copy) => copy.piece + (desk.job.sizes.length > 1 ? ` ${copy.size}` : '');

function cuts(marker, copy) {
  const double = marker.zones.find(zone => zone.id === copy.zone)?.plies === 2;
  switch (copy.form) {
    case 'pair': return 'cuts two';
    case 'half': return 'on the fold, cuts one whole';
    case 'opened': return 'opened out, cuts one';
    default: return double ? 'cuts one and a spare' : 'cuts one';
  }
}

/** All that is to be said of a copy. */
export function told(desk, marker, i) {
  const copy = marker.copies[i];
  return [
    copy.piece,
    desk.job.sizes.length > 1 ? `size ${copy.size}` : '',
    `garment ${copy.garment}`,
    cuts(marker, copy),
    marker.pinned.includes(i) ? 'pinned' : '',
    marker.findings.some(f => f.copies.includes(i)) ? 'lies wrongly' : '',
  ].filter(Boolean).join(', ');
}

/** How copies can be chosen together: by what they share. */
export function groups(desk, marker) {
  const by = (name, key, words) => {
    const sets = new Map();
    marker.copies.forEach((copy, i) => {
      if (!sets.has(key(copy))) sets.set(key(copy), []);
      sets.get(key(copy)).push(i);
    });
    return {name, sets: [...sets].map(([value, copies]) => ({words: words(value), value, copies}))};
  };
  return [
    by('Piece', copy => copy.piece, value => value),
    by('Size', copy => copy.size, value => `size ${value}`),
    by('Garment', copy => copy.garment, value => `garment ${value}`),
  ].filter(group => group.name === 'Piece' || group.sets.length > 1);
}
