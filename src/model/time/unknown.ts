/** Why something cannot be told, as a sentence for the reader. */
export interface Unknown {
  readonly reason: string;
}
