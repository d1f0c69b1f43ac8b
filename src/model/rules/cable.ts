/** What keeps pipe and cable in their place: torque arrestor, ties, guards, splice. */
import type { PlacedPart, Solved } from '../solution.ts';
import { feet, horsepower } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { placed } from './placed.ts';
import { ratedUnder } from './ratedUnder.ts';
import { breaks, defineRule, doesNotApply, holds } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { isBarbed, isPlastic } from '../tables/pipeMaterials.ts';

/** The arrestor stands more than the first and at most the second above the discharge. */
export const ARRESTOR_ABOVE = feet(0.5);
export const ARRESTOR_BELOW = feet(4);
export const TIES_AT_MOST = feet(20);
export const TIES_AT_LEAST = feet(5);
const TIES_USUAL = feet(10);
export const GUARDS_AT_MOST = feet(50);
/** A string of up to so much pipe hangs without guards often enough. Common practice, no source. */
export const GUARDS_FROM = feet(300);
export const SPLICE_BELOW = feet(5);
/** Smaller motors hang on polyethylene pipe without an arrestor. Common practice, no source. */
export const ARRESTOR_FROM_POWER = horsepower(1);

export const torqueArrestor = defineRule({
  number: 'PR-12',
  part: 'torqueArrestor',
  restsOn: ['dropPipe.material', 'string.splices', 'string.torqueArrestor'],
  compares: [['string.torqueArrestor', 'string.splices']],
  asks: { over: ARRESTOR_ABOVE, upTo: ARRESTOR_BELOW, from: ARRESTOR_FROM_POWER },
  judge({ solved, facts }) {
    const height = facts.string.torqueArrestor;
    const discharge = dischargeDepth(facts.pump);
    const { material } = facts.dropPipe;
    if (height === null) {
      if (isBarbed(facts.dropPipe) && ratedUnder(facts, ARRESTOR_FROM_POWER) === true)
        return holds('smallPump', { below: ARRESTOR_FROM_POWER });
      const plastic = isPlastic(facts.dropPipe);
      const at = { depth: discharge, part: 'dropPipe', partKind: 'dropPipe' } as const;
      return breaks('none', plastic ? 'warning' : 'note', { material }, at);
    }
    const over = ARRESTOR_ABOVE;
    const upTo = ARRESTOR_BELOW;
    if (exceeds(height - over, 'length') && meets(upTo - height, 'length')) {
      const rough = solved.bore.some(
        ({ kind, top, bottom }) => kind === 'openHole' && top < discharge - height && bottom > discharge - height,
      );
      return rough ? holds('inOpenHole', { height }) : holds('justAbove', { height });
    }
    const high = height > upTo;
    const limit = high ? upTo : over;
    const margin = high ? limit - height : height - limit;
    const at = { measured: height, limit, margin, quantity: 'length', depth: discharge - height } as const;
    const numbers = { height, margin, over, upTo };
    if (high) return breaks('tooHigh', 'warning', numbers, at);
    return exceeds(-margin, 'length')
      ? breaks('tooLow', 'warning', numbers, at)
      : breaks('justTooLow', 'warning', numbers, at);
  },
});

export const cableTies = defineRule({
  number: 'PR-13',
  part: 'tie',
  restsOn: ['string.ties'],
  asks: { least: TIES_AT_LEAST, most: TIES_AT_MOST },
  judge({ facts }) {
    const { ties } = facts.string;
    const depth = dischargeDepth(facts.pump) - ties;
    const most = TIES_AT_MOST;
    const least = TIES_AT_LEAST;
    if (!meets(most - ties, 'length')) {
      const margin = most - ties;
      const at = { measured: ties, limit: most, margin, quantity: 'length', depth } as const;
      return breaks('tooFar', 'warning', { ties, margin, most, usual: TIES_USUAL }, at);
    }
    if (!meets(ties - least, 'length')) {
      const margin = ties - least;
      const at = { measured: ties, limit: least, margin, quantity: 'length', depth } as const;
      return breaks('tooClose', 'note', { ties, margin }, at);
    }
    return holds('tied', { ties, least, most });
  },
});

export const cableGuards = defineRule({
  number: 'PR-14',
  part: 'guard',
  restsOn: ['pump.setting', 'top.depth'],
  asks: { from: GUARDS_FROM, most: GUARDS_AT_MOST },
  judge({ facts, values }) {
    const { guards } = facts.string;
    const length = values.dropPipeCutLength ?? 0;
    const discharge = dischargeDepth(facts.pump);
    const on = { part: 'cable', partKind: 'cable', quantity: 'length' } as const;
    if (guards === null) {
      const from = GUARDS_FROM;
      const margin = from - length;
      if (meets(margin, 'length')) return doesNotApply;
      const at = { measured: length, limit: from, margin, depth: discharge - GUARDS_AT_MOST, ...on } as const;
      return breaks('none', 'note', { length, from, most: GUARDS_AT_MOST }, at);
    }
    const most = GUARDS_AT_MOST;
    const margin = most - guards;
    if (meets(margin, 'length')) return holds('guarded', { guards });
    const at = { measured: guards, limit: most, margin, depth: discharge - Math.min(guards, length), ...on } as const;
    return breaks('tooFar', 'note', { guards, margin, most }, at);
  },
});

export const splice = defineRule({
  number: 'PR-15',
  part: 'splice',
  restsOn: ['string.splices', 'string.torqueArrestor'],
  asks: { within: SPLICE_BELOW },
  judge({ solved, facts }) {
    const { splices } = facts.string;
    const only = splices[0];
    if (only === undefined) return holds('noSplice', {});
    const wrong = splices.find((height) => !exceeds(height, 'length') || !meets(SPLICE_BELOW - height, 'length'));
    const arms = splices.length === 1 && wrong === undefined && insideArms(solved);
    if (splices.length === 1 && wrong === undefined && !arms) return holds('justAbove', { height: only });
    const height = wrong ?? splices[1] ?? only;
    const within = SPLICE_BELOW;
    const low = wrong !== undefined && !exceeds(wrong, 'length');
    const limit = low ? 0 : within;
    const at = {
      measured: height,
      limit,
      margin: wrong === undefined ? null : low ? height - limit : limit - height,
      quantity: 'length',
      depth: dischargeDepth(facts.pump) - height,
      part: spliceAt(splices.indexOf(height)),
    } as const;
    if (arms) return breaks('inArms', 'warning', {}, at);
    if (splices.length > 1) return breaks('several', 'warning', { count: splices.length, within }, at);
    return low
      ? breaks('tooLow', 'warning', { within }, at)
      : breaks('tooHigh', 'warning', { height, margin: within - height, within }, at);
  },
});

/** Keys count the splices from the pump up, the first without its number. */
function spliceAt(index: number): string {
  return index > 0 ? `splice/${index + 1}` : 'splice';
}

function insideArms(solved: Solved): boolean {
  const arrestor = placed(solved, 'torqueArrestor');
  return arrestor !== undefined && solved.parts.some((part) => part.kind === 'splice' && overlap(part, arrestor));
}

function overlap(one: PlacedPart, other: PlacedPart): boolean {
  return exceeds(Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top), 'length');
}

export const cableRules = [splice, torqueArrestor, cableTies, cableGuards] as const;
