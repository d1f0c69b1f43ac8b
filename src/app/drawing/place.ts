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

export function place({ x, y, width, height, upward }: Box): Attachment<HTMLElement> {
  return ({ style }) => {
    style.transform = `translate(${x}px, ${y}px)${upward === true ? ' translateY(-100%)' : ''}`;
    if (width !== undefined) style.width = `${width}px`;
    if (height !== undefined) style.height = `${height}px`;
  };
}
