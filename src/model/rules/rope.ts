/** The safety rope, where one hangs in the well. */
import { KNOT_EFFICIENCY } from '../formulas/rope.ts';
import { meets } from './grace.ts';
import { DROP_PIPE } from './restsOn.ts';
import { breaks, defineRule, holds } from './rule.ts';

/** Knotted strength over the load that comes on the rope when the top joint fails. */
export const ROPE_FACTOR = 1.5;

export const rope = defineRule({
  number: 'PR-16',
  part: 'rope',
  restsOn: [...DROP_PIPE, 'pump.mass', 'pump.setting', 'pump.wires', 'rope.tied', 'top.depth', 'top.kind', 'wire.size'],
  asks: { times: ROPE_FACTOR },
  judge({ facts, values }) {
    const line = facts.rope;
    if (line === null) return holds('noRope', {});
    const depth = -facts.well.casingHeight;
    // Under a seal it is an eye that takes it: a hook would pierce the casing.
    const underSeal = facts.top.kind === 'seal';
    if (line.tied === 'through cap') return breaks('throughCap', 'danger', { underSeal }, { depth });
    if (line.tied === 'loose') return breaks('loose', 'warning', { underSeal }, { depth });
    if (line.tied !== 'casing hook') return breaks('onCap', 'warning', { underSeal }, { depth });
    const load = values.hangLoadDry;
    if (line.breakingStrength === null || load === null) return holds('tiedInside', { underSeal });
    const knotted = line.breakingStrength * KNOT_EFFICIENCY;
    const limit = load * ROPE_FACTOR;
    const margin = knotted - limit;
    if (meets(margin, 'force')) return holds('strong', { knotted, margin });
    return breaks(
      'weak',
      'warning',
      { knotted, margin, load, factor: ROPE_FACTOR },
      { depth, measured: knotted, limit, margin, quantity: 'force' },
    );
  },
});

export const ropeRules = [rope] as const;
