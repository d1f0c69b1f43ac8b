/** Whether the pump works where it was made to work. */
import { atSwitch } from '../../explain/atSwitch.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpCurve } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { unended } from '../../formulas/genericBand.ts';
import { curveOf, bestFlow, dutyOf } from './pumpAtWork.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';

/** Beyond it the impellers are lifted: upthrust. Common practice, no source. */
export const UPTHRUST_SHARE = 1.3;
const UPTHRUST = 'common practice, no source: upthrust from 1.3 times the flow of best efficiency';

export function rangeFigures(context: Context): SheetFigure[] {
  const { values, facts } = context;
  const best = bestFlow(context);
  const last = lastPoint(context);
  const limit = best === null ? last : best * UPTHRUST_SHARE;
  const high = values.operatingFlowAtCutIn;
  const curve = curveOf(context);
  const open = dutyOf(context, curve === null ? null : unended(curve), 0);
  const share = (flow: number | null) => known([flow, limit], (q, most) => q / most);
  const what = best === null ? 'last point of the curve' : '1.3 times the rated flow';
  const account = (flow: number | null, meaning: string, value: number | null) => () => ({
    terms: [term('Q', meaning, flow, 'readFlow'), term('Q_u', what, limit, 'readFlow')],
    steps: [step('r', 'Q / Q_u', value, 'percent')],
    range: within('above 100 % the impellers are lifted and wear', value === null ? null : value <= 1),
    source: best === null ? 'the points of the plan; beyond the last one the maker promises nothing' : UPTHRUST,
    notes: ['Start with the valve part shut, so that the first filling does not run the pump off its curve.'],
  });
  const atCutIn = share(high);
  const atOpen = share(open?.flow ?? null);
  const missing = [noPumpCurve(context), { path: null, words: 'the point at which the pump works in this well' }];
  return [
    figure(
      context,
      {
        key: 'upthrustAtCutIn',
        title: `Flow ${atSwitch(context, 'cut-in')} against ${what}`,
        symbol: 'r',
        value: atCutIn,
        as: 'percent',
        missing,
      },
      account(high, `flow ${atSwitch(context, 'cut-in')}`, atCutIn),
    ),
    figure(
      context,
      {
        key: 'upthrustOpen',
        title: `Flow with ${facts.house.kind === 'open tank' ? 'an open tank' : 'no pressure at the house'} against ${what}`,
        symbol: 'r',
        value: atOpen,
        as: 'percent',
        missing,
      },
      account(open?.flow ?? null, 'flow with no pressure at the house', atOpen),
    ),
  ];
}

function lastPoint({ facts }: Context): number | null {
  const { curve } = facts.pump;
  if (curve.kind === 'generic') return null;
  return curve.points.reduce((most, { flow }) => Math.max(most, flow), 0) || null;
}
