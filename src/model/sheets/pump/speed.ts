/** The same pump at another frequency: the affinity laws, and the point at which it then works. */
import type { Context } from '../../explain/context.ts';
import type { SheetTable } from '../sheet.ts';
import { known } from '../known.ts';
import { cell, columns, row } from '../table.ts';
import { bestFlow, curveAtSpeed, curveOf, dutyOf } from './pumpAtWork.ts';

const RATED_HERTZ = 60;
const HERTZ = [60, 55, 50, 45, 40, 30] as const;

export function speedTable(context: Context): SheetTable {
  const { facts, show } = context;
  const curve = curveOf(context);
  const pressure = facts.house.kind === 'open tank' ? 0 : facts.house.cutOut;
  return {
    key: 'speed',
    title: 'The same pump at another frequency',
    columns: columns(
      ['frequency', 'Frequency'],
      ['shutOff', 'Head at no flow'],
      ['rated', 'Rated flow'],
      ['flow', 'Flow at cut-out'],
      ['power', 'Rated power'],
    ),
    rows: HERTZ.map((hertz) => {
      const ratio = hertz / RATED_HERTZ;
      const turned = curve === null ? null : curveAtSpeed(curve, ratio);
      const duty = dutyOf(context, turned, pressure);
      return row(
        hertz === RATED_HERTZ ? 'this plan' : duty?.flow === 0 ? 'does not do' : null,
        { value: hertz, text: `${hertz} Hz` },
        cell(turned?.shutOffHead ?? null, show.head),
        cell(
          known([bestFlow(context)], (flow) => flow * ratio),
          show.flow,
        ),
        cell(duty?.flow ?? null, show.flow),
        cell(
          known([facts.pump.power], (power) => power * ratio ** 3),
          show.power,
        ),
      );
    }),
    source: 'affinity laws Q ~ N, H ~ N²: EPANET 2.2 User Manual, ch. 3; P ~ N³ from memory',
    note: 'The curve of the plan is taken as that of 60 Hz. The flow at cut-out is found again at each speed: the water still has to be lifted, so it falls faster than the speed.',
  };
}
