// What has been typed and is on its way to the desk: shown as if it were done, so that it does not
// vanish when an answer to something typed before comes in between.

export class Edits {
  #sent = new Set();
  #last = Promise.resolve();

  /** Asks once all that was asked before is answered: what is done in turn is undone in turn. */
  turn(ask) {
    const mine = this.#last.then(ask);
    this.#last = mine.catch(() => {});
    return mine;
  }

  /**
   * Sends an edit.
   *
   * @param entries in which it is shown meanwhile
   * @param ask takes what is there now and asks for it
   * @returns the answer
   */
  async send(entries, at, value, ask) {
    const was = entry(entries, at) ?? null;
    const edit = {at, value};
    // Where something is put into a list or taken out, doing it twice would not be the same.
    const shown = value !== null && typeof value !== 'object';
    if (shown) this.#sent.add(edit);
    this.over(entries);
    try {
      return await this.turn(() => ask(was));
    } catch (error) {
      if (shown) put(entries, at, was);
      throw error;
    } finally {
      this.#sent.delete(edit);
    }
  }

  /** Shows what is on its way in entries that do not have it yet. */
  over(entries) {
    for (const {at, value} of this.#sent) put(entries, at, value);
  }
}

export const entry = (entries, at) => at.reduce((node, name) => node?.[name], entries);

function put(entries, at, value) {
  const inner = at.slice(0, -1).reduce((node, name) => node && (node[name] ??= {}), entries);
  if (value === null) delete inner[at.at(-1)];
  else inner[at.at(-1)] = value;
}
