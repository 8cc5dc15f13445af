// Hands on the table: fingers, mouse and keys.

import {drag, drop, look, mm, pan, pixel, zoom} from './board.js';

/** Pixels that a hand may tremble without moving anything. */
const STILL = 5;

/**
 * Listens to what hands do.
 *
 * @param on the board
 * @param to what they do it to: touched(i, more), dragged(i, x, y, exactly), key(i, event), tape(),
 *     together(i) (the copies that move when one is taken), place(i) (where it lies now), over(i)
 */
export function hands(on, to) {
  const fingers = new Map();
  let held = null;

  on.svg.addEventListener('pointerdown', event => {
    fingers.set(event.pointerId, event);
    if (fingers.size === 2) {
      held?.drop();
      held = pinching();
      return;
    }
    if (fingers.size > 2 || event.button) return;
    on.svg.setPointerCapture(event.pointerId);
    const copy = event.target.closest('.copy')?.dataset.copy;
    if (to.tape()) held = taping(event);
    else if (copy !== undefined) held = taking(Number(copy), event);
    else held = panning(event);
  });
  on.svg.addEventListener('pointermove', event => {
    if (fingers.has(event.pointerId)) fingers.set(event.pointerId, event);
    if (held) held.move(event);
    else if (!to.tape()) to.over(event.target.closest?.('.copy')?.dataset.copy);
  });
  const ends = lifted => event => {
    if (!fingers.delete(event.pointerId)) return;
    if (lifted) held?.up(event); else held?.drop();
    held = null;
  };
  on.svg.addEventListener('pointerup', ends(true));
  on.svg.addEventListener('pointercancel', ends(false));
  on.svg.addEventListener('dblclick', event => { if (!event.target.closest('.copy')) look(on, null); });
  on.svg.addEventListener('wheel', event => {
    if (!event.ctrlKey) return;
    event.preventDefault();
    zoom(on, event.deltaY > 0 ? 1.15 : 1 / 1.15, ...mm(on, event));
  }, {passive: false});
  on.svg.addEventListener('keydown', event => {
    const copy = event.target.closest('.copy')?.dataset.copy;
    if (to.key(copy === undefined ? null : Number(copy), event)) event.preventDefault();
  });
  on.svg.addEventListener('focusin', event => to.over(event.target.closest('.copy')?.dataset.copy));

  const moved = (from, event) => Math.hypot(event.clientX - from.clientX, event.clientY - from.clientY) > STILL;

  function taking(i, from) {
    const [x, y] = mm(on, from);
    const was = to.place(i);
    let far = null;
    return {
      move(event) {
        const [tx, ty] = mm(on, event);
        if (far || moved(from, event)) {
          far = [tx - x, ty - y];
          drag(on, to.together(i), ...far);
        }
      },
      up(event) {
        drop(on);
        const now = to.place(i);
        // A search may have laid it elsewhere meanwhile: it goes where the hand is.
        if (far && now) to.dragged(i, far[0] + was.x - now.x, far[1] + was.y - now.y, event.altKey);
        else to.touched(i, event.shiftKey || event.ctrlKey || event.metaKey);
      },
      drop() {
        drag(on, to.together(i), 0, 0);
        drop(on);
      },
    };
  }

  function taping(from) {
    to.tape().down(from);
    return {move: event => to.tape().move(event), up() {}, drop() {}};
  }

  /** The bare cloth is taken hold of. */
  function panning(from) {
    const [x, y] = mm(on, from);
    return {
      move(event) {
        const [tx, ty] = mm(on, event);
        pan(on, x - tx, ty - y);
      },
      up(event) { if (!moved(from, event)) to.touched(null); },
      drop() {},
    };
  }

  function pinching() {
    const spread = () => {
      const [a, b] = [...fingers.values()];
      return {apart: Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY) || 1,
        middle: {clientX: (a.clientX + b.clientX) / 2, clientY: (a.clientY + b.clientY) / 2}};
    };
    let before = spread();
    return {
      move() {
        if (fingers.size < 2) return;
        const now = spread();
        const by = pixel(on);
        pan(on, (before.middle.clientX - now.middle.clientX) * by, (before.middle.clientY - now.middle.clientY) * by);
        zoom(on, before.apart / now.apart, ...mm(on, now.middle));
        before = now;
      },
      up() {},
      drop() {},
    };
  }
}
