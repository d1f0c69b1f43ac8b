/** Guards for formulas. A value without meaning is a mistake of the caller, so it throws and names itself. */

/** Throws unless the value is a positive finite number. */
export function requirePositive(where: string, argument: string, value: number): void {
  if (!(value > 0 && value < Infinity)) {
    throw new RangeError(`${where}: ${argument} is ${value}, must be positive and finite`);
  }
}

/** Throws unless the value is zero or a positive finite number. */
export function requireNotNegative(where: string, argument: string, value: number): void {
  if (!(value >= 0 && value < Infinity)) {
    throw new RangeError(`${where}: ${argument} is ${value}, must be zero or more and finite`);
  }
}
