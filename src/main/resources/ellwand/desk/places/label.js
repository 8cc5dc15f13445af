// Where in a piece there is room for words, so that they do not lie over its outline.

import {box} from '../draw.js';

const GRID = 14;
const SIZES = [1, .85, .7, .55, .45, .35, .27, .2];

/**
 * @param points of the outline: x, y, x, y, ... in mm
 * @param crossed lines that words had better not lie over
 * @param lines under one another, as long and high as they are at letters of 1
 * @param most how large letters may be, mm
 * @returns the middle and the top of the block, and how large its letters are
 */
export function room(points, crossed, lines, most) {
  const b = box(points);
  const [long, high] = [Math.max(...lines.map(one => one.long)), lines.reduce((sum, one) => sum + one.high, 0)];
  const [mx, my] = [(b.x0 + b.x1) / 2, (b.y0 + b.y1) / 2];
  const spots = [];
  for (let i = 1; i < GRID; i++) {
    for (let k = 1; k < GRID; k++) {
      const [x, y] = [b.x0 + (b.x1 - b.x0) * i / GRID, b.y0 + (b.y1 - b.y0) * k / GRID];
      spots.push({x, y, off: Math.hypot(x - mx, y - my)});
    }
  }
  spots.sort((one, other) => one.off - other.off);
  for (const [size, off] of SIZES.flatMap(size => size < .6 ? [[size, crossed], [size, []]] : [[size, crossed]])) {
    const letters = most * size;
    const [w, h] = [long * letters * .54, high * letters * .54];
    const free = spots.find(({x, y}) => holds(points, x - w, y - h, x + w, y + h) && !off.some(line => comesInto(line, x - w, y - h, x + w, y + h)));
    if (free) return {x: free.x, y: free.y + high * letters / 2, letters};
  }
  const letters = most * SIZES.at(-1);
  return {x: mx, y: my + high * letters / 2, letters};
}

/** Whether a box lies inside: a corner does, and no line of the outline comes into it. */
function holds(points, x0, y0, x1, y1) {
  let inside = false;
  for (let i = 0; i < points.length; i += 2) {
    const j = (i + 2) % points.length;
    const [ax, ay, bx, by] = [points[i], points[i + 1], points[j], points[j + 1]];
    if (meets(ax, ay, bx, by, x0, y0, x1, y1)) return false;
    if (ay > y0 !== by > y0 && x0 < ax + (bx - ax) * (y0 - ay) / (by - ay)) inside = !inside;
  }
  return inside;
}

function comesInto(points, ...at) {
  for (let i = 0; i + 3 < points.length; i += 2) if (meets(...points.slice(i, i + 4), ...at)) return true;
  return false;
}

/** Whether a line has a part in a box: what is left of it after each side has cut it off. */
function meets(ax, ay, bx, by, x0, y0, x1, y1) {
  let from = 0, to = 1;
  for (const [way, room] of [[ax - bx, ax - x0], [bx - ax, x1 - ax], [ay - by, ay - y0], [by - ay, y1 - ay]]) {
    if (way === 0 && room < 0) return false;
    if (way < 0) from = Math.max(from, room / way);
    if (way > 0) to = Math.min(to, room / way);
  }
  return from <= to;
}
