/**
 * Keeps the page on the device, so that it works without a network, and tells of a newer one that waits. A version never
 * changes under a person's hands: it is taken on their word, or when every window of the page was closed.
 */
import type { Workbox } from 'workbox-window';

/** After the page is drawn [ms]: what is kept for later must not hold up what is looked at now. */
const LATER = 2000;

export class Versions {
  /** A newer version is here and waits. */
  waiting = $state(false);
  #worker: Workbox | null = null;

  /** Does nothing where the browser keeps no pages: on plain http other than this machine's own, or from a file. */
  start(): void {
    if (!('serviceWorker' in navigator)) return;
    setTimeout(() => void this.#register(), LATER);
  }

  /** @param before  what must be done before the page is loaded anew */
  take(before: () => void): void {
    this.#worker?.addEventListener('controlling', () => {
      before();
      window.location.reload();
    });
    this.#worker?.messageSkipWaiting();
  }

  async #register(): Promise<void> {
    try {
      const { worker } = await import('./serviceWorker.ts');
      this.#worker = worker();
      this.#worker.addEventListener('waiting', () => (this.waiting = true));
      await this.#worker.register();
    } catch (fault) {
      console.info('wellcut: the page cannot be kept for later', fault);
    }
  }
}
