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
  if (answer.ok) return answer;
  const json = answer.headers.get('Content-Type')?.includes('json') ? await answer.json() : null;
  throw new Refused(json?.problems ?? [answer.status === 413
    ? {what: 'the file is too large', remedy: 'Take a photo in the camera\'s usual size, and leave out of a drawing what is no piece'}
    : {what: 'the desk did not answer as it should', remedy: 'Load the page again'}]);
}

export const get = async (path, query) => (await ask(path, query)).json();

/** Words to be read. */
export const text = async address => (await ask(address)).text();

export const post = async (path, query, body = {}) =>
  (await ask(path, query, {
    method: 'POST',
    headers: {'Content-Type': 'application/json'},
    body: JSON.stringify(body),
  })).json();

/** Sends a file of the maker's. */
export const send = async (path, query, file) =>
  (await ask(path, query, {method: 'POST', body: file, headers: {'Content-Type': 'application/octet-stream'}})).json();
