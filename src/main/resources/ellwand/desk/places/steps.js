// The steps in which a piece is altered: what each asks for, in the words of the job file.
//
// A field is {key, label, as}: what is asked for is a name, a length, a share or length (reach), a
// point or an edge of the piece (several with 'points', 'edges'), an edge of any piece
// (elsewhere), how a curve runs (manner), a number (count) or one of a few words (choice). The
// first field says what is done; its key is the step's verb.

const name = (key, label) => ({key, label, as: 'name'});
const length = (key, label, more) => ({key, label, as: 'length', ...more});
const point = (key, label, more) => ({key, label, as: 'point', ...more});
const edge = (key, label, more) => ({key, label, as: 'edge', ...more});
const choice = (key, label, words, more) => ({key, label, as: 'choice', words, ...more});
const maybe = {optional: true};

const LINE = [
  {key: 'through', label: 'By way of', as: 'points', ...maybe},
  choice('as', 'As a', ['line', 'curve'], maybe),
  {key: 'leaves', label: 'Leaves', as: 'manner', ...maybe},
  {key: 'arrives', label: 'Arrives', as: 'manner', ...maybe},
];
const TOWARDS = point('folded towards', 'Folded towards');

const KINDS = [
  {group: 'Mark a point', label: 'on an edge', fields: [name('mark', 'Called'), edge('on', 'On'), {key: 'at', label: 'From its first point', as: 'reach'}]},
  {group: 'Mark a point', label: 'along an edge from a point', fields: [name('mark', 'Called'), point('from', 'From'), edge('along', 'Along'), {key: 'by', label: 'By', as: 'reach'}]},
  {group: 'Mark a point', label: 'square to an edge', fields: [name('mark', 'Called'), point('from', 'From'), edge('square to', 'Square to'), length('by', 'Out by')]},
  {group: 'Mark a point', label: 'towards another', fields: [name('mark', 'Called'), point('from', 'From'), point('towards', 'Towards'), length('by', 'By')]},
  {group: 'Mark a point', label: 'between two others', fields: [name('mark', 'Called'), {key: 'between', label: 'Between', as: 'points', two: true}, {key: 'at', label: 'Share of the way', as: 'reach'}]},
  {group: 'Mark a point', label: 'where a line through two meets an edge', fields: [name('mark', 'Called'), {key: 'where', label: 'Through', as: 'points', two: true}, edge('meets', 'Meets')]},
  {group: 'Mark a point', label: 'up and across from a point', fields: [name('mark', 'Called'), point('from', 'From'), length('along the grain', 'Up the grain', maybe), length('across the grain', 'To the left', maybe)]},

  {group: 'Draw anew', label: 'Draw an edge anew', fields: [{key: 'redraw', label: 'Edges, in order', as: 'edges'}, point('from', 'From', maybe), point('to', 'To', maybe), ...LINE]},
  {group: 'Draw anew', label: 'Make a seam as long as another', fields: [edge('true', 'The edge that gives'), {key: 'to', label: 'As long as', as: 'elsewhere'}, point('at', 'At its end'), length('ease', 'Longer by', maybe)]},
  {group: 'Draw anew', label: 'Let an edge run on across a seam', fields: [edge('true', 'The edge that gives'), {key: 'to', label: 'Runs on into', as: 'elsewhere'}, {key: 'across', label: 'Across the seam', as: 'edges'}]},

  {group: 'Longer, wider', label: 'Lengthen', fields: [length('lengthen', 'By'), point('at', 'At'), choice('line', 'The line runs', ['across the grain', 'along the grain'], maybe)]},
  {group: 'Longer, wider', label: 'Shorten', fields: [length('shorten', 'By'), point('at', 'At'), choice('line', 'The line runs', ['across the grain', 'along the grain'], maybe)]},
  {group: 'Longer, wider', label: 'Add a strip beyond an edge', fields: [edge('extend', 'Edge'), length('by', 'By'), choice('ends', 'Its ends', ['square', 'mirrored'], maybe)]},
  {group: 'Longer, wider', label: 'Slash and spread from edge to edge', fields: [edge('spread', 'Open'), edge('to', 'Towards'), length('by', 'By, in all'), {key: 'slashes', label: 'Slashes', as: 'count'}, length('at the other end', 'At the other end', maybe)]},
  {group: 'Longer, wider', label: 'Slash once and spread', fields: [point('spread', 'Open at'), point('to', 'Towards'), length('by', 'By'), length('at the other end', 'At the other end', maybe)]},

  {group: 'Darts and pleats', label: 'Add a dart', fields: [name('dart', 'Called'), edge('on', 'On'), {key: 'at', label: 'Its middle at', as: 'reach'}, length('width', 'Wide'), length('depth', 'Deep', maybe), point('point', 'Or to the point', maybe), TOWARDS]},
  {group: 'Darts and pleats', label: 'Move a dart', fields: [point('move dart', 'Dart'), point('to', 'To'), TOWARDS]},
  {group: 'Darts and pleats', label: 'Close a dart', fields: [point('close dart', 'Dart'), choice('into', 'What opens is', ['flare', 'gathers']), point('to', 'Opens at', maybe), length('over', 'Gathered over', maybe)]},
  {group: 'Darts and pleats', label: 'Add pleats', fields: [{key: 'pleats', label: 'How many', as: 'count'}, edge('on', 'On'), length('depth', 'Each so deep'), choice('kind', 'Kind', ['knife', 'box', 'inverted'], maybe), {...TOWARDS, ...maybe}, {key: 'at', label: 'The first at', as: 'reach', ...maybe}, length('spacing', 'From one to the next', maybe), length('long', 'Folded so far down', maybe)]},
  {group: 'Darts and pleats', label: 'Add tucks', fields: [{key: 'tucks', label: 'How many', as: 'count'}, edge('on', 'On'), length('depth', 'Each so deep'), length('long', 'Sewn so long'), {...TOWARDS, ...maybe}, {key: 'at', label: 'The first at', as: 'reach', ...maybe}, length('spacing', 'From one to the next', maybe)]},

  {group: 'Cut and tape', label: 'Cut apart', fields: [{key: 'cut apart', label: 'Upper and lower part', as: 'names'}, point('from', 'From'), point('to', 'To'), ...LINE, name('seam', 'The seam is called')]},
  {group: 'Cut and tape', label: 'Tape to another piece', fields: [edge('tape together', 'Edge of this piece'), {key: 'tape together', label: 'And edge', as: 'elsewhere'}, choice('ends', 'Laid', ['crossed'], maybe), name('part', 'Of its part', maybe)]},
  {group: 'Cut and tape', label: 'Open out a half piece', fields: [edge('unfold', 'At the edge')]},
  {group: 'Cut and tape', label: 'Keep a facing of it', fields: [{key: 'facing', label: 'Along the edges', as: 'edges'}, length('depth', 'Deep')]},
];

KINDS.forEach(kind => { kind.verb = kind.fields[0].key; });

export {KINDS};

const has = (step, field) => step[field.key] !== undefined;

/** The kind that a step of the file is of: it says all that this kind needs, and nothing else. */
export const kindOf = step => KINDS.find(kind => has(step, kind.fields[0])
    && kind.fields.every(field => field.optional || has(step, field))
    && Object.keys(step).every(key => kind.fields.some(field => field.key === key)));
