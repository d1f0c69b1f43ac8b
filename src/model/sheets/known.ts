/** Works something out from facts that may be missing. */

type Knowns<Inputs extends readonly (number | null)[]> = { [At in keyof Inputs]: number };

/**
 * The result of a formula where every input is known and the formula has a meaning for them; else null. A formula
 * refuses impossible input with a RangeError: a sheet of a foolish plan then says that the figure is unknown.
 */
export function known<const Inputs extends readonly (number | null)[]>(
  inputs: Inputs,
  compute: (...numbers: Knowns<Inputs>) => number | null,
): number | null {
  if (inputs.some((input) => input === null || !Number.isFinite(input))) return null;
  try {
    const result = compute(...(inputs as unknown as Knowns<Inputs>));
    return result !== null && Number.isFinite(result) ? result : null;
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
