/** What keeps pipe and cable in their place: torque arrestor, ties, guards, splice. */
import type { Metres } from '../si.ts';
import type { PlacedPart, Solved } from '../solution.ts';
import { feet } from '../units.ts';
import { exceeds, meets } from './grace.ts';
import { change, heightText } from './mend.ts';
import { breaks, defineRule, holds } from './rule.ts';
import { ELECTRIC_CAUTION, gap, placed } from './say.ts';

/** The arrestor stands more than the first and at most the second above the discharge. */
export const ARRESTOR_ABOVE = feet(0.5);
export const ARRESTOR_BELOW = feet(4);
export const TIES_AT_MOST = feet(20);
export const TIES_AT_LEAST = feet(5);
export const GUARDS_AT_MOST = feet(50);
export const SPLICE_BELOW = feet(5);
/** Half of arrestor and splice together: nearer than this their bodies overlap (12 in and 8 in, common practice). */
const APART = feet(10 / 12);

export const torqueArrestor = defineRule({
  number: 'PR-12',
  part: 'torqueArrestor',
  broken: 'The torque arrestor is at the wrong height',
  holds: 'The torque arrestor is just above the pump',
  source: 'N.H. Admin. Rules We 702.05(l) asks for one; height: common practice, no source',
  why: 'Each start twists the pipe and rubs the cable; the arrestor’s arms take the twist.',
  judge(given) {
    const { solved, facts, show } = given;
    const height = facts.string.torqueArrestor;
    const discharge = facts.pump.setting - facts.pump.intakeToDischarge;
    const mend = change(
      facts,
      [{ path: 'string.torqueArrestor', to: heightText(facts, 2, 0.6) }],
      `Put it ${heightText(facts, 2, 0.6)} above the pump`,
    );
    if (height === null) {
      const plastic = facts.dropPipe.material === 'PE' || facts.dropPipe.material === 'PVC';
      return breaks({
        severity: plastic ? 'warning' : 'note',
        depth: discharge,
        part: 'dropPipe',
        partKind: 'dropPipe',
        title: 'No torque arrestor is planned',
        amount: 'none fitted',
        message: `Nothing takes the twist of each start off the ${facts.dropPipe.material} pipe.`,
        mend: {
          ...mend,
          label:
            mend.changes === null ? 'Add a torque arrestor.' : `Add one ${heightText(facts, 2, 0.6)} above the pump`,
        },
      });
    }
    if (exceeds(height - ARRESTOR_ABOVE, 'length') && meets(ARRESTOR_BELOW - height, 'length')) {
      const rough = solved.bore.some(
        ({ kind, top, bottom }) => kind === 'openHole' && top < discharge - height && bottom > discharge - height,
      );
      return holds(
        `${gap(height, show)} above the pump`,
        rough
          ? `It stands ${gap(height, show)} above the pump; in rough rock its arms can hang up when pulled.`
          : `It stands ${gap(height, show)} above the pump’s discharge.`,
      );
    }
    const high = height > ARRESTOR_BELOW;
    const limit = high ? ARRESTOR_BELOW : ARRESTOR_ABOVE;
    const margin = high ? limit - height : height - limit;
    return breaks({
      severity: 'warning',
      measured: height,
      limit,
      margin,
      quantity: 'length',
      depth: discharge - height,
      amount: exceeds(-margin, 'length') ? `${gap(margin, show)} too ${high ? 'high' : 'low'}` : 'too low',
      message: `It stands ${gap(height, show)} above the pump; right is over ${gap(ARRESTOR_ABOVE, show)} and up to ${show.depth(ARRESTOR_BELOW)}.`,
      mend,
    });
  },
});

export const cableTies = defineRule({
  number: 'PR-13',
  part: 'tie',
  broken: 'The cable ties are too far apart',
  holds: 'The cable is tied to the pipe',
  source: 'N.H. Admin. Rules We 702.04(h): every 5 to 20 ft',
  why: 'Loose cable rubs through, and bunches up and jams the pump when it is pulled.',
  caution: ELECTRIC_CAUTION,
  judge({ facts, show }) {
    const { ties } = facts.string;
    const mend = change(
      facts,
      [{ path: 'string.ties', to: heightText(facts, 10, 3) }],
      `Tie every ${heightText(facts, 10, 3)}`,
    );
    const depth = facts.pump.setting - facts.pump.intakeToDischarge - ties;
    if (!meets(TIES_AT_MOST - ties, 'length')) {
      return breaks({
        severity: 'warning',
        measured: ties,
        limit: TIES_AT_MOST,
        margin: TIES_AT_MOST - ties,
        quantity: 'length',
        depth,
        amount: `${gap(TIES_AT_MOST - ties, show)} too far`,
        message: `One tie every ${gap(ties, show)}; ${show.depth(TIES_AT_MOST)} is the most, ${show.depth(feet(10))} is usual.`,
        mend,
      });
    }
    if (!meets(ties - TIES_AT_LEAST, 'length')) {
      return breaks({
        severity: 'note',
        measured: ties,
        limit: TIES_AT_LEAST,
        margin: ties - TIES_AT_LEAST,
        quantity: 'length',
        depth,
        title: 'The cable ties are closer than needed',
        amount: `${gap(ties - TIES_AT_LEAST, show)} too close`,
        message: `One tie every ${gap(ties, show)}; plastic pipe stretches and wants some slack between ties.`,
        mend,
      });
    }
    return holds(
      `every ${gap(ties, show)}`,
      `One tie every ${gap(ties, show)}; ${show.depth(TIES_AT_LEAST)} to ${show.depth(TIES_AT_MOST)} is asked.`,
    );
  },
});

export const cableGuards = defineRule({
  number: 'PR-14',
  part: 'guard',
  broken: 'The cable guards are too far apart',
  holds: 'Guards keep the cable off the casing',
  source: 'W. Va. Code of State Rules 64-46-7.6 asks for guards; spacing: common practice, no source',
  why: 'Guards keep pipe and cable off the casing wall, so that nothing rubs through.',
  judge({ facts, values, show }) {
    const { guards } = facts.string;
    const length = values.dropPipeCutLength ?? 0;
    if (guards === null && meets(GUARDS_AT_MOST - length, 'length')) {
      return holds(
        'short string',
        `On ${gap(length, show)} of pipe the torque arrestor keeps the cable off the casing.`,
      );
    }
    if (guards !== null && meets(GUARDS_AT_MOST - guards, 'length'))
      return holds(`every ${gap(guards, show)}`, `One guard every ${gap(guards, show)} of pipe.`);
    const text = heightText(facts, 40, 12);
    return breaks({
      severity: 'note',
      measured: guards ?? length,
      limit: GUARDS_AT_MOST,
      margin: GUARDS_AT_MOST - (guards ?? length),
      quantity: 'length',
      depth: facts.pump.setting - facts.pump.intakeToDischarge - Math.min(guards ?? GUARDS_AT_MOST, length),
      part: 'cable',
      partKind: 'cable',
      ...(guards === null ? { title: 'No cable guards are planned' } : {}),
      amount: guards === null ? 'none planned' : `${gap(GUARDS_AT_MOST - guards, show)} too far`,
      message:
        guards === null
          ? `${gap(length, show)} of pipe hangs without a guard; one every ${show.depth(GUARDS_AT_MOST)} is the usual least.`
          : `One guard every ${gap(guards, show)}; ${show.depth(GUARDS_AT_MOST)} is the usual most.`,
      mend: change(facts, [{ path: 'string.guards', to: text }], `Add one every ${text}`),
    });
  },
});

export const splice = defineRule({
  number: 'PR-15',
  part: 'splice',
  broken: 'A splice is in the wrong place',
  holds: 'The splice is where it belongs',
  source: 'W. Va. Code of State Rules 64-46-7.7.a asks for watertight splices; place: common practice, no source',
  why: 'Every splice in the well can leak; one, just above the pump, is easy to make and check.',
  caution: ELECTRIC_CAUTION,
  judge({ solved, facts, show }) {
    const { splices } = facts.string;
    const discharge = facts.pump.setting - facts.pump.intakeToDischarge;
    const only = splices[0];
    if (only === undefined)
      return holds('no splice', 'The motor’s own lead reaches the top; there is no splice in the well.');
    const wrong = splices.find((height) => !exceeds(height, 'length') || !meets(SPLICE_BELOW - height, 'length'));
    const arms = splices.length === 1 && wrong === undefined && insideArms(solved);
    if (splices.length === 1 && wrong === undefined && !arms) {
      return holds(
        `${gap(only, show)} above the pump`,
        `One splice, ${gap(only, show)} above the pump and clear of the torque arrestor.`,
      );
    }
    const to = clearHeight(facts.string.torqueArrestor);
    const text = facts.units === 'us' ? `${to} ft` : `${Math.floor(feet(to) * 10) / 10} m`;
    const mend = change(facts, [{ path: 'string.splices', to: [text] }], `One splice, ${text} above the pump`);
    const at = wrong ?? splices[1] ?? only;
    return breaks({
      severity: 'warning',
      measured: at,
      limit: SPLICE_BELOW,
      margin: wrong === undefined ? null : SPLICE_BELOW - at,
      quantity: 'length',
      depth: discharge - at,
      part: spliceAt(splices.indexOf(at)),
      ...(arms
        ? { title: 'The splice sits in the arrestor’s arms' }
        : splices.length > 1
          ? { title: 'There is more than one splice' }
          : {}),
      amount: arms
        ? 'inside the arms'
        : splices.length > 1
          ? `${splices.length} splices`
          : at > 0
            ? `${gap(SPLICE_BELOW - at, show)} too high`
            : 'too low',
      message: arms
        ? 'The arrestor’s arms rub the splice; it belongs above or below them.'
        : splices.length > 1
          ? `${splices.length} splices are planned; one within ${show.depth(SPLICE_BELOW)} above the pump is right, or none.`
          : `The splice is ${gap(at, show)} above the pump; within ${show.depth(SPLICE_BELOW)} is right.`,
      mend,
    });
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

export const cableRules = [splice, torqueArrestor, cableTies, cableGuards];
