/** A finger that goes sideways over the page turns it: leftward to the next, as a page is turned. */
import type { Attachment } from 'svelte/attachments';

/** px: shorter is a tap that slipped. */
const LEAST = 60;
/** As many times as far sideways as up or down: else it scrolled. */
const SIDEWAYS = 2;

/** @param onturn  gets 1 for the next, -1 for the one before */
export function swipe(onturn: (by: 1 | -1) => void): Attachment<HTMLElement> {
  return (element) => {
    let from: Touch | null = null;
    const begin = ({ touches }: TouchEvent): void => {
      // Two fingers make it larger.
      from = touches.length === 1 ? (touches[0] ?? null) : null;
    };
    const end = ({ changedTouches }: TouchEvent): void => {
      const to = [...changedTouches].find(({ identifier }) => identifier === from?.identifier);
      const zoomed = (window.visualViewport?.scale ?? 1) > 1.01;
      if (from !== null && to !== undefined && !zoomed) {
        const [across, down] = [to.clientX - from.clientX, to.clientY - from.clientY];
        if (Math.abs(across) >= LEAST && Math.abs(across) >= SIDEWAYS * Math.abs(down)) onturn(across < 0 ? 1 : -1);
      }
      from = null;
    };
    const cancel = (): void => {
      from = null;
    };
    const options = { passive: true } as const;
    element.addEventListener('touchstart', begin, options);
    element.addEventListener('touchend', end, options);
    element.addEventListener('touchcancel', cancel, options);
    return () => {
      element.removeEventListener('touchstart', begin);
      element.removeEventListener('touchend', end);
      element.removeEventListener('touchcancel', cancel);
    };
  };
}
