/** Puts an element at a place of the drawing, through the CSSOM: a strict content policy forbids style attributes. */
import type { Attachment } from 'svelte/attachments';

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width?: number;
  readonly height?: number;
}

export function place({ x, y, width, height }: Box): Attachment<HTMLElement> {
  return ({ style }) => {
    style.transform = `translate(${x}px, ${y}px)`;
    if (width !== undefined) style.width = `${width}px`;
    if (height !== undefined) style.height = `${height}px`;
  };
}
