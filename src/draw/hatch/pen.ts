/**
 * Writes line work as short as it can be: relative steps in tenths of a pixel, no separator where a sign separates.
 * A sheet holds thousands of strokes, so each byte of one counts.
 */
import { nextTenths, tenthsText } from '../tenths.ts';

export class Pen {
  private out = '';
  private x = 0;
  private y = 0;
  private startX = 0;
  private startY = 0;

  get path(): string {
    return this.out;
  }

  move(x: number, y: number): this {
    const tenthsX = Math.round(x * 10);
    const tenthsY = Math.round(y * 10);
    this.out +=
      this.out === ''
        ? 'M' + tenthsText(tenthsX) + nextTenths(tenthsY)
        : 'm' + tenthsText(tenthsX - this.x) + nextTenths(tenthsY - this.y);
    this.x = this.startX = tenthsX;
    this.y = this.startY = tenthsY;
    return this;
  }

  lineTo(x: number, y: number): this {
    const tenthsX = Math.round(x * 10);
    const tenthsY = Math.round(y * 10);
    const dx = tenthsX - this.x;
    const dy = tenthsY - this.y;
    if (dy === 0) this.out += 'h' + tenthsText(dx);
    else if (dx === 0) this.out += 'v' + tenthsText(dy);
    else this.out += 'l' + tenthsText(dx) + nextTenths(dy);
    this.x = tenthsX;
    this.y = tenthsY;
    return this;
  }

  /**
   * A small figure of whole pixels, ready written in relative steps, begun at (x, y).
   *
   * @param endX, endY  where it ends, from where it began: the next step starts there
   */
  stamp(x: number, y: number, figure: string, endX: number, endY: number): this {
    this.move(x, y);
    this.out += figure;
    this.x += endX * 10;
    this.y += endY * 10;
    return this;
  }

  /** Through the points from where the first one lies. */
  through(points: readonly (readonly [number, number])[]): this {
    points.forEach(([x, y], i) => (i === 0 ? this.move(x, y) : this.lineTo(x, y)));
    return this;
  }

  /** Back to where the last move went. */
  close(): this {
    this.out += 'z';
    this.x = this.startX;
    this.y = this.startY;
    return this;
  }

  stroke(x1: number, y1: number, x2: number, y2: number): this {
    return this.move(x1, y1).lineTo(x2, y2);
  }

  /** A closed pebble round (x, y), as four smooth arcs; half sizes in whole pixels. */
  pebble(x: number, y: number, halfWidth: number, halfHeight: number): this {
    this.move(x - halfWidth, y);
    this.out += `q0-${halfHeight} ${halfWidth}-${halfHeight}t${halfWidth} ${halfHeight}-${halfWidth} ${halfHeight}-${halfWidth}-${halfHeight}`;
    return this;
  }

  /** A wave of one crest and one trough from (x, y) to the right. */
  wave(x: number, y: number, halfLength: number, height: number): this {
    this.move(x, y);
    this.out += `q${halfLength / 2}-${height} ${halfLength} 0t${halfLength} 0`;
    this.x += halfLength * 20;
    return this;
  }
}
