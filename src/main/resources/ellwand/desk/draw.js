// Small helpers to put elements on the page.

const SVG = 'http://www.w3.org/2000/svg';

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (name === 'style') element.style.cssText = value;
    else if (name.startsWith('on')) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children.flat().filter(child => child !== null && child !== undefined));
  return element;
}

export const h = (name, attributes, ...children) =>
  filled(document.createElement(name), attributes, children);

export const s = (name, attributes, ...children) =>
  filled(document.createElementNS(SVG, name), attributes, children);

/** A path through x, y, x, y, ... with y turned to point down. */
export function line(points, closed = false) {
  let d = '';
  for (let i = 0; i < points.length; i += 2) {
    d += `${i ? 'L' : 'M'}${points[i]} ${-points[i + 1]}`;
  }
  return d + (closed ? 'Z' : '');
}

export function box(points) {
  const b = {x0: Infinity, y0: Infinity, x1: -Infinity, y1: -Infinity};
  for (let i = 0; i < points.length; i += 2) {
    b.x0 = Math.min(b.x0, points[i]);
    b.x1 = Math.max(b.x1, points[i]);
    b.y0 = Math.min(b.y0, points[i + 1]);
    b.y1 = Math.max(b.y1, points[i + 1]);
  }
  return b;
}

/** The field in which something stands that has not been handed over yet, and what is pressed now. */
let typed = null, pressed = null;

/** What is to be drawn anew once hands are off it. */
const late = new Map();

const busy = element => element.contains(typed) || element.contains(pressed);

function released() {
  pressed = null;
  for (const [element, make] of [...late]) if (element.isConnected) renew(element, make); else late.delete(element);
}

addEventListener('input', event => { typed = event.target; }, true);
addEventListener('change', () => { typed = null; }, true);
addEventListener('focusout', event => { if (event.target === typed) { typed = null; setTimeout(released); } }, true);
addEventListener('pointerdown', event => {
  pressed = event.target;
  // It may have its list open for as long as it has the focus.
  if (pressed.closest('select')) typed = pressed.closest('select');
}, true);
for (const end of ['pointerup', 'pointercancel']) addEventListener(end, () => setTimeout(released), true);
addEventListener('keydown', event => { if (event.key === ' ' && event.target.matches?.('button')) pressed = event.target; }, true);
addEventListener('keyup', event => { if (event.key === ' ') setTimeout(released); }, true);

const STOPS = 'button, select, input, a, summary, [tabindex]';
const called = one => [one.tagName, one.getAttribute('aria-label') ?? one.closest('label')?.firstChild.textContent ?? one.textContent].join();

/**
 * Puts others in place of what stands in an element, as soon as nobody types or presses there: what
 * is typed is not lost, nor a click. Who is at something there stays at what has taken its place.
 */
export function renew(element, make) {
  if (busy(element)) {
    late.set(element, make);
    return;
  }
  late.delete(element);
  const at = document.activeElement;
  const before = element.contains(at) && at !== element ? [...element.querySelectorAll(STOPS)] : [];
  const names = before.map(called);
  const [place, scrolled] = [before.indexOf(at), element.scrollTop];
  element.replaceChildren(...[make()].flat().filter(child => child !== null && child !== undefined));
  element.scrollTop = scrolled;
  if (place < 0) return;
  const after = [...element.querySelectorAll(STOPS)];
  const nth = names.slice(0, place).filter(name => name === names[place]).length;
  const next = after.filter(one => called(one) === names[place])[nth] ?? after[Math.min(place, after.length - 1)];
  next?.focus({preventScroll: true});
  if (next?.value === at.value && at.selectionStart >= 0) next.setSelectionRange?.(at.selectionStart, at.selectionEnd);
}

let quiet;

/** Says something for a few seconds at the foot of the page. */
export function say(words) {
  const says = document.getElementById('says');
  says.textContent = words;
  clearTimeout(quiet);
  quiet = setTimeout(() => { says.textContent = ''; }, 6000);
}

/** What is said before a job opens, in a window of its own; it closes with its button. */
export function tell(title, sentences) {
  return new Promise(done => {
    const window = h('dialog', {'aria-label': title}, h('h2', {}, title),
        h('ul', {}, sentences.map(words => h('li', {}, words))),
        h('button', {class: 'main', onclick: () => window.close()}, 'Go on'));
    window.addEventListener('close', () => { window.remove(); done(); });
    document.body.append(window);
    window.showModal();
  });
}
