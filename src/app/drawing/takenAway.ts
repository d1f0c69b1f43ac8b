/**
 * What ends a press though nobody lifted the finger: Escape, another finger, a turned phone, a call, another window.
 * None of them is a decision, so whoever asks puts the level back.
 */

/** @returns  to be called when the press has ended by itself */
export function whenTakenAway(pointerId: number, end: () => void): () => void {
  const listening = new AbortController();
  const { signal } = listening;
  // Before anything in the page answers to the same key or finger.
  const first = { signal, capture: true };
  window.addEventListener('keydown', escapes, first);
  window.addEventListener('pointerdown', (event) => event.pointerId !== pointerId && end(), first);
  window.addEventListener('resize', end, { signal });
  window.addEventListener('blur', end, { signal });
  document.addEventListener('visibilitychange', () => document.visibilityState === 'hidden' && end(), { signal });
  // A page that is closed in mid-drag leaves what was dragged to the next one: its being hidden is no call.
  window.addEventListener('pagehide', () => listening.abort(), first);
  return () => listening.abort();

  function escapes(event: KeyboardEvent): void {
    if (event.key !== 'Escape') return;
    event.preventDefault();
    event.stopPropagation();
    end();
  }
}
