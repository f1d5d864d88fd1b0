/** The questions whose answer the reader has committed to, one list for all islands of a page. */
class Predictions {
  #made = $state<Readonly<Record<string, string>>>({});

  /** True once the reader has committed to an answer. @param question its identity */
  has(question: string): boolean {
    return this.#made[question] !== undefined;
  }

  /** The reader commits to a choice; there is no taking it back on this page. */
  make(question: string, choice: string): void {
    this.#made = { ...this.#made, [question]: choice };
  }
}

export const predictions = new Predictions();
