// Lengths as the job's unit has them.

const MM = {mm: 1, cm: 10, m: 1000, inch: 25.4, yard: 914.4};
const WORD = {mm: 'mm', cm: 'cm', m: 'm', inch: 'in', yard: 'yd'};
const DIGITS = {mm: 0, cm: 1, m: 3};
const EIGHTHS = 8;

/** A length in words: inches in eighths, yards as inches. */
export function length(mm, unit) {
  if (DIGITS[unit] !== undefined) return `${(mm / MM[unit]).toFixed(DIGITS[unit])} ${WORD[unit]}`;
  const all = Math.round(Math.abs(mm) / 25.4 * EIGHTHS);
  let [over, under] = [all % EIGHTHS, EIGHTHS];
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const whole = Math.floor(all / EIGHTHS);
  const words = over ? `${whole || ''} ${over}/${under}`.trim() : String(whole);
  return `${mm < 0 && all ? '-' : ''}${words} in`;
}

/** Ticks of a ruler: how far apart, mm, and what stands at one. */
export function ticks(spanMm, unit) {
  const base = unit === 'yard' ? MM.inch : MM[unit] ?? 10;
  const wanted = spanMm / 12 / base;
  const ten = 10 ** Math.floor(Math.log10(wanted));
  const each = [1, 2, 5, 10].map(n => n * ten).find(n => n >= wanted) * base;
  const digits = Math.max(0, -Math.floor(Math.log10(each / base) + 1e-9));
  return {each, word: WORD[unit === 'yard' ? 'inch' : unit] ?? 'cm', at: mm => (mm / base).toFixed(digits)};
}
