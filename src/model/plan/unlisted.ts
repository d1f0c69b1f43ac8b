/**
 * Pipe and wire that no table here knows: without their dimensions nothing can be drawn or computed. A casing may have a
 * size that no table has; its bore is then unknown until it is measured.
 */
import type { PipeMaterial } from '../facts.ts';
import { casingSchedules, casingSizes, findCasing, isCasingMaterial } from '../tables/casings.ts';
import { inchNumber, millimetreNumber, writeInchName } from '../tables/nominalSize.ts';
import { CONDUCTORS } from '../tables/conductors.ts';
import { isTabulated, metricWire, usualWires, wireText } from '../tables/wireSizes.ts';
import { classesOfSize, findPipe, isMetricPipe, pipeSizes, pipeStandards } from '../tables/pipes.ts';
import { feet, inches, parseQuantity, squareMillimetres, toInches, writeQuantity } from '../units.ts';
import { casingsOf } from './impossible/raw.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { isRecord } from './shape.ts';
import { DEFAULTS, defaultsIn } from './defaults.ts';
import type { Defaults } from './defaults.ts';
import { usualPipeSize } from './usualPipeSize.ts';
import { isPipeMaterial } from '../tables/pipeMaterials.ts';

type Fields = Readonly<Record<string, unknown>>;

/** Widest casing that is drilled [in]; a wider one lines a dug well. Common practice, no source. */
const WIDEST_DRILLED = 48;
/** Narrowest driven point and widest dug well that a size is believed of [in]; common practice, no source. */
const LEAST_CASING = 1;
const WIDEST_CASING = 240;

export function unlisted(plan: Fields): Problem[] {
  const well = isRecord(plan['well']) ? plan['well'] : {};
  const usual = defaultsIn(plan['units']);
  const house = isRecord(plan['house']) ? plan['house'] : {};
  return [
    ...casingsOf(well).flatMap(({ path, fields }) => [
      ...dugAlone(path, fields, well, plan['units']),
      ...unlistedCasing(path, fields),
    ]),
    ...(isRecord(plan['dropPipe']) ? unlistedPipe('dropPipe', plan['dropPipe'], usual) : []),
    ...(isRecord(house['line']) ? unlistedPipe('house.line', house['line'], usual) : []),
    ...(isRecord(plan['wire']) ? unlistedWire(plan['wire']) : []),
  ];
}

/** A size in millimetres, typed as a bare number, is read as inches: nobody drills a casing of 12 ft. */
function dugAlone(path: string, casing: Fields, well: Fields, units: unknown): Problem[] {
  const { material, size, insideDiameter } = casing;
  const kind = isRecord(well['intake']) ? well['intake']['kind'] : undefined;
  const number = typeof size === 'string' ? inchNumber(size, true) : null;
  if (number === null || number <= WIDEST_DRILLED || number > WIDEST_CASING) return [];
  if (insideDiameter !== undefined || kind === 'dug' || material === 'concrete') return [];
  const width =
    units === 'metric'
      ? writeQuantity(inches(number), 'length', 'm', 0.1)
      : writeQuantity(inches(number), 'length', 'ft', feet(0.5));
  const name = inchNumber(`DN ${number}`, true);
  const write =
    name === null
      ? 'its name in inches, as "6 in"'
      : `did you mean "${writeInchName(name)}", the name of ${number} mm?`;
  return [not(`${path}.size`, size, `which would be ${width} wide`, write)];
}

/** A measured inside diameter stands for itself; a size in the tables must have the wall that is said of it. */
function unlistedCasing(path: string, casing: Fields): Problem[] {
  const { material, size, schedule, insideDiameter } = casing;
  if (insideDiameter !== undefined || typeof size !== 'string' || !isCasingMaterial(material)) return [];
  const named = typeof schedule === 'string' ? schedule : undefined;
  if (findCasing({ material, size, schedule: named })) return [];
  const measured = 'the inside diameter as measured';
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
  if (!isPipeMaterial(material)) return [];
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
