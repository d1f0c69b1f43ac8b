/** Where the two parts that the rules place may go, worked out from all rules together. */
import { feet, inches } from '../units.ts';
import type { Metres } from '../si.ts';
import type { Band, BandSetting, OwnEnd, Solved } from '../solution.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { wellRelation } from '../formulas/wellRelation.ts';
import { adapterRoom } from './adapterRoom.ts';
import { holdsOn } from './assumed.ts';
import { meets } from './grace.ts';
import { LEAST_SUBMERGENCE } from './pumpDepth.ts';
import { ceilTo, floorTo } from './rounding.ts';
import type { End, Limit, Range, Ranges, Rule } from './rule.ts';
import { settingForDischarge, settingForMotorBottom } from '../string/pumpDepths.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import { ROOM_OVER_PUMP } from '../string/lengths.ts';

export function rangesOf(solved: Solved, rules: readonly Rule[]): Ranges {
  const limits: RuleLimit[] = [];
  for (const rule of rules) {
    for (const limit of rule.limits(solved)) limits.push({ rule, limit });
  }
  return {
    'pump.setting': rangeOf('pump.setting', pumpRoom(solved), limits, solved),
    'top.depth': solved.facts.top.kind === 'pitless' ? rangeOf('top.depth', pitlessRoom(solved), limits, solved) : null,
  };
}

export function bandOf(range: Range, assumed: ReadonlySet<string>): Band {
  const { setting, ends, from, to } = range;
  return {
    setting,
    kind: range.known ? 'allowed' : 'unknown',
    from: ends?.from ?? null,
    to: ends?.to ?? null,
    fromEnd: endOf(from, assumed),
    toEnd: endOf(to, assumed),
    clash: ends === null ? [from.name.rule, to.name.rule].filter((rule) => rule !== null) : [],
  };
}

function endOf({ name, by }: End, assumed: ReadonlySet<string>): Band['fromEnd'] {
  return { ...name, assumed: by === null ? [] : holdsOn(by, '', assumed) };
}

/** Where the thing itself ends, and no rule. */
function ownEnd(depth: Metres, variant: OwnEnd): End {
  return { depth, name: { rule: null, variant, numbers: {} }, by: null };
}

function ruleEnd(depth: Metres, by: Rule, { variant, numbers }: Limit): End {
  return { depth, name: { rule: by.number, variant, numbers }, by };
}

interface RuleLimit {
  readonly rule: Rule;
  readonly limit: Limit;
}

interface Room {
  readonly from: End;
  readonly to: End;
  readonly known: boolean;
}

/** The pump hangs under the top works and the standing water, and its motor above the bottom. */
function pumpRoom({ facts, levels, lowest }: Solved): Room {
  const { pump, water, well } = facts;
  const underTop = settingForDischarge(suspensionDepth(facts) + ROOM_OVER_PUMP, pump);
  const to = settingForMotorBottom(well.bottom, pump);
  const rest = lowestStatic(facts);
  // However little the water falls, so much of it has to stand over the intake; a well too shallow for that gives way.
  const covered = lowest === null && rest !== null && rest + LEAST_SUBMERGENCE <= to ? LEAST_SUBMERGENCE : 0;
  const level = lowest === null ? rest : levels.static;
  const underWater = level !== null && level + covered > underTop;
  return {
    from: ownEnd(
      underWater ? level + covered : underTop,
      !underWater ? 'underWellTop' : lowest === null ? 'pumpingLevelUnknown' : 'underStaticLevel',
    ),
    to: ownEnd(to, 'motorOnBottom'),
    // With the intake above the water its lowest level is known; that of a deeper pump need not be.
    known:
      lowest !== null &&
      (lowest.depth > (lowestStatic(facts) ?? 0) || wellRelation(water.pumping, water.staticLevel) !== null),
  };
}

/** The adapter sits in the outer casing, between the ground and what ends its room. */
function pitlessRoom({ facts, values }: Solved): Room {
  const { deepest, by } = adapterRoom(facts);
  return {
    from: ownEnd(0, 'atGround'),
    to: ownEnd(deepest, ADAPTER_END[by]),
    known: values.frostDepth !== null,
  };
}

const ADAPTER_END = {
  digging: 'asDeepAsOneDigs',
  casing: 'endOfCasing',
  liner: 'aboveLiner',
  pump: 'abovePump',
} as const satisfies Readonly<Record<ReturnType<typeof adapterRoom>['by'], OwnEnd>>;

/**
 * A firm limit always counts: where no depth meets it there is no band, and the rules at its two ends are named. One that
 * gives way, since something else mends it, counts only while it leaves something of what the others allow.
 */
function rangeOf(setting: BandSetting, room: Room, limits: readonly RuleLimit[], solved: Solved): Range {
  let { from, to } = room;
  const heeded: string[] = [];
  let firm: Range['ends'] = null;
  for (const givesWay of [false, true]) {
    if (givesWay) firm = meets(to.depth - from.depth, 'length') ? { from: from.depth, to: to.depth } : null;
    for (const { rule, limit } of limits) {
      if (limit.setting !== setting || (limit.givesWay ?? false) !== givesWay) continue;
      const [least, most] = [from.depth, to.depth];
      if (limit.from !== undefined && (!givesWay || meets(most - limit.from, 'length'))) {
        heeded.push(rule.number);
        if (limit.from > from.depth) from = ruleEnd(limit.from, rule, limit);
      }
      if (limit.to !== undefined && (!givesWay || meets(limit.to - least, 'length'))) {
        heeded.push(rule.number);
        if (limit.to < to.depth) to = ruleEnd(limit.to, rule, limit);
      }
    }
  }
  return {
    setting,
    from,
    to,
    heeded,
    known: room.known,
    firm,
    ends: roundInward(setting, from.depth, to.depth, solved.facts.units),
  };
}

/** Whole feet or tenths of a metre for the pump, inches or centimetres for the adapter; finer where that leaves nothing. */
function roundInward(setting: BandSetting, from: Metres, to: Metres, units: 'us' | 'metric'): Range['ends'] {
  if (!meets(to - from, 'length')) return null;
  const coarse = setting === 'pump.setting' ? (units === 'us' ? feet(1) : 0.1) : units === 'us' ? inches(1) : 0.01;
  for (const step of [coarse, coarse / 10]) {
    const least = ceilTo(from, step);
    const most = floorTo(to, step);
    if (most >= least) return { from: least, to: most };
  }
  return { from: Math.min(from, to), to };
}
