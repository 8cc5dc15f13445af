// A tape by hand: from point to point, drawn to outlines that are near.

import {s} from '../../draw.js';
import {show as shown} from '../../measure.js';
import {mm, pixel} from './board.js';
import {outline} from './copies.js';

/** Pixels within which a point is drawn to an outline. */
const NEAR = 14;

export function tape(on, desk, marker, said) {
  let from = null, to = null, cursor = null;

  function show() {
    const size = 5 * pixel(on);
    const parts = [];
    if (from && to) parts.push(s('path', {class: 'tape', d: `M${from[0]} ${-from[1]}L${to[0]} ${-to[1]}`}));
    for (const at of [from, to, cursor]) {
      if (at) parts.push(s('path', {class: 'tape', d: `M${at[0] - size} ${-at[1]}h${2 * size}M${at[0]} ${-at[1] - size}v${2 * size}`}));
    }
    on.layers.over.replaceChildren(...parts);
    said(words());
  }

  function words() {
    if (!from) return 'Measure: drag from one point to another, or go there with the arrow keys and press Enter.';
    if (!to) return 'Measure: now the other point.';
    const [x, y] = [Math.abs(to[0] - from[0]), Math.abs(to[1] - from[1])];
    const [all, along, across] = [Math.hypot(x, y), x, y].map(v => shown(v, desk.job));
    return `Measured ${all}: ${along} along, ${across} across.`;
  }

  /** The nearest corner, or else the nearest point of a line. */
  function drawn([x, y], reach) {
    let corner = null, side = null;
    for (const points of lines(marker())) {
      for (let i = 0; i < points.length; i += 2) {
        const j = (i + 2) % points.length;
        const [ax, ay, bx, by] = [points[i], points[i + 1], points[j], points[j + 1]];
        corner = nearer(corner, ax, ay);
        const long = (bx - ax) ** 2 + (by - ay) ** 2;
        const part = long ? Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / long)) : 0;
        side = nearer(side, ax + part * (bx - ax), ay + part * (by - ay));
      }
    }
    function nearer(best, px, py) {
      const off = Math.hypot(px - x, py - y);
      return off < (best?.off ?? reach) ? {at: [px, py], off} : best;
    }
    return corner?.at ?? side?.at ?? [x, y];
  }

  const begin = at => { [from, to] = from && !to ? [from, at] : [at, null]; };

  show();
  return {
    down(event) {
      const at = drawn(mm(on, event), NEAR * pixel(on));
      begin(at);
      cursor = null;
      show();
    },
    move(event) {
      if (!from || !event.buttons) return;
      const at = drawn(mm(on, event), NEAR * pixel(on));
      if (Math.hypot(at[0] - from[0], at[1] - from[1]) > NEAR * pixel(on)) to = at;
      show();
    },
    /** Whether the key was for the tape. */
    key(event) {
      const ways = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};
      if (ways[event.key]) {
        const far = event.shiftKey ? 50 : 5;
        cursor = (cursor ?? [0, 0]).map((v, axis) => v + ways[event.key][axis] * far);
      } else if (event.key === 'Enter' && cursor) {
        begin(cursor = drawn(cursor, 2 * NEAR * pixel(on)));
      } else {
        return false;
      }
      show();
      return true;
    },
    end() { on.layers.over.replaceChildren(); },
  };
}

/** Everything a tape can be held to. */
function lines(marker) {
  return [
    ...(marker?.zones ?? []).map(zone => [zone.x0, zone.y0, zone.x1, zone.y0, zone.x1, zone.y1, zone.x0, zone.y1]),
    ...(marker?.copies ?? []).map(copy => outline(marker, copy)?.points ?? []),
  ];
}
