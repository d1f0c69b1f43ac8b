/**
 * Pipe and wire that no table here knows: without their dimensions nothing can be drawn or computed. A casing may have a
 * size that no table has; its bore is then unknown until it is measured.
 */
import type { CasingMaterial, PipeMaterial } from '../facts.ts';
import { casingSchedules, casingSizes, findCasing } from '../tables/casings.ts';
import { inchNumber, millimetreNumber } from '../tables/nominalSize.ts';
import { CONDUCTORS } from '../tables/conductors.ts';
import { isTabulated, metricWire, usualWires, wireText } from '../tables/wireSizes.ts';
import { classesOfSize, findPipe, isMetricPipe, pipeSizes, pipeStandards } from '../tables/pipes.ts';
import { parseQuantity, squareMillimetres, toInches } from '../units.ts';
import { casingsOf } from './impossible/raw.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { isRecord } from './shape.ts';
import { DEFAULTS, defaultsIn } from './defaults.ts';
import type { Defaults } from './defaults.ts';
import { usualPipeSize } from './usualPipeSize.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Narrowest driven point and widest dug well that a size is believed of [in]; common practice, no source. */
const LEAST_CASING = 1;
const WIDEST_CASING = 240;

export function unlisted(plan: Fields): Problem[] {
  const well = isRecord(plan['well']) ? plan['well'] : {};
  const usual = defaultsIn(plan['units']);
  const house = isRecord(plan['house']) ? plan['house'] : {};
  return [
    ...casingsOf(well).flatMap(({ path, fields }) => unlistedCasing(path, fields)),
    ...(isRecord(plan['dropPipe']) ? unlistedPipe('dropPipe', plan['dropPipe'], usual) : []),
    ...(isRecord(house['line']) ? unlistedPipe('house.line', house['line'], usual) : []),
    ...(isRecord(plan['wire']) ? unlistedWire(plan['wire']) : []),
  ];
}

/** A measured inside diameter stands for itself; a size in the tables must have the wall that is said of it. */
function unlistedCasing(path: string, casing: Fields): Problem[] {
  const { material, size, schedule, insideDiameter } = casing;
  if (insideDiameter !== undefined || typeof size !== 'string' || !isCasing(material)) return [];
  const named = typeof schedule === 'string' ? schedule : undefined;
  if (findCasing({ material, size, schedule: named })) return [];
  const measured = 'insideDiameter as measured';
  const number = casingNumber(size);
  if (number === null || number < LEAST_CASING || number > WIDEST_CASING) {
    return [
      not(
        `${path}.size`,
        size,
        'not the size of a casing',
        `its name as "6 in", or its outside diameter as "160 mm", or add ${measured}`,
      ),
    ];
  }
  // 4-1/2 in is no size by that name, though 114.3 mm is one.
  const metric = millimetreNumber(size) !== null;
  const family = casingSizes(material).filter((name) => (millimetreNumber(name) !== null) === metric);
  if (!family.map(casingNumber).includes(number)) return [];
  return [
    not(
      `${path}.schedule`,
      schedule,
      `not a wall of ${size} ${material} casing in the tables`,
      `one of ${quoted(casingSchedules(material, size))}, or add ${measured}`,
    ),
  ];
}

/** Inches that a size is called by; of millimetres, what they come to. */
function casingNumber(size: string): number | null {
  const millimetres = millimetreNumber(size);
  return millimetres === null ? inchNumber(size, true) : toInches(millimetres / 1000);
}

function unlistedPipe(path: string, pipe: Fields, usual: Defaults): Problem[] {
  const { material = DEFAULTS.pipeMaterial, standard, ratio } = pipe;
  if (!isPipe(material)) return [];
  const {
    size = usualPipeSize({ material, standard: text(standard), ratio: text(ratio), resin: text(pipe['resin']) }, usual),
  } = pipe;
  if (typeof size !== 'string') return [];
  const query = { material, size, standard: text(standard), ratio: text(ratio) };
  if (findPipe(query)) return [];
  const standards = pipeStandards(material);
  const named = query.standard ?? standardOfSize(material, size) ?? '';
  if (!standards.includes(named)) {
    return [not(`${path}.standard`, standard, `not a standard for ${material} pipe`, quoted(standards))];
  }
  if (!findPipe({ material, size, standard: named })) {
    return [not(`${path}.size`, size, `not a size of ${named} in the tables`, `one of ${quoted(pipeSizes(named))}`)];
  }
  return [
    not(
      `${path}.ratio`,
      ratio,
      `not a wall of ${size} ${named} in the tables`,
      `one of ${quoted(classesOfSize(named, size))}`,
    ),
  ];
}

/** The usual standard of that family of sizes. */
function standardOfSize(material: PipeMaterial, size: string): string | undefined {
  const metric = millimetreNumber(size) !== null;
  return (
    pipeStandards(material).find((standard) => isMetricPipe({ standard }) === metric) ?? pipeStandards(material)[0]
  );
}

function unlistedWire({ size }: Fields): Problem[] {
  const parsed = typeof size === 'string' ? parseQuantity(size, 'gauge') : null;
  if (!parsed?.ok) return [];
  const metric = parsed.unit === 'mm2';
  if (isTabulated(metric ? metricWire(squareMillimetres(parsed.si)) : parsed.si)) return [];
  const sizes = (metric ? usualWires('mm2') : CONDUCTORS.map(({ gauge }) => gauge)).map(wireText);
  return [not('wire.size', size, 'not a size in the tables', `one of ${quoted(sizes)}`)];
}

function not(path: string, typed: unknown, problem: string, write: string): Problem {
  return { path, read: shortJson(typed), problem, write, kind: 'value' };
}

function quoted(names: readonly string[]): string {
  return names.map((name) => `"${name}"`).join(', ');
}

function text(typed: unknown): string | undefined {
  return typeof typed === 'string' ? typed : undefined;
}

function isPipe(material: unknown): material is PipeMaterial {
  return material === 'PE' || material === 'PVC' || material === 'galvanized steel' || material === 'stainless steel';
}

function isCasing(material: unknown): material is CasingMaterial {
  return ['steel', 'PVC', 'stainless steel', 'concrete', 'other'].includes(String(material));
}
