/** Changes that mend a finding: the smallest, only of choices of the build, never of the well, its water or its site. */
import type { Facts } from '../facts.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import type { Metres } from '../si.ts';
import type { BandSetting, Change } from '../solution.ts';
import { feet, inches, parseQuantity, writeQuantity } from '../units.ts';
import { meets } from './grace.ts';
import { ceilTo, floorTo } from './rounding.ts';
import type { Given, Mend, Range } from './rule.ts';

/** Nothing to click: what to do instead. */
export function words(label: string): Mend {
  return { changes: null, label };
}

/** One or more changes behind one button, or the words where any of them stands reported or installed. */
export function change(facts: Facts, changes: readonly Change[], label: string, instead = `${label}.`): Mend {
  return changes.every(({ path }) => mayMove(facts, path)) ? { changes, label } : words(instead);
}

/** What was reported or stands installed is not moved by a click. */
export function mayMove(facts: Facts, path: string): boolean {
  return statusAt(facts, path) === 'to choose';
}

/** The word that counts for a path: its own, else its group's, else it is still to choose. */
export function statusAt({ status }: Facts, path: string): 'reported' | 'installed' | 'to choose' {
  for (let end = path.length; end > 0; end = path.lastIndexOf('.', end - 1)) {
    const said = status[path.slice(0, end)];
    if (said !== undefined) return said;
  }
  return 'to choose';
}

/**
 * Moves the pump or the adapter as little as mends the rule: to the near end of where the firm limits let it stand. A
 * limit that gives way (thicker wire, a hoist) has a mend of its own and does not push the part further, unless it is
 * the very one to be mended.
 */
export function moveIntoBand(given: Given, rule: string, setting: BandSetting, instead: string): Mend {
  const range = given.ranges[setting];
  if (range === null || !range.heeded.includes(rule)) return words(instead);
  if (range.ends === null || range.firm === null) return words(clashWords(range, given));
  const now =
    setting === 'pump.setting'
      ? given.facts.pump.setting
      : given.facts.top.kind === 'pitless'
        ? given.facts.top.depth
        : 0;
  const outside = ({ from, to }: Ends) => now < from || !meets(to - now, 'length');
  const ends = outside(range.firm) ? range.firm : range.ends;
  if (!outside(ends)) return words(instead);
  const down = now < ends.from;
  const to = writtenInside(given, setting, down ? 'from' : 'to', ends);
  return change(given.facts, [{ path: setting, to }], `${down ? 'Lower' : 'Raise'} to ${to}`, instead);
}

type Ends = NonNullable<Range['ends']>;

function clashWords(range: Range, { show }: Given): string {
  return `No depth meets both: ${range.from.label(show)}, and ${range.to.label(show)}.`;
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

/** The unit that a field was typed in; `otherwise` where it is empty. */
export function unitAt(
  plan: Plan,
  path: string,
  otherwise: string,
  kind: 'length' | 'flow' | 'pressure' = 'length',
): string {
  const text = valueAt(plan, path);
  if (typeof text !== 'string') return otherwise;
  const read = parseQuantity(text, kind);
  return read.ok ? read.unit : otherwise;
}

/** A height on the string in the plan's units: "2 ft" or "0.6 m". */
export function heightText(facts: Facts, feetCount: number, metres: Metres): string {
  return facts.units === 'us' ? `${feetCount} ft` : `${metres} m`;
}
