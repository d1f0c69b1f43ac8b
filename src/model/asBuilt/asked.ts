/** What an installer writes down, and what of it was planned. */
import { fieldAt, fields } from '../plan/fields.ts';
import { isCountedFromDatum, valueAt, withValue } from '../plan/editPlan.ts';
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
  /** What was installed stands in the plan already. */
  readonly isPlan: boolean;
  /** It counts from the casing's top, as the plan's depths do; else from the ground, or it is no depth. */
  readonly fromCasingTop: boolean;
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
  const before = plan.asBuilt?.planned?.[path] ?? null;
  const planned = before ?? said ?? taken;
  const isSame = (value: Value | null): boolean =>
    installed !== null && value !== null && sameValue(path, value, installed);
  return {
    ...{ path, planned, installed },
    assumed: before === null && taken !== null,
    differs: installed !== null && !isSame(planned),
    isPlan: isSame(said),
    fromCasingTop: plan.well.depthsFrom === 'casing top' && isCountedFromDatum(path),
  };
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

/** Groups of what is built; of the house what stands in it, and no use of water. */
const BUILT = /^(?:pump|dropPipe|string|wire|rope|top|house\.(?:tank|tankRating|reliefValve|control|line))(?:\.|$)/;

/** What else may have been put in otherwise: every field of the build, and one valve and one splice more than there are. */
export function othersOf(solution: Pick<Solution, 'plan' | 'facts' | 'assumed'>): readonly string[] {
  const { string } = solution.facts;
  const told = new Set(rowsOf(solution).map(({ path }) => path));
  const single = fields.map(({ path }) => path).filter((path) => BUILT.test(path) && !path.includes('*'));
  const more = [`string.checkValves.${string.checkValves.length}`, `string.splices.${string.splices.length}`];
  // Two kinds of a top may have a field of one path.
  return [...new Set([...single, ...more])].filter((path) => !told.has(path) && !path.endsWith('.kind'));
}
