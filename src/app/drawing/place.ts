/** Puts an element at a place of the drawing, through the CSSOM: a strict content policy forbids style attributes. */
import type { Attachment } from 'svelte/attachments';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width?: number;
  readonly height?: number;
  /** y is where it ends, not where it begins: it grows upward. */
  readonly upward?: boolean;
}

/** @param boxOf  asked again whenever what it reads changes: the attachment itself stays */
export function place(boxOf: () => Box): Attachment<HTMLElement> {
  return ({ style }) => {
    const { x, y, width, height, upward } = boxOf();
    style.transform = `translate(${x}px, ${y}px)${upward === true ? ' translateY(-100%)' : ''}`;
    if (width !== undefined) style.width = `${width}px`;
    if (height !== undefined) style.height = `${height}px`;
  };
}
