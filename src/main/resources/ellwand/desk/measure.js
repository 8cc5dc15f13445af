// Lengths in the maker's unit.

const UNITS = {mm: ['mm', 1, 0], cm: ['cm', 10, 1], m: ['m', 1000, 3], inch: ['in', 25.4], yard: ['yd', 914.4]};
const EIGHTHS = 8;

/** Yards are too coarse for what is measured on a table. */
const fine = job => job?.unit === 'yard' ? 'inch' : job?.unit in UNITS ? job.unit : 'cm';

/** As she would read it off her tape: 12.3 cm, 4 7/8 in. */
export function show(mm, job) {
  const [word, each, digits] = UNITS[fine(job)];
  if (digits !== undefined) return `${(mm / each).toFixed(digits)} ${word}`;
  const all = Math.round(Math.abs(mm) / each * EIGHTHS);
  let [over, under] = [all % EIGHTHS, EIGHTHS];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const whole = Math.floor(all / EIGHTHS);
  return `${mm < 0 && all ? '-' : ''}${over ? `${whole || ''} ${over}/${under}`.trim() : whole} ${word}`;
}

/** What is written in a job without a unit, or with one, in mm. */
export function mmOf(text, job) {
  const [, number, word] = /^\s*([\d.,]+)\s*(\w*)/.exec(String(text)) ?? [, '0', ''];
  const each = Object.values(UNITS).find(([one]) => one === word)?.[1] ?? UNITS[job?.unit ?? 'cm'][1];
  return Number(number.replace(',', '.')) * each;
}

/** A bare number gets the unit that the page shows, whatever the file it goes to is written in. */
export function said(text, job) {
  const plain = text.trim();
  const [word, each] = UNITS[job?.unit] ?? UNITS.cm;
  return /^[-+]?[\d.,]+(\s+\d+\/\d+)?$/.test(plain) || (/^\d+\/\d+$/.test(plain) && each > 20)
    ? `${plain} ${word}`
    : plain;
}

/** A share such as 1/3 stays one. */
export const share = (text, job) => /^\d+\/\d+$/.test(text.trim()) ? text.trim() : said(text, job);

/** Ticks of a ruler: how far apart, mm, the unit's word, and what stands at one. */
export function ticks(spanMm, job) {
  const [word, base] = UNITS[fine(job)];
  const wanted = spanMm / 12 / base;
  const ten = 10 ** Math.floor(Math.log10(wanted));
  const each = [1, 2, 5, 10].map(n => n * ten).find(n => n >= wanted) * base;
  const digits = Math.max(0, -Math.floor(Math.log10(each / base) + 1e-9));
  return {each, word, at: mm => (mm / base).toFixed(digits)};
}
