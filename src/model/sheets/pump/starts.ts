/** How long the pump runs, and how often it starts. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noTank } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { mostStartsPerSecond } from '../../formulas/tank.ts';
import { dailyUse, PEOPLE_MISSING } from '../house/use.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { fillingFlow } from './pumpAtWork.ts';
import { horsepower, either } from '../../units.ts';

const HOUR = 3600;
const startsSource = ({ units }: Context): string =>
  `time to empty and time to fill; limits as pump makers quote them: 300 starts a day, 15 an hour to ${either(units, '3/4 hp', '0.55 kW')}, 7.5 above`;

export function startFigures(context: Context): SheetFigure[] {
  const { facts, values, show } = context;
  const flow = fillingFlow(context);
  const given = values.tankDrawdown;
  const open: Missing | null =
    facts.house.kind === 'open tank'
      ? { path: 'house.kind', words: 'a pressure tank: an open one is filled by a float' }
      : null;
  const missing = [open, noTank(context), { path: null, words: 'the flow of the pump between cut-in and cut-out' }];
  const run = known([given, flow], (volume, q) => (q > 0 ? volume / q : null));
  const worst = known([given, flow], (volume, q) => mostStartsPerSecond(q, volume));
  const use = dailyUse(context);
  const daily = known([use, given], (volume, share) => volume / share);
  const { power } = facts.pump;
  const limit = power !== null && power > horsepower(0.75) * 1.02 ? 7.5 : 15;
  return [
    figure(
      context,
      {
        key: 'runTime',
        title: 'Run at each start, no tap open',
        symbol: 't',
        value: run,
        as: 'minutes',
        text: show.time,
        missing,
      },
      () => ({
        terms: [
          term('V', 'water that the tank takes between cut-in and cut-out', given, 'volume'),
          term('Q', 'mean flow between cut-in and cut-out', flow, 'flow'),
        ],
        steps: [step('t', 'V / Q', run, 'seconds')],
        range: within(
          `one minute at least, two above about ${either(context.units, '1 hp', '0.75 kW')}`,
          run === null ? null : run >= (power !== null && power > horsepower(1) * 1.02 ? 120 : 60),
        ),
        source: 'continuity; least run: common practice, no source',
      }),
    ),
    figure(
      context,
      {
        key: 'mostStartsAnHour',
        title: 'Most starts an hour, at the worst steady draw',
        symbol: 'n',
        value: worst,
        as: 'number',
        text: (rate) => `${(rate * HOUR).toFixed(1)} an hour`,
        missing,
      },
      () => ({
        terms: [
          term('Q', 'mean flow of the pump', flow, 'flow'),
          term('V', 'water from the tank between cut-out and cut-in', given, 'volume'),
          term('t_h', 'one hour', HOUR, 'seconds'),
        ],
        steps: [
          step(
            'n',
            't_h × Q / (4 × V)',
            known([worst], (rate) => rate * HOUR),
            'number',
          ),
        ],
        range: within(
          `${limit} an hour is the usual most for this motor`,
          worst === null ? null : worst * HOUR <= limit + 1e-9,
        ),
        source: startsSource(context),
        notes: ['The worst draw is half of the pump’s flow.'],
      }),
    ),
    figure(
      context,
      {
        key: 'startsADay',
        title: 'Most starts a day, all water drawn a little at a time',
        symbol: 'n_d',
        value: daily,
        as: 'number',
        text: (count) => `up to ${Math.ceil(count)}`,
        missing: [open, noTank(context), use === null ? PEOPLE_MISSING : null],
      },
      () => ({
        terms: [
          term('V_d', 'water used a day', use, 'volume'),
          term('V', 'water from the tank between cut-out and cut-in', given, 'volume'),
        ],
        steps: [step('n_d', 'V_d / V', daily, 'number')],
        range: within('300 a day is the usual most', daily === null ? null : daily <= 300),
        source: startsSource(context),
      }),
    ),
  ];
}
