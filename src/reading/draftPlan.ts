/** A plan of what was read and accepted, and nothing else: what the report does not say is not in it. */
import { valueIn } from './valueIn.ts';
import type { Reading, ReadReport } from './reading.ts';

/** What a report says of the well; what hangs in it is installed, or recommended and nobody's yet. */
const REPORTED = [
  'well.depth',
  'well.casing',
  'well.casings',
  'well.intake',
  'well.inflows',
  'well.yield',
  'well.layers',
  'water.staticLevel',
  'water.pumping',
];

/**
 * @param readings  those that were accepted
 * @returns a plan as it is written into a file; without a depth no plan can be read from it
 */
export function draftPlan({ units }: Pick<ReadReport, 'units'>, readings: readonly Reading[]): Record<string, unknown> {
  const plan: Record<string, unknown> = { format: 'wellcut-plan/1', units, well: {}, water: {} };
  for (const { path, value } of readings) put(plan, path.split('.'), path === 'well.grout' ? value[0] : value);
  const well = plan['well'] as Record<string, unknown>;
  const water = plan['water'] as Record<string, unknown>;
  well['intake'] ??= {};
  well['casing'] ??= well['casings'] === undefined ? {} : undefined;
  if (well['casing'] === undefined) delete well['casing'];
  water['staticLevel'] ??= 'unknown';
  pumping(water, well);
  const status = Object.fromEntries([
    ...REPORTED.filter((path) => isSaid(valueIn(plan, path))).map((path) => [path, 'reported'] as const),
    ...(isSaid(valueIn(plan, 'well.soundedDepth')) ? [['well.soundedDepth', 'measured'] as const] : []),
    ...readings
      .filter(({ note }) => note === 'installed')
      .map(({ path }) => [path.startsWith('top.') ? 'top' : path, 'installed'] as const),
  ]);
  return { ...plan, status };
}

function isSaid(value: unknown): boolean {
  if (value === undefined || value === 'unknown') return false;
  return typeof value !== 'object' || value === null || Object.keys(value).length > 0;
}

function pumping(water: Record<string, unknown>, well: Record<string, unknown>): void {
  const said = water['pumping'] as Record<string, unknown> | undefined;
  if (said === undefined) {
    if (well['yield'] !== undefined) water['pumping'] = { kind: 'yield only' };
    return;
  }
  const { drawdown, level, flow, after } = said;
  if (level !== undefined && drawdown === undefined)
    water['pumping'] = { kind: 'level', level, ...(flow === undefined ? {} : { flow }) };
  else
    water['pumping'] = {
      kind: 'test',
      flow: flow ?? 'unknown',
      drawdown: drawdown ?? 'unknown',
      ...(after === undefined ? {} : { after }),
    };
}

function put(into: Record<string, unknown>, [key = '', ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    into[key] = value;
    return;
  }
  const inner = (into[key] ??= {}) as Record<string, unknown>;
  put(inner, rest, value);
}
