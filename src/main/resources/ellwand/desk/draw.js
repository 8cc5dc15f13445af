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
