/** What a label of the drawing says, and what stands in where it has no room. */
export interface Note {
  readonly long: string;
  readonly short: string;
  /** The figure that it begins with rests on what nobody said. */
  readonly assumed?: boolean;
}

/** The label of a part: its name, and under it what it is or its figure. */
export interface PartLabel {
  readonly name: string;
  /** Empty where the name says all. */
  readonly note: string;
  /** The name, for a narrow column. */
  readonly short?: string;
  /** The note, for a narrow column; without it the note's last part stands in, behind its last comma. */
  readonly brief?: string;
}
