/** A straight piece of pipe, or of what sits in one, on paper. */
export interface Piece {
  /** Ends along its axis [px]. */
  readonly from: number;
  readonly to: number;
  /** Its axis: an x where it stands, a y where it lies [px]. */
  readonly middle: number;
  /** Half of its thickness [px]. */
  readonly half: number;
}
