/** Buttons that several rules share. */
import type { SharedFix } from '../../model/rules/fix.ts';
import type { Metres } from '../../model/si.ts';
import type { BandSetting, EndName } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { sayEnd } from '../sayEnd.ts';
import { ends } from './ends.ts';
import { shortRules } from './shortRules.ts';

/** Of a variant, also where it stands as one of several that are said with the same numbers. */
type NumbersOf<V, F = SharedFix> = F extends { readonly variant: infer W; readonly numbers: infer Said }
  ? V extends W
    ? Said
    : never
  : never;

export const fixes: {
  readonly [V in SharedFix['variant']]: (numbers: NumbersOf<V>, show: Show) => string;
} = {
  lowerTo: ({ to, setting, probe }, show) => `Lower to ${setTo(to, setting, show)}${withProbe(probe, show)}`,
  raiseTo: ({ to, setting, probe }, show) => `Raise to ${setTo(to, setting, show)}${withProbe(probe, show)}`,
  raiseWithProbe: ({ to, probe }, show) => `Raise to ${show.length(to)}, and hang the probe at ${show.length(probe)}`,
  protectByProbe: ({ depth }, show) => `Add dry-run protection: a probe at ${show.depth(depth)}`,
  callContractorFirst: () => 'First the flowing water: a licensed contractor brings it under control.',
  pumpForThisLift: () => 'Choose a pump for this lift: one that lifts the water from where it hangs.',
  protectByCurrent: () => 'Add dry-run protection by current',
  noDepthMeetsBoth: ({ from, to }, show) => `No depth meets both: ${said(from, show)}, and ${said(to, show)}.`,
};

/** Adapters are set in inches or centimetres. */
function setTo(depth: Metres, setting: BandSetting, show: Show): string {
  return setting === 'top.depth' ? show.small(depth) : show.length(depth);
}

function withProbe(probe: Metres | undefined, show: Show): string {
  return probe === undefined ? '' : `, and hang the probe at ${show.length(probe)}`;
}

function said(end: EndName, show: Show): string {
  return sayEnd(end, { rules: shortRules, ends }, show);
}
