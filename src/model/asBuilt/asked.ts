/** What an installer writes down, and what of it was planned. */
import { fieldAt } from '../plan/fields.ts';
import { valueAt, withValue } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import type { Solution } from '../solution.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { sameValue } from './sameValue.ts';

export type Value = string | number | boolean;

export interface Row {
  /** Of the plan: "pump.setting", "string.checkValves.0". */
  readonly path: string;
  /** As typed, or as assumed; null where nobody said it. */
  readonly planned: Value | null;
  /** What was planned was put in by the program. */
  readonly assumed: boolean;
  readonly installed: Value | null;
  /** What was installed is told and is another than was planned. */
  readonly differs: boolean;
}

/** Rows in the order of the work: what every job has, then whatever else was written down. */
export function rowsOf({ plan, facts, assumed }: Pick<Solution, 'plan' | 'facts' | 'assumed'>): readonly Row[] {
  const installed = plan.asBuilt?.installed ?? {};
  const valves = facts.string.checkValves.map((_, i) => `string.checkValves.${i}`);
  const splices = facts.string.splices.map((_, i) => `string.splices.${i}`);
  const barbs = isBarbed(facts.dropPipe) ? ['string.fittings', 'string.clampsPerJoint'] : ['dropPipe.sectionLength'];
  const usual = [
    ...['pump.power', 'pump.setting', 'dropPipe.material', 'dropPipe.size', 'dropPipe.rating', ...barbs],
    ...[...valves, 'string.torqueArrestor', ...splices, 'wire.size'],
    ...(facts.top.kind === 'pitless' ? ['top.depth', 'top.thread'] : []),
    ...(facts.rope === null ? [] : ['rope.material']),
    ...(facts.house.kind === 'open tank' ? [] : ['house.tank', 'house.precharge', 'house.cutIn', 'house.cutOut']),
  ];
  const more = Object.keys(installed).filter((path) => !usual.includes(path));
  return [...usual, ...more].filter((path) => fieldAt(path) !== null).map((path) => rowOf(path, plan, assumed));
}

function rowOf(path: string, plan: Plan, assumed: Solution['assumed']): Row {
  const said = plain(valueAt(plan, path));
  const taken = said === null ? assumedAt(path, assumed) : null;
  const installed = plan.asBuilt?.installed?.[path] ?? null;
  const planned = said ?? taken;
  const differs = installed !== null && (planned === null || !sameValue(path, planned, installed));
  return { path, planned, assumed: taken !== null, installed, differs };
}

function plain(value: unknown): Value | null {
  if (value === 'unknown') return null;
  return typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? value : null;
}

/** A list is assumed as a whole, and told with commas between. */
function assumedAt(path: string, assumed: Solution['assumed']): string | null {
  const own = assumed.find((each) => each.path === path);
  if (own !== undefined) return own.value;
  const [, list, index] = /^(.*)\.(\d+)$/.exec(path) ?? [];
  const whole = assumed.find((each) => each.path === list);
  return whole?.value.split(', ')[Number(index)] ?? null;
}

/** The plan with what was put in at a path; null takes it out again. What is empty leaves the plan. */
export function withInstalled(plan: Plan, path: string, value: Value | null): Plan {
  const { installed = {}, ...rest } = plan.asBuilt ?? {};
  const others = Object.entries(installed).filter(([key]) => key !== path);
  const next = value === null ? others : [...others, [path, value] as const];
  const asBuilt = { ...rest, ...(next.length === 0 ? {} : { installed: Object.fromEntries(next) }) };
  return Object.keys(asBuilt).length > 0 ? { ...plan, asBuilt } : withValue(plan, 'asBuilt', undefined);
}
