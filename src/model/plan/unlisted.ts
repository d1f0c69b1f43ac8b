/** Pipe, casing and wire that no table here knows: without their dimensions nothing can be drawn or computed. */
import type { CasingMaterial, PipeMaterial } from '../facts.ts';
import { casingSchedules, casingSizes, findCasing } from '../tables/casings.ts';
import { CONDUCTORS } from '../tables/conductors.ts';
import { findPipe, pipeClasses, pipeSizes, pipeStandards } from '../tables/pipes.ts';
import { parseQuantity } from '../units.ts';
import { casingsOf } from './impossible/raw.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { isRecord } from './shape.ts';

type Fields = Readonly<Record<string, unknown>>;

export function unlisted(plan: Fields): Problem[] {
  const well = isRecord(plan['well']) ? plan['well'] : {};
  const house = isRecord(plan['house']) ? plan['house'] : {};
  return [
    ...casingsOf(well).flatMap(({ path, fields }) => unlistedCasing(path, fields)),
    ...(isRecord(plan['dropPipe']) ? unlistedPipe('dropPipe', plan['dropPipe']) : []),
    ...(isRecord(house['line']) ? unlistedPipe('house.line', house['line']) : []),
    ...(isRecord(plan['wire']) ? unlistedWire(plan['wire']) : []),
  ];
}

/** A measured inside diameter stands for itself; otherwise the table must know the casing. */
function unlistedCasing(path: string, casing: Fields): Problem[] {
  const { material, size, schedule, insideDiameter } = casing;
  if (insideDiameter !== undefined || typeof size !== 'string' || !isCasing(material)) return [];
  const named = typeof schedule === 'string' ? schedule : undefined;
  if (findCasing({ material, size, schedule: named })) return [];
  const measured = 'insideDiameter as measured';
  if (!findCasing({ material, size }) && casingSchedules(material, size).length === casingSchedules(material).length) {
    const sizes = casingSizes(material);
    const write = sizes.length > 0 ? `one of ${quoted(sizes)}, or add ${measured}` : `the ${measured} beside it`;
    return [not(`${path}.size`, size, `not a size of ${material} casing in the tables`, write)];
  }
  return [
    not(
      `${path}.schedule`,
      schedule,
      `not a wall of ${size} ${material} casing in the tables`,
      `one of ${quoted(casingSchedules(material, size))}, or add ${measured}`,
    ),
  ];
}

function unlistedPipe(path: string, pipe: Fields): Problem[] {
  const { material, size, standard, ratio } = pipe;
  if (!isPipe(material) || typeof size !== 'string') return [];
  const query = { material, size, standard: text(standard), ratio: text(ratio) };
  if (findPipe(query)) return [];
  const standards = pipeStandards(material);
  const named = query.standard ?? standards[0] ?? '';
  if (!standards.includes(named)) {
    return [not(`${path}.standard`, standard, `not a standard for ${material} pipe`, quoted(standards))];
  }
  if (!findPipe({ material, size, standard: named })) {
    return [not(`${path}.size`, size, `not a size of ${named} in the tables`, `one of ${quoted(pipeSizes(named))}`)];
  }
  return [not(`${path}.ratio`, ratio, `not a wall of ${named} in the tables`, `one of ${quoted(pipeClasses(named))}`)];
}

function unlistedWire({ size }: Fields): Problem[] {
  const parsed = typeof size === 'string' ? parseQuantity(size, 'gauge') : null;
  if (!parsed?.ok || CONDUCTORS.some(({ gauge }) => gauge === parsed.si)) return [];
  const sizes = CONDUCTORS.map(({ gauge }) => `${gauge} AWG`);
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
