/** What the one polite live region says. */
export class Announcer {
  words = $state('');
  #odd = false;

  /** Says it, also when it is the same sentence as before. */
  say(words: string): void {
    this.#odd = !this.#odd;
    this.words = this.#odd ? words : `${words}\u00A0`;
  }
}
