// Lengths in the maker's unit.

const UNITS = {mm: ['mm', 1], cm: ['cm', 10], m: ['m', 1000], inch: ['in', 25.4], yard: ['yd', 914.4]};

export const symbol = job => (UNITS[job?.unit] ?? UNITS.cm)[0];

/** As she would write it: 12.3 cm, 4 7/8 in. */
export function show(mm, job) {
  const [word, each] = UNITS[job?.unit] ?? UNITS.cm;
  if (word !== 'in' && word !== 'yd') return `${(mm / each).toFixed(word === 'mm' ? 0 : word === 'cm' ? 1 : 2)} ${word}`;
  const parts = Math.round(mm / each * 16);
  const whole = Math.floor(parts / 16);
  let over = parts % 16, under = 16;
  while (over && over % 2 === 0) { over /= 2; under /= 2; }
  return `${[whole || !over ? whole : '', over ? `${over}/${under}` : ''].filter(part => part !== '').join(' ')} ${word}`;
}

/** A bare number gets the unit that the page shows, whatever the file it goes to is written in. */
export function said(text, job) {
  const plain = text.trim();
  return /^[-+]?[\d.,]+(\s+\d+\/\d+)?$/.test(plain) || (/^\d+\/\d+$/.test(plain) && UNITS[job?.unit]?.[1] > 20)
    ? `${plain} ${symbol(job)}`
    : plain;
}

/** A share such as 1/3 stays one. */
export const share = (text, job) => /^\d+\/\d+$/.test(text.trim()) ? text.trim() : said(text, job);
