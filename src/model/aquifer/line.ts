/** Straight line through points by least squares, with what is uncertain in it. */
export interface Line {
  readonly slope: number;
  readonly intercept: number;
  /** Of the slope; null with two points, which a line always meets. */
  readonly slopeError: number | null;
  readonly degrees: number;
}

/**
 * y = a + b x by least squares.
 *
 * @returns  null without two different x
 *
 * Source   Draper & Smith (1998), Applied Regression Analysis, ch. 1
 */
export function fitLine(points: readonly { readonly x: number; readonly y: number }[]): Line | null {
  const n = points.length;
  if (n < 2) return null;
  const meanX = points.reduce((sum, { x }) => sum + x, 0) / n;
  const meanY = points.reduce((sum, { y }) => sum + y, 0) / n;
  let [spread, shared] = [0, 0];
  for (const { x, y } of points) {
    spread += (x - meanX) ** 2;
    shared += (x - meanX) * (y - meanY);
  }
  if (!(spread > 1e-12 * n)) return null;
  const slope = shared / spread;
  const intercept = meanY - slope * meanX;
  const left = points.reduce((sum, { x, y }) => sum + (y - intercept - slope * x) ** 2, 0);
  const degrees = n - 2;
  return { slope, intercept, slopeError: degrees > 0 ? Math.sqrt(left / degrees / spread) : null, degrees };
}
