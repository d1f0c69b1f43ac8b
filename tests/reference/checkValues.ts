import { expect, test } from 'vitest';

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

const STATUSES = ['published', 'computed from the formula', 'from memory'];

/** A test for each check value, and one that none is left out and each names where it comes from. */
export function testCheckValues(checks: readonly CheckValue[], computations: Computations): void {
  test('every check value has a computation, a source and a known standing', () => {
    expect(Object.keys(computations).sort()).toEqual(checks.map(({ id }) => id).sort());
    for (const { source, status } of checks) {
      expect(source.length).toBeGreaterThan(10);
      expect(STATUSES).toContain(status);
    }
  });

  test.each(checks.map((check) => [check.id, check.title, check] as const))('%s: %s', (id, _title, check) => {
    const computed = computations[id]!(new Inputs(check.inputs));
    expect(Object.keys(computed).sort()).toEqual(Object.keys(check.expected).sort());
    for (const [name, wanted] of Object.entries(check.expected)) {
      expectClose(computed[name], wanted, (figure) => allowance(check, name, figure), `${name} (${check.source})`);
    }
  });
}

function allowance({ tolerance }: CheckValue, name: string, figure: number): number {
  if (tolerance.relative !== undefined) return tolerance.relative * Math.abs(figure);
  const absolute = (tolerance.absolute as Record<string, number> | undefined)?.[name] ?? 0;
  // Figures that must be met exactly still go through unit conversions.
  return Math.max(absolute, 1e-9 * Math.abs(figure));
}

function expectClose(actual: unknown, wanted: unknown, within: (figure: number) => number, what: string): void {
  if (Array.isArray(wanted)) {
    expect(Array.isArray(actual), what).toBe(true);
    expect((actual as unknown[]).length, what).toBe(wanted.length);
    wanted.forEach((item, place) => expectClose((actual as unknown[])[place], item, within, `${what} [${place}]`));
  } else if (typeof wanted === 'number') {
    expect(Math.abs((actual as number) - wanted), `${what}: ${String(actual)} against ${wanted}`).toBeLessThanOrEqual(
      within(wanted),
    );
  } else {
    expect(actual, what).toBe(wanted);
  }
}
