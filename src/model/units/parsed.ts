/** What comes of reading a quantity. */
export type ParsedQuantity =
  | {
      readonly ok: true;
      readonly si: number;
      /** The unit as we write it; "ft in" for feet and inches. */
      readonly unit: string;
    }
  | QuantityFault;

export interface QuantityFault {
  readonly ok: false;
  /** The whole complaint: what is wrong and what to write. */
  readonly problem: string;
  /** What is wrong, alone: "without a unit". */
  readonly fault: string;
  /** What to write instead, with quotes: '"90 ft" or "27.4 m"'. */
  readonly write: string;
  /** The bare number, where only the unit was missing. */
  readonly bare: number | null;
}
