/** What the one polite live region says. */
export class Announcer {
  words = $state('');
  /** What is shown over the page besides; empty for most of the time. */
  shown = $state('');
  #odd = false;

  /** Says it, also when it is the same sentence as before. */
  say(words: string): void {
    this.#odd = !this.#odd;
    this.words = this.#odd ? words : `${words}\u00A0`;
  }

  /** Shown, and heard once. */
  show(words: string): void {
    this.shown = words;
    this.say(words);
  }
}
