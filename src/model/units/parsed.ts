/** What comes of reading a quantity. */
export type ReadQuantity = Quantity | Unread;

/** The same in words, for those who say what is wrong. */
export type ParsedQuantity = Quantity | QuantityFault;

interface Quantity {
  readonly ok: true;
  readonly si: number;
  /** The unit as we write it; "ft in" for feet and inches. */
  readonly unit: string;
}

export interface Unread {
  readonly ok: false;
  readonly fault: ReadingFault;
}

export type ReadingFault =
  | { readonly is: 'empty' | 'tooLong' | 'twoVoltages' | 'noNumber' | 'notFinite' | 'tooSmall' | 'tooLarge' }
  | { readonly is: 'withoutUnit'; readonly value: number }
  | { readonly is: 'unknownUnit'; readonly unit: string }
  /** After a part of a foot, or a foot or more of them. */
  | { readonly is: 'oddInches'; readonly feet: number; readonly inches: number }
  | { readonly is: 'manyThousands'; readonly large: string; readonly unit: string }
  | { readonly is: 'thousandsOrDecimal'; readonly large: string; readonly small: number; readonly unit: string };

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
