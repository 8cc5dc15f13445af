// Asks the desk's server; what it refuses is thrown with its problems.

export class Refused extends Error {
  constructor(problems) {
    super(problems.map(sentence).join(' '));
    this.problems = problems;
  }
}

export function sentence(problem) {
  const where = [problem.piece && `piece ${problem.piece}`, problem.edge && `edge ${problem.edge}`]
      .filter(Boolean).join(', ');
  const words = `${where ? where + ': ' : ''}${problem.what}. ${problem.remedy}.`;
  return words[0].toUpperCase() + words.slice(1);
}

/** A list stands for one entry each. */
export const asked = query => new URLSearchParams(Object.entries(query ?? {}).flatMap(([name, value]) => [value].flat().map(one => [name, one])));

async function ask(path, query, options) {
  const answer = await fetch(path + (query ? '?' + asked(query) : ''), options).catch(() => {
    throw new Refused([{what: 'the desk does not answer any more', remedy: 'Start it again, and go on in the page that it opens; what you did so far is kept'}]);
  });
  const json = answer.headers.get('Content-Type')?.includes('json') ? await answer.json() : null;
  if (!answer.ok) {
    const said = json?.problems ?? [{what: 'the desk did not answer as it should', remedy: 'Load the page again'}];
    throw new Refused(said);
  }
  return json;
}

export const get = (path, query) => ask(path, query);

export const post = (path, query, body = {}) =>
  ask(path, query, {
    method: 'POST',
    headers: {'Content-Type': 'application/json'},
    body: JSON.stringify(body),
  });
