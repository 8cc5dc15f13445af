// First steps: from a paper piece to a marker, for one who has never seen this page.

import {h} from '../draw.js';

const STEPS = [
  {title: 'Begin', picture: 'new', words: [
    'Go to New. Photograph or draw the pieces you have on paper, read a drawing, type body measures, or copy a sample to play with. On squared paper a square is 1 cm: click the corners of your piece one after another and type what you measure between them.',
    'Whatever you change is kept at once. Undo, at the top, takes it back, also tomorrow.']},
  {title: 'See to the pieces', picture: 'pieces', words: [
    'Under Pieces all of them lie side by side. The dashed line is sewn, the full line is cut. Click an edge: lay your tape along the paper, and compare the length. Give the edge its seam allowance, and notches where you want them.',
    'Click the name of a piece to say how often it is cut: 2, pair, or 1 on fold.']},
  {title: 'Describe the cloth', picture: 'cloths', words: [
    'Under Cloths type the width from edge to edge and the price. Say whether it has a nap, and how you fold it. Compare widths shows what you would have to buy of each.']},
  {title: 'Lay it', picture: 'table', words: [
    'Under Table press Lay. The first marker is there at once, and better ones follow; the line at the top says what to buy. Keep this one when it is good enough.',
    'Drag a piece where you would rather have it: it moves up to its neighbours and no farther. What breaks a rule is told, and cannot be printed.']},
  {title: 'Take it to the cutting table', picture: 'paper', words: [
    'Under Paper look at the cut sheet, which says where each piece lies, measured from the cut end and from the edge. Print the pieces full size: the first page alone, at 100 %, and measure its two squares before you print the rest.',
    'Cut one garment in cheap cloth first. Close a rotary cutter when it is down, cut away from your body, and count pins and needles back.']},
];

export async function show(desk, place) {
  place.append(h('article', {class: 'guide'},
      h('h2', {}, 'From a paper piece to a marker in ten minutes'),
      h('p', {}, 'You need the pieces of one garment, a tape measure, and the width of your cloth. Nothing that you do here leaves your computer.'),
      STEPS.map((step, i) => h('section', {},
          h('h3', {}, `${i + 1}. ${step.title}`), step.words.map(words => h('p', {}, words)),
          h('img', {src: `guide/${step.picture}.png`, alt: `The desk: ${step.title.toLowerCase()}`, loading: 'lazy'}))),
      h('section', {}, h('h3', {}, 'A few words'), h('dl', {},
          [['Marker', 'where every piece lies on the cloth, to be cut'], ['Ply', 'one layer of cloth'], ['Lay', 'the layers that are cut together'],
            ['Nap', 'any reason why pieces must all head one way: pile, sheen, a print'], ['Edge', 'a named stretch of a piece: neckline, side seam, hem'], ['Toile', 'a first garment of cheap cloth, to try the fit']]
              .flatMap(([word, means]) => [h('dt', {}, word), h('dd', {}, means)])))));
}
