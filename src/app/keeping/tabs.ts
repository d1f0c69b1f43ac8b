/** What the tabs of one browser tell each other, so that none shows what is no longer so. */
export type Word =
  /** A version of a well was written, taken away or brought back. */
  { readonly kind: 'well'; readonly id: string } | { readonly kind: 'pumps' };

export class Tabs {
  readonly #channel: BroadcastChannel | null;

  constructor(onword: (word: Word) => void) {
    this.#channel = typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel('wellcut');
    this.#channel?.addEventListener('message', ({ data }) => {
      const word = readWord(data);
      if (word !== null) onword(word);
    });
  }

  say(word: Word): void {
    this.#channel?.postMessage(word);
  }
}

/** A tab of another form of the page may say what this one does not know. */
function readWord(data: unknown): Word | null {
  if (typeof data !== 'object' || data === null) return null;
  const { kind, id } = data as Record<string, unknown>;
  if (kind === 'pumps') return { kind };
  return kind === 'well' && typeof id === 'string' ? { kind, id } : null;
}
