// An outline over a photo, of corners, joints and curves that can be moved. mm, y up.

import {s} from '../draw.js';

const NUDGE_MM = 1;

export class Traced {
  /**
   * @param piece its edges as lines of x, y and, for curves, their two handles
   * @param size of a corner's dot, mm
   * @param moved is told whenever something was
   */
  constructor(piece, size, moved) {
    this.number = piece.number;
    this.edges = piece.edges.map(edge => edge.name);
    this.segments = piece.edges.flatMap((edge, i) => edge.lines.map(line => ({
      edge: i, start: line.slice(0, 2), handles: line.length === 8 ? [line.slice(2, 4), line.slice(4, 6)] : null,
    })));
    this.notches = piece.notches.map(([x1, y1, x2, y2]) => ({line: [x1, y1, x2, y2], kept: true}));
    this.arrow = piece.arrow;
    this.size = size;
    this.moved = moved;
    this.chosen = 0;
    this.element = s('g');
    this.draw();
  }

  next(i) { return this.segments[(i + 1) % this.segments.length]; }

  before(i) { return this.segments[(i + this.segments.length - 1) % this.segments.length]; }

  /** A joint takes the handles beside it along. */
  moveJoint(i, dx, dy) {
    const at = this.segments[i];
    for (const point of [at.start, at.handles?.[0], this.before(i).handles?.[1]]) shift(point, dx, dy);
  }

  /** A straight edge moves as a whole; of another, what lies between its corners. */
  moveEdge(edge, dx, dy) {
    const mine = this.segments.map((_, i) => i).filter(i => this.segments[i].edge === edge);
    if (mine.length === 1 && !this.segments[mine[0]].handles) {
      this.moveJoint(mine[0], dx, dy);
      this.moveJoint((mine[0] + 1) % this.segments.length, dx, dy);
      return;
    }
    // So that the middle of a single curve goes where it is dragged.
    const by = mine.length === 1 ? 4 / 3 : 1;
    for (const i of mine) {
      for (const point of this.segments[i].handles ?? []) shift(point, dx * by, dy * by);
      if (i !== mine[0]) shift(this.segments[i].start, dx, dy);
    }
  }

  choose(edge) {
    this.chosen = edge;
    this.draw();
  }

  path(i) {
    const {start, handles} = this.segments[i], end = this.next(i).start;
    return handles
      ? `M${start[0]} ${-start[1]}C${handles.map(([x, y]) => `${x} ${-y}`).join(' ')} ${end[0]} ${-end[1]}`
      : `M${start[0]} ${-start[1]}L${end[0]} ${-end[1]}`;
  }

  ofEdge(edge) {
    return this.segments.map((_, i) => i).filter(i => this.segments[i].edge === edge);
  }

  /** mm along the edge. */
  length(edge) {
    return this.ofEdge(edge).reduce((sum, i) => sum + s('path', {d: this.path(i)}).getTotalLength(), 0);
  }

  draw() {
    const focus = this.element.contains(document.activeElement) ? document.activeElement.getAttribute('aria-label') : null;
    const corner = i => this.segments[i].edge !== this.before(i).edge;
    this.element.replaceChildren(
        ...this.edges.map((name, edge) => this.grip('edge' + (edge === this.chosen ? ' chosen' : ''), `edge ${name}`, (dx, dy) => this.moveEdge(edge, dx, dy), () => { this.chosen = edge; },
            this.ofEdge(edge).flatMap(i => [s('path', {class: 'hit', d: this.path(i)}), s('path', {class: 'over', d: this.path(i)})]))),
        this.arrow ? s('path', {class: 'drawn-arrow', d: `M${this.arrow[0]} ${-this.arrow[1]}L${this.arrow[2]} ${-this.arrow[3]}`}) : '',
        ...this.notches.map((notch, i) => s('path', {class: 'nick' + (notch.kept ? '' : ' off'), d: `M${notch.line[0]} ${-notch.line[1]}L${notch.line[2]} ${-notch.line[3]}`, tabindex: 0, role: 'checkbox', 'aria-checked': notch.kept, 'aria-label': `notch ${i + 1}`,
          onclick: () => { notch.kept = !notch.kept; this.draw(); },
          onkeydown: event => { if (event.key === 'Enter' || event.key === ' ') { event.preventDefault(); notch.kept = !notch.kept; this.draw(); } }})),
        ...this.segments.map(({start}, i) => this.grip('joint', corner(i) ? `corner ${i + 1}` : `joint ${i + 1}`, (dx, dy) => this.moveJoint(i, dx, dy), null,
            [s('circle', {cx: start[0], cy: -start[1], r: corner(i) ? this.size : this.size * .6}),
              corner(i) ? s('text', {class: 'letter', x: start[0] + this.size * 1.4, y: -start[1] - this.size * 1.2, 'font-size': this.size * 3}, letter(this.segments[i].edge)) : ''])),
        ...this.ofEdge(this.chosen).flatMap(i => (this.segments[i].handles ?? []).map((handle, k) => {
          const foot = k ? this.next(i).start : this.segments[i].start;
          return s('g', {}, s('path', {class: 'arm', d: `M${foot[0]} ${-foot[1]}L${handle[0]} ${-handle[1]}`}),
              this.grip('handle', `handle ${k + 1} of line ${i + 1}`, (dx, dy) => shift(handle, dx, dy), null, [s('circle', {cx: handle[0], cy: -handle[1], r: this.size * .5})]));
        })));
    if (focus) this.element.querySelector(`[aria-label="${CSS.escape(focus)}"]`)?.focus({preventScroll: true});
  }

  /** Something that is dragged, or moved with the arrow keys. */
  grip(kind, label, move, chosen, parts) {
    const done = () => { this.draw(); this.moved(); };
    return s('g', {class: kind, tabindex: 0, role: 'button', 'aria-label': label,
      onfocus: () => { if (chosen && !this.dragging) chosen(); },
      onkeydown: event => {
        const ways = {ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]}[event.key];
        if (!ways) return;
        event.preventDefault();
        const far = event.shiftKey ? NUDGE_MM / 10 : NUDGE_MM;
        move(ways[0] * far, ways[1] * far);
        done();
      },
      onpointerdown: event => {
        event.preventDefault();
        const svg = event.currentTarget.ownerSVGElement;
        let from = mm(svg, event);
        chosen?.();
        this.dragging = true;
        svg.setPointerCapture(event.pointerId);
        svg.onpointermove = to => {
          const at = mm(svg, to);
          move(at[0] - from[0], at[1] - from[1]);
          from = at;
          this.draw();
        };
        svg.onpointerup = svg.onpointercancel = () => {
          svg.onpointermove = svg.onpointerup = svg.onpointercancel = null;
          this.dragging = false;
          done();
        };
      }}, parts);
  }

  /** As the desk takes it. */
  drawn() {
    return {
      number: this.number,
      edges: this.edges.map((name, edge) => ({name, lines: this.ofEdge(edge).map(i => [...this.segments[i].start, ...(this.segments[i].handles ?? []).flat(), ...this.next(i).start])})),
      notches: this.notches.map((notch, i) => notch.kept ? i : -1).filter(i => i >= 0),
    };
  }
}

/** As the edges that meet there are called at first. */
const letter = n => String.fromCharCode(65 + n % 26) + (n < 26 ? '' : Math.floor(n / 26) + 1);

function shift(point, dx, dy) {
  if (!point) return;
  point[0] += dx;
  point[1] += dy;
}

function mm(svg, event) {
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  return [at.x, -at.y];
}
