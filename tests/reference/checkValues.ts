/** One figure that somebody outside this project printed, or that follows from a formula by hand. */
export interface CheckValue {
  readonly id: string;
  readonly title: string;
  readonly inputs: object;
  readonly expected: object;
  /** `relative` to the figure, or `absolute` per output; an output that is not named must be met exactly. */
  readonly tolerance: { readonly relative?: number; readonly absolute?: object };
  readonly source: string;
  readonly status: string;
}

/** Inputs by the name they have in the file, with the unit in the name. */
export class Inputs {
  constructor(private readonly given: object) {}

  number(name: string): number {
    const value = this.any(name);
    if (typeof value !== 'number') throw new Error(`input "${name}" is ${JSON.stringify(value)}, not a number`);
    return value;
  }

  text(name: string): string {
    const value = this.any(name);
    if (typeof value !== 'string') throw new Error(`input "${name}" is ${JSON.stringify(value)}, not text`);
    return value;
  }

  has(name: string): boolean {
    return Object.hasOwn(this.given, name);
  }

  flag(name: string): boolean {
    return this.any(name) === true;
  }

  list<T>(name: string): readonly T[] {
    const value = this.any(name);
    if (!Array.isArray(value)) throw new Error(`input "${name}" is ${JSON.stringify(value)}, not a list`);
    return value as T[];
  }

  /** A list of records, each read the same way. */
  rows(name: string): readonly Inputs[] {
    return this.list<object>(name).map((row) => new Inputs(row));
  }

  inside(name: string): Inputs {
    return new Inputs(this.any(name) as object);
  }

  private any(name: string): unknown {
    if (!this.has(name)) throw new Error(`no input "${name}"; there are ${Object.keys(this.given).join(', ')}`);
    return (this.given as Record<string, unknown>)[name];
  }
}

export type Computations = Readonly<Record<string, (inputs: Inputs) => Readonly<Record<string, unknown>>>>;

/** One figure beside what it should be. */
export interface Comparison {
  readonly id: string;
  readonly title: string;
  /** Name of the figure, with its unit. */
  readonly quantity: string;
  readonly source: string;
  readonly status: string;
  readonly expected: unknown;
  readonly computed: unknown;
  /** Computed less expected; null for words. */
  readonly difference: number | null;
  /** Zero where it must be met exactly. */
  readonly tolerance: number;
  readonly agrees: boolean;
}

export type Named = Pick<Comparison, 'id' | 'title' | 'source' | 'status'>;

/** A file of checks with what the model says to them. */
export interface Sheet {
  readonly title: string;
  readonly checks: readonly Named[];
  /** Every figure of one check. */
  readonly compare: (id: string) => readonly Comparison[];
}

/**
 * Holds what was computed to what was expected, figure by figure, lists item by item. A figure that is missing on one
 * side, or a computation that fails, is told as one that disagrees.
 */
export function compareFigures(
  check: Named,
  expected: Readonly<Record<string, unknown>>,
  compute: () => Readonly<Record<string, unknown>>,
  tolerance: (quantity: string, figure: number) => number,
): Comparison[] {
  let computed: Readonly<Record<string, unknown>>;
  try {
    computed = compute();
  } catch (fault) {
    computed = Object.fromEntries(Object.keys(expected).map((quantity) => [quantity, `fails: ${String(fault)}`]));
  }
  const quantities = [...new Set([...Object.keys(expected), ...Object.keys(computed)])];
  return quantities.flatMap((quantity) =>
    flatten(quantity, expected[quantity], computed[quantity]).map((pair) => {
      const numbers = typeof pair.expected === 'number' && typeof pair.computed === 'number';
      const difference = numbers ? Number(pair.computed) - Number(pair.expected) : null;
      const allowed = numbers ? tolerance(quantity, Number(pair.expected)) : 0;
      return {
        ...naming(check),
        ...pair,
        difference,
        tolerance: allowed,
        agrees: difference === null ? pair.expected === pair.computed : Math.abs(difference) <= allowed,
      };
    }),
  );
}

function naming({ id, title, source, status }: Named): Named {
  return { id, title, source, status };
}

interface Pair {
  readonly quantity: string;
  readonly expected: unknown;
  readonly computed: unknown;
}

function flatten(quantity: string, expected: unknown, computed: unknown): Pair[] {
  if (!Array.isArray(expected) || !Array.isArray(computed)) return [{ quantity, expected, computed }];
  const length = Math.max(expected.length, computed.length);
  return Array.from({ length }, (_, i) => flatten(`${quantity} ${i + 1}`, expected[i], computed[i])).flat();
}
