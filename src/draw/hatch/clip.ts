/** Line work clipped to rectangles by arithmetic, so that no clip path and no pattern is needed. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

export function boxHeight(box: Box): number {
  return box.bottom - box.top;
}

export function isEmpty(box: Box): boolean {
  return !(box.right > box.left && box.bottom > box.top);
}

/** Does a symbol of this half width and half height round (x, y) lie wholly inside? */
export function holds(box: Box, x: number, y: number, halfWidth: number, halfHeight: number): boolean {
  return (
    x - halfWidth >= box.left && x + halfWidth <= box.right && y - halfHeight >= box.top && y + halfHeight <= box.bottom
  );
}

export function overlap(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

export type Segment = readonly [x1: number, y1: number, x2: number, y2: number];

/**
 * The part of a segment inside a box, or null.
 *
 * Source  Liang & Barsky (1984), A new concept and method for line clipping, ACM Transactions on Graphics 3; from memory
 */
export function clipSegment([x1, y1, x2, y2]: Segment, box: Box): Segment | null {
  let from = 0;
  let to = 1;
  const dx = x2 - x1;
  const dy = y2 - y1;
  const sides: readonly (readonly [p: number, q: number])[] = [
    [-dx, x1 - box.left],
    [dx, box.right - x1],
    [-dy, y1 - box.top],
    [dy, box.bottom - y1],
  ];
  for (const [p, q] of sides) {
    if (p === 0) {
      if (q < 0) return null;
      continue;
    }
    const at = q / p;
    if (p < 0) from = Math.max(from, at);
    else to = Math.min(to, at);
    if (from > to) return null;
  }
  return [x1 + from * dx, y1 + from * dy, x1 + to * dx, y1 + to * dy];
}
