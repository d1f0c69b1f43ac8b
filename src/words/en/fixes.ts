/** Buttons that several rules share. */
import type { SharedFix } from '../../model/rules/fix.ts';
import type { EndName } from '../../model/solution.ts';
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
  lowerTo: ({ to }) => `Lower to ${to}`,
  raiseTo: ({ to }) => `Raise to ${to}`,
  noDepthMeetsBoth: ({ from, to }, show) => `No depth meets both: ${said(from, show)}, and ${said(to, show)}.`,
};

function said(end: EndName, show: Show): string {
  return sayEnd(end, { rules: shortRules, ends }, show);
}
