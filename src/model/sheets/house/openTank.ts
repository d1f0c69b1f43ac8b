/** A tank without pressure, and a pump whose speed follows the demand. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand, noPumpCurve, noTank } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { systemHead } from '../../figures/curves.ts';
import type { Ratio } from '../../si.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import { curveOf, fillingFlow } from '../pump/pumpAtWork.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { dailyUse, PEOPLE_MISSING } from './use.ts';
import { either } from '../../units.ts';

const NO_SYSTEM: Missing = { path: null, words: 'water levels, line and rise: what the pump has to lift against' };

export function openTankFigures(context: Context): SheetFigure[] {
  if (context.facts.house.kind !== 'open tank') return [];
  const { tank } = context.facts.house;
  const flow = fillingFlow(context);
  const use = dailyUse(context);
  const fill = known([tank, flow], (volume, q) => (q > 0 ? volume / q : null));
  const days = known([tank, use], (volume, day) => volume / day);
  return [
    figure(
      context,
      {
        key: 'fillTime',
        title: 'Time to fill the open tank',
        symbol: 't',
        value: fill,
        as: 'seconds',
        text: context.show.time,
        missing: [noTank(context), NO_SYSTEM],
      },
      () => ({
        terms: [
          term('V', 'volume of the tank', tank, 'volume'),
          term('Q', 'flow of the pump without pressure', flow, 'flow'),
        ],
        steps: [step('t', 'V / Q', fill, 'seconds')],
        range: within('nobody draws meanwhile, and the well keeps up', null),
        source: 'arithmetic',
      }),
    ),
    figure(
      context,
      {
        key: 'daysInTank',
        title: 'Days that a full tank lasts',
        symbol: 'n',
        value: days,
        as: 'number',
        text: (n) => `${n.toFixed(1)} days`,
        missing: [noTank(context), use === null ? PEOPLE_MISSING : null],
      },
      () => ({
        terms: [term('V', 'volume of the tank', tank, 'volume'), term('V_d', 'water used a day', use, 'volume')],
        steps: [step('n', 'V / V_d', days, 'number')],
        range: within('people and stock, without watering', null),
        source: 'arithmetic',
        notes: [
          `The tank’s outlet wants a pump of its own, or a tank high above the house: ${either(context.units, '2.31 ft of height a psi', '10 m of height a bar')}.`,
        ],
      }),
    ),
  ];
}

export function speedFigures(context: Context): SheetFigure[] {
  const { facts, system } = context;
  if (facts.house.control !== 'variable speed') return [];
  const curve = curveOf(context);
  const asked = systemHead(facts, system, facts.house.kind === 'open tank' ? 0 : facts.house.cutOut);
  const { demand } = facts.house;
  const atDemand = known([demand], (flow) =>
    curve === null || asked === null ? null : speedFor(asked(flow), (ratio) => ratio ** 2 * curve.headAt(flow / ratio)),
  );
  // Downhill into an open tank water comes at any speed.
  const lifted = asked === null ? null : Math.max(asked(0), 0);
  const still = curve === null || lifted === null ? null : Math.sqrt(lifted / curve.shutOffHead);
  const inReach = still !== null && still <= 1 ? still : null;
  const missing = [
    noPumpCurve(context),
    asked === null ? NO_SYSTEM : null,
    noDemand(context),
    { path: null, words: 'a pump that reaches this pressure at full speed' },
  ];
  return [
    figure(
      context,
      {
        key: 'speedAtDemand',
        title: 'Speed that holds the cut-out pressure at the peak flow',
        symbol: 'r',
        value: atDemand,
        as: 'percent',
        missing,
      },
      () => ({
        terms: [
          term(
            'H',
            'head that well and pipes ask for at the peak flow',
            demand === null ? null : (asked?.(demand) ?? null),
            'length',
          ),
          term('r', 'share of the full speed', atDemand, 'percent'),
        ],
        steps: [step('r', 'r', atDemand, 'percent')],
        formula: 'H = r² × H_p(Q / r), with H_p the pump’s head at full speed',
        range: within('at low speed the motor’s cooling and its thrust bearing set a least speed: see its sheet', null),
        source: 'affinity laws: EPANET 2.2 User Manual, ch. 3; root by halving',
      }),
    ),
    figure(
      context,
      {
        key: 'leastSpeed',
        title: 'Speed below which no water comes',
        symbol: 'r_0',
        value: inReach,
        as: 'percent',
        missing,
      },
      () => ({
        terms: [
          term('H_s', 'head at no flow: lift, rise and pressure', lifted, 'length'),
          term('H_0', 'head of the pump at no flow, full speed', curve?.shutOffHead ?? null, 'length'),
        ],
        steps: [step('r_0', '√(H_s / H_0)', inReach, 'percent')],
        range: within('just above it the pump turns without cooling itself: it must stop there', null),
        source: 'affinity laws: EPANET 2.2 User Manual, ch. 3',
      }),
    ),
  ];
}

/** Share of the full speed at which the pump gives a head; null when full speed is not enough. */
function speedFor(head: number, headAt: (ratio: Ratio) => number): Ratio | null {
  if (!(headAt(1) >= head)) return null;
  let [low, high] = [0.01, 1];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if (headAt(middle) < head) low = middle;
    else high = middle;
  }
  return high;
}
