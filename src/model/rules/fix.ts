/** Changes that may fix a finding: the smallest, only of choices of the build, never of the well, its water or its site. */
import type { Facts } from '../facts.ts';
import { valueAt, withValue } from '../plan/editPlan.ts';
import { readFacts } from '../plan/readFacts.ts';
import type { Plan } from '../plan/schema.ts';
import type { Metres } from '../si.ts';
import type { BandSetting, Change, EndName } from '../solution.ts';
import { feet, inches, isForeign, readQuantity, writeQuantity } from '../units.ts';
import { meets } from './grace.ts';
import { ceilTo, floorTo } from './rounding.ts';
import type { Fix, Given, Numbers, Range } from './rule.ts';
import { lineDepth } from '../string/topDepths.ts';

/** Nothing to click: what to do instead. */
export function words<const Variant extends string, const Said extends Numbers>(
  variant: Variant,
  numbers: Said,
): Fix<Variant, Said> {
  return { changes: null, variant, numbers };
}

/** One or more changes behind one button; without the button where any of them stands reported or installed. */
export function change<const Variant extends string, const Said extends Numbers>(
  facts: Facts,
  changes: readonly Change[],
  variant: Variant,
  numbers: Said,
): Fix<Variant, Said> {
  return { changes: changes.every(({ path }) => mayMove(facts, path)) ? changes : null, variant, numbers };
}

/** The same with other words where there is no button. */
export function changeOr<First extends Fix, Instead extends Fix>(button: First, instead: Instead): First | Instead {
  return button.changes === null ? instead : button;
}

/** What was reported or stands installed is not moved by a click. */
export function mayMove(facts: Facts, path: string): boolean {
  return statusAt(facts, path) === 'to choose';
}

/** The word that counts for a path: its own, else its group's, else that of anything in it, else it is still to choose. */
export function statusAt({ status }: Facts, path: string): Facts['status'][string] {
  for (let end = path.length; end > 0; end = path.lastIndexOf('.', end - 1)) {
    const said = status[path.slice(0, end)];
    if (said !== undefined) return said;
  }
  for (const [each, said] of Object.entries(status))
    if (said !== 'to choose' && each.startsWith(`${path}.`)) return said;
  return 'to choose';
}

/** Where a part goes; and its probe, where one goes with it. */
export interface Moved {
  readonly to: Metres;
  readonly setting: BandSetting;
  readonly probe?: Metres;
}

/** Said by every rule that moves a part: their words stand once. */
export type SharedFix =
  | Fix<'lowerTo', Moved>
  | Fix<'raiseTo', Moved>
  | Fix<'raiseWithProbe', { to: Metres; probe: Metres }>
  | Fix<'protectByProbe', { depth: Metres }>
  | Fix<'protectByCurrent', object>
  | Fix<'pumpForThisLift', object>
  | Fix<'callContractorFirst', object>
  | Fix<'noDepthMeetsBoth', { from: EndName; to: EndName }>;

/**
 * Moves the pump or the adapter as little as fixes the rule: to the near end of where the firm limits let it stand. A
 * limit that gives way (thicker wire, a hoist) has a fix of its own and does not push the part further, unless it is
 * the very one to be fixed.
 */
export function moveIntoBand<Instead extends Fix>(
  given: Given,
  rule: string,
  setting: BandSetting,
  instead: Instead,
): SharedFix | Instead {
  const range = given.ranges[setting];
  if (range === null || !range.heeded.includes(rule)) return instead;
  if (range.ends === null || range.firm === null)
    return words('noDepthMeetsBoth', { from: range.from.name, to: range.to.name });
  const now =
    setting === 'pump.setting'
      ? given.facts.pump.setting
      : given.facts.top.kind === 'pitless'
        ? given.facts.top.depth
        : 0;
  const outside = ({ from, to }: Ends) => now < from || !meets(to - now, 'length');
  const ends = outside(range.firm) ? range.firm : range.ends;
  if (!outside(ends)) return instead;
  const down = now < ends.from;
  const written = writtenInside(given, setting, down ? 'from' : 'to', ends);
  const changes = [{ path: setting, to: written }];
  const to = depthWritten(given, setting, written);
  return changeOr(
    down
      ? change(given.facts, changes, 'lowerTo', { to, setting })
      : change(given.facts, changes, 'raiseTo', { to, setting }),
    instead,
  );
}

type Ends = NonNullable<Range['ends']>;

/** The depth from the ground that a text means in a field. */
export function depthWritten({ solved }: Pick<Given, 'solved'>, setting: BandSetting, text: string): Metres {
  const { facts } = readFacts(withValue(solved.plan, setting, text));
  return setting === 'pump.setting' ? facts.pump.setting : lineDepth(facts);
}

/** The end of a band as one would type it in that field: its own unit and datum, rounded so that it stays inside. */
export function writtenInside(
  { solved, facts }: Pick<Given, 'solved' | 'facts'>,
  setting: BandSetting,
  which: 'from' | 'to',
  ends: Ends,
): string {
  const shift = setting === 'pump.setting' && facts.depthsFrom === 'casing top' ? facts.well.casingHeight : 0;
  const unit = unitAt(solved.plan, setting, facts.units === 'us' ? (setting === 'top.depth' ? 'in' : 'ft') : 'm');
  const exact = ends[which] + shift;
  const coarse = stepOf(unit, setting);
  for (const step of [coarse, coarse / 10, coarse / 100]) {
    const rounded = which === 'from' ? ceilTo(exact, step) : floorTo(exact, step);
    const inside = meets(rounded - shift - ends.from, 'length') && meets(ends.to + shift - rounded, 'length');
    if (inside) return writeQuantity(rounded, 'length', unit, step);
  }
  return writeQuantity(exact, 'length', unit);
}

function stepOf(unit: string, setting: BandSetting): Metres {
  if (unit === 'ft') return setting === 'top.depth' ? feet(0.5) : feet(1);
  if (unit === 'in' || unit === 'ft in') return inches(1);
  return unit === 'm' ? (setting === 'top.depth' ? 0.05 : 0.1) : 0.01;
}

/** Where a plan names pressures, the switch first. */
const PRESSURES = ['house.cutIn', 'house.cutOut', 'house.precharge', 'house.tankRating', 'dropPipe.rating'] as const;

/**
 * The unit that a field was typed in. What one buys by its print, a pressure, a flow or a volume, is of the plan's own
 * kind all the same: bar, or the kPa that it counts in. A length stays in the unit of the owner's tape.
 */
export function unitAt(
  plan: Plan,
  path: string,
  otherwise: string,
  kind: 'length' | 'flow' | 'pressure' | 'volume' = 'length',
): string {
  for (const at of kind === 'pressure' ? [path, ...PRESSURES] : [path]) {
    const text = valueAt(plan, at);
    const read = typeof text === 'string' ? readQuantity(text, kind) : null;
    if (read?.ok && (kind === 'length' || !isForeign(read.unit, plan.units ?? 'us'))) return read.unit;
  }
  return otherwise;
}

/** A height on the string in the plan's units: "2 ft" or "0.6 m". */
export function heightText(facts: Facts, feetCount: number, metres: Metres): string {
  return facts.units === 'us' ? `${feetCount} ft` : `${metres} m`;
}
