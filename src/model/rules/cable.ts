/** What keeps pipe and cable in their place: torque arrestor, ties, guards, splice. */
import type { Metres } from '../si.ts';
import type { PlacedPart, Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, changeOr, heightText, words } from './fix.ts';
import { placed } from './placed.ts';
import { breaks, defineRule, holds } from './rule.ts';

/** The arrestor stands more than the first and at most the second above the discharge. */
export const ARRESTOR_ABOVE = feet(0.5);
export const ARRESTOR_BELOW = feet(4);
export const TIES_AT_MOST = feet(20);
export const TIES_AT_LEAST = feet(5);
const TIES_USUAL = feet(10);
export const GUARDS_AT_MOST = feet(50);
export const SPLICE_BELOW = feet(5);
/** Half of arrestor and splice together: nearer than this their bodies overlap (12 in and 8 in, common practice). */
const APART = feet(10 / 12);

export const torqueArrestor = defineRule({
  number: 'PR-12',
  part: 'torqueArrestor',
  judge({ solved, facts }) {
    const height = facts.string.torqueArrestor;
    const discharge = facts.pump.setting - facts.pump.intakeToDischarge;
    const { material } = facts.dropPipe;
    if (height === null) {
      const plastic = material === 'PE' || material === 'PVC';
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
  fixes({ facts }, { variant }) {
    const height = heightText(facts, 2, 0.6);
    const changes = [{ path: 'string.torqueArrestor', to: height }];
    return [
      variant === 'none'
        ? changeOr(change(facts, changes, 'addOne', { height }), words('add', {}))
        : change(facts, changes, 'putIt', { height }),
    ];
  },
});

export const cableTies = defineRule({
  number: 'PR-13',
  part: 'tie',
  judge({ facts }) {
    const { ties } = facts.string;
    const depth = facts.pump.setting - facts.pump.intakeToDischarge - ties;
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
  fixes({ facts }) {
    const every = heightText(facts, 10, 3);
    return [change(facts, [{ path: 'string.ties', to: every }], 'tieEvery', { every })];
  },
});

export const cableGuards = defineRule({
  number: 'PR-14',
  part: 'guard',
  judge({ facts, values }) {
    const { guards } = facts.string;
    const length = values.dropPipeCutLength ?? 0;
    const most = GUARDS_AT_MOST;
    const measured = guards ?? length;
    const margin = most - measured;
    if (meets(margin, 'length'))
      return guards === null ? holds('shortString', { length }) : holds('guarded', { guards });
    const depth = facts.pump.setting - facts.pump.intakeToDischarge - Math.min(guards ?? most, length);
    const at = { measured, limit: most, margin, quantity: 'length', depth, part: 'cable', partKind: 'cable' } as const;
    return guards === null
      ? breaks('none', 'note', { length, most }, at)
      : breaks('tooFar', 'note', { guards, margin, most }, at);
  },
  fixes({ facts }) {
    const every = heightText(facts, 40, 12);
    return [change(facts, [{ path: 'string.guards', to: every }], 'addOneEvery', { every })];
  },
});

export const splice = defineRule({
  number: 'PR-15',
  part: 'splice',
  judge({ solved, facts }) {
    const { splices } = facts.string;
    const only = splices[0];
    if (only === undefined) return holds('noSplice', {});
    const wrong = splices.find((height) => !exceeds(height, 'length') || !meets(SPLICE_BELOW - height, 'length'));
    const arms = splices.length === 1 && wrong === undefined && insideArms(solved);
    if (splices.length === 1 && wrong === undefined && !arms) return holds('justAbove', { height: only });
    const height = wrong ?? splices[1] ?? only;
    const within = SPLICE_BELOW;
    const margin = within - height;
    const at = {
      measured: height,
      limit: within,
      margin: wrong === undefined ? null : margin,
      quantity: 'length',
      depth: facts.pump.setting - facts.pump.intakeToDischarge - height,
      part: spliceAt(splices.indexOf(height)),
    } as const;
    if (arms) return breaks('inArms', 'warning', {}, at);
    if (splices.length > 1) return breaks('several', 'warning', { count: splices.length, within }, at);
    return height > 0
      ? breaks('tooHigh', 'warning', { height, margin, within }, at)
      : breaks('tooLow', 'warning', { height, within }, at);
  },
  fixes({ facts }) {
    const count = clearHeight(facts.string.torqueArrestor);
    const height = facts.units === 'us' ? `${count} ft` : `${Math.floor(feet(count) * 10) / 10} m`;
    return [change(facts, [{ path: 'string.splices', to: [height] }], 'oneSplice', { height })];
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

/** Feet above the pump, clear of the arrestor; 4 ft where that is free. */
function clearHeight(arrestor: Metres | null): number {
  return [4, 4.5, 5, 3, 2, 1].find((count) => arrestor === null || Math.abs(feet(count) - arrestor) > 2 * APART) ?? 4;
}

export const cableRules = [splice, torqueArrestor, cableTies, cableGuards] as const;
