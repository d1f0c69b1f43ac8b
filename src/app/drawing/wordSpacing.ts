/** How far apart a reader has the words of the page set, by styles that go over all others: a drawing leaves them room. */
import type { Attachment } from 'svelte/attachments';

/** Of the drawing's face: what a letter takes of its size, and how many letters a word has. */
const LETTER = 0.45;
const WORD = 6;

/**
 * For an element with words in it, which shows itself only by its width.
 *
 * @param onspare  gets what the words take, as a multiple of what they take by themselves
 */
export function wordSpacing(onspare: (spare: number) => void): Attachment {
  return (element) => {
    // Nothing tells of a style that comes later, but the words that it moves apart take more room.
    const watching = new ResizeObserver(() => {
      const { letterSpacing, wordSpacing, fontSize } = getComputedStyle(element);
      const apart = (parseFloat(letterSpacing) || 0) + (parseFloat(wordSpacing) || 0) / WORD;
      onspare(1 + Math.max(0, apart) / (parseFloat(fontSize) * LETTER));
    });
    watching.observe(element);
    return () => watching.disconnect();
  };
}
