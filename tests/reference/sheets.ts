/** The files of checks, each with what computes it: read by the tests and by the table of all checks. */
import { compareFigures, Inputs } from './checkValues.ts';
import type { CheckValue, Computations, Named, Sheet } from './checkValues.ts';
import { electrical } from './compute/electrical.ts';
import { frost } from './compute/frost.ts';
import { hydraulics } from './compute/hydraulics.ts';
import { mechanical } from './compute/mechanical.ts';
import { metric } from './compute/metric.ts';
import { placement } from './compute/placement.ts';
import type { PlacementInputs } from './compute/placement.ts';
import { records } from './compute/records.ts';
import { wells } from './compute/wells.ts';
import type { WellInputs } from './compute/wells.ts';
import { wholeWells } from './compute/wholeWells.ts';
import electricalFile from './electrical.json' with { type: 'json' };
import frostFile from './frost.json' with { type: 'json' };
import hydraulicsFile from './hydraulics.json' with { type: 'json' };
import mechanicalFile from './mechanical.json' with { type: 'json' };
import metricFile from './metric.json' with { type: 'json' };
import placementFile from './placement.json' with { type: 'json' };
import wellsFile from './wells.json' with { type: 'json' };

/** Checks of which each file has one tolerance, or one by figure. */
function valueSheet(title: string, checks: readonly CheckValue[], computations: Computations): Sheet {
  return sheet(title, checks, (check) =>
    compareFigures(
      check,
      check.expected as Record<string, unknown>,
      () => computationOf(computations, check.id)(new Inputs(check.inputs)),
      (quantity, figure) => allowance(check, quantity, figure),
    ),
  );
}

function allowance({ tolerance }: CheckValue, quantity: string, figure: number): number {
  if (tolerance.relative !== undefined) return tolerance.relative * Math.abs(figure);
  const absolute = (tolerance.absolute as Record<string, number> | undefined)?.[quantity] ?? 0;
  // Figures that must be met exactly still go through unit conversions.
  return Math.max(absolute, 1e-9 * Math.abs(figure));
}

interface Expected {
  readonly value: number;
  readonly tolerance: number;
  readonly within: string;
}

/** Checks in which each figure carries its own tolerance. */
function figureSheet<Check extends Named & { readonly inputs: unknown; readonly expected: unknown }>(
  title: string,
  checks: readonly Check[],
  compute: (check: Check) => Readonly<Record<string, unknown>>,
): Sheet {
  return sheet(title, checks, (check) => {
    const expected = check.expected as Readonly<Record<string, Expected>>;
    return compareFigures(
      check,
      Object.fromEntries(Object.entries(expected).map(([quantity, { value }]) => [quantity, value])),
      () => compute(check),
      (quantity, figure) => {
        const { tolerance, within } = expected[quantity]!;
        return within === 'percent' ? (Math.abs(figure) * tolerance) / 100 : tolerance;
      },
    );
  });
}

function sheet<Check extends Named>(
  title: string,
  checks: readonly Check[],
  compare: (check: Check) => ReturnType<Sheet['compare']>,
): Sheet {
  const byId = new Map(checks.map((check) => [check.id, check]));
  return { title, checks, compare: (id) => compare(byId.get(id)!) };
}

function computationOf<T>(computations: Readonly<Record<string, T>>, name: string): T {
  const found = computations[name];
  if (found === undefined) throw new Error(`nothing computes "${name}"`);
  return found;
}

export const electricalSheet = valueSheet('Wire and motors', electricalFile.checks, electrical);
export const mechanicalSheet = valueSheet('Weight, rope, pipe and metals', mechanicalFile.checks, mechanical);
export const metricSheet = valueSheet('Sizes of metric countries', metricFile.checks, metric);
export const frostSheet = valueSheet('Frost', frostFile.checks, frost);

export const hydraulicsSheet = figureSheet('Water, pipe and pump', hydraulicsFile.checks, ({ id, inputs }) =>
  computationOf(hydraulics, id)(new Inputs(inputs)),
);

/** Placements stand in a file of their own, which a test compares with this one. */
const PLACEMENT = 'placement';

export const wellsSheet = figureSheet(
  'Wells and aquifers',
  wellsFile.checks.filter(({ kind }) => kind !== PLACEMENT),
  ({ kind, inputs }) => computationOf({ ...wells, ...wholeWells, ...records }, kind)(inputs as unknown as WellInputs),
);

/** Placements as both files have them. */
export const placementsTwice = {
  here: placementFile.checks.map(({ id, inputs, expected }) => ({ id, inputs, expected })),
  inWells: wellsFile.checks
    .filter(({ kind }) => kind === PLACEMENT)
    .map(({ id, inputs, expected }) => ({ id, inputs, expected })),
};

export const placementSheet = sheet(
  'Placement: verdicts of the rules on whole wells',
  placementFile.checks.map((check) => ({
    ...check,
    source: `${placementFile.source}`,
    status: 'from memory',
  })),
  (check) =>
    compareFigures(
      check,
      check.expected as Record<string, unknown>,
      () => placement(check.inputs as PlacementInputs, Object.keys(check.expected)),
      () => 0,
    ),
);

export const sheets: readonly Sheet[] = [
  hydraulicsSheet,
  wellsSheet,
  placementSheet,
  electricalSheet,
  mechanicalSheet,
  metricSheet,
  frostSheet,
];
