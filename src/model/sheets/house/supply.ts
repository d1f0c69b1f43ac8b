/** Peak against what well and pump give for hours: daily use, storage for a low-yield well. */
import { atSwitch } from '../../explain/atSwitch.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { PERSON_A_DAY } from '../../figures/dailyUse.ts';
import { provenYield } from '../../figures/provenYield.ts';
import { noDemand, noYield } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { figure, solvedAll } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { dailyUse, irrigation, PEOPLE_MISSING, stockUse } from './use.ts';
import { either } from '../../units.ts';

const HOUR = 3600;
const DAY = 86_400;
const NO_DUTY: Missing = { path: null, words: 'the point at which the pump works in this well' };

export function supplyFigures(context: Context): SheetFigure[] {
  const { facts, values } = context;
  const people = context.solution.plan.house?.people;
  const use = dailyUse(context);
  const stock = stockUse(context).reduce((sum, each) => sum + (each.use ?? 0), 0);
  const wellYield = provenYield(facts);
  const demand = facts.house.demand;
  const water = irrigation(context);
  const hours = stock > 0 ? 2 : 1;
  const mean = known([use], (volume) => volume / DAY);
  const sustained = known([mean, wellYield], (flow, gives) => (gives > 0 ? flow / gives : null));
  const stored = known([values.usableStorage], (volume) => volume + (values.tankDrawdown ?? 0));
  const needed = known([demand, wellYield], (peak, gives) => Math.max((peak + (water ?? 0) - gives) * hours * HOUR, 0));
  const extra = known([needed, stored], (asks, has) => Math.max(asks - has, 0));
  const refill = known([values.usableStorage, wellYield], (volume, gives) => (gives > 0 ? volume / gives : null));
  const peakShare = known([demand, values.operatingFlowAtCutIn], (asks, gives) => (gives > 0 ? asks / gives : null));
  const noUse = use === null ? PEOPLE_MISSING : null;
  return [
    figure(
      context,
      { key: 'dailyUse', title: 'Water used a day', symbol: 'V_d', value: use, as: 'readVolume', missing: [noUse] },
      () => ({
        terms: [
          term('N', 'people', people ?? 0, 'number'),
          term(
            'V_1',
            `a person a day; ${either(context.units, '50 to 100 gal', '190 to 380 L')} is usual`,
            PERSON_A_DAY.usual,
            'readVolume',
          ),
          term('V_s', 'stock a day, at the printed most', stock, 'readVolume'),
        ],
        steps: [step('V_d', 'N × V_1 + V_s', use, 'readVolume')],
        range: within('people and stock only; watering comes on top', null),
        source: 'Missouri Extension G1801, Table 1; stock: extension sheets on water for livestock',
      }),
    ),
    figure(
      context,
      {
        key: 'meanShareOfYield',
        title: 'Mean use as a share of what the well yields',
        symbol: 'r',
        value: sustained,
        as: 'percent',
        missing: [noUse, noYield(context)],
      },
      () => ({
        terms: [
          term('V_d', 'water used a day', use, 'volume'),
          term('t_d', 'one day', DAY, 'seconds'),
          term('Y', 'yield of the well', wellYield, 'flow'),
        ],
        steps: [step('r', 'V_d / (t_d × Y)', sustained, 'percent')],
        range: within(
          'above 100 % the well cannot keep up however much is stored',
          sustained === null ? null : sustained <= 1,
        ),
        source: 'arithmetic',
      }),
    ),
    figure(
      context,
      {
        key: 'peakShareOfPump',
        title: `Peak flow needed, as a share of the pump’s flow ${atSwitch(context, 'cut-in')}`,
        symbol: 'r_p',
        value: peakShare,
        as: 'percent',
        missing: [noDemand(context), NO_DUTY],
      },
      () => ({
        terms: [
          term('D', 'peak flow needed', demand, 'readFlow'),
          term('Q', `flow of the pump ${atSwitch(context, 'cut-in')}`, values.operatingFlowAtCutIn, 'readFlow'),
        ],
        steps: [step('r_p', 'D / Q', peakShare, 'percent')],
        range: within('above 100 % the pressure sags while the peak lasts', peakShare === null ? null : peakShare <= 1),
        source: 'arithmetic',
      }),
    ),
    ...solvedAll(context, 'usableStorage', 'timeToBreakSuction'),
    figure(
      context,
      {
        key: 'storageNeeded',
        title: `Water to have in store for a peak of ${hours === 1 ? 'one hour' : 'two hours'}`,
        symbol: 'V_n',
        value: needed,
        as: 'volume',
        missing: [noDemand(context), noYield(context)],
      },
      () => ({
        terms: [
          term('D', 'peak flow needed', demand, 'flow'),
          term('Q_w', 'watering at the same time', water ?? 0, 'flow'),
          term('Y', 'yield of the well', wellYield, 'flow'),
          term('t', 'length of the peak', hours * HOUR, 'seconds'),
          ...(needed === 0 ? [term('V_0', 'the well keeps up: nothing', 0, 'volume')] : []),
        ],
        steps: [step('V_n', needed === 0 ? 'V_0' : '(D + Q_w − Y) × t', needed, 'volume')],
        formula: 'V_n = (D + Q_w − Y) × t, nothing while the well keeps up',
        range: within('one hour of peak for a home, two for a farmstead', null),
        source: 'arithmetic; length of the peak: Missouri Extension G1801',
      }),
    ),
    figure(
      context,
      {
        key: 'storageMissing',
        title: 'Storage still missing beside bore and tank',
        symbol: 'V_m',
        value: extra,
        as: 'volume',
        missing: [
          noDemand(context),
          noYield(context),
          values.usableStorage === null ? { path: 'water.staticLevel', words: 'the water level at rest' } : null,
        ],
      },
      () => ({
        terms: [
          term('V_n', 'water to have in store', needed, 'volume'),
          term('V_b', 'water to be had from the bore', values.usableStorage, 'volume'),
          term('V_t', 'water to be had from the pressure tank', values.tankDrawdown ?? 0, 'volume'),
          ...(extra === 0 ? [term('V_0', 'bore and tank are enough: nothing', 0, 'volume')] : []),
        ],
        steps: [step('V_m', extra === 0 ? 'V_0' : 'V_n − V_b − V_t', extra, 'volume')],
        formula: 'V_m = V_n − V_b − V_t, nothing where bore and tank are enough',
        range: within('full at the start of the peak', null),
        source: 'arithmetic',
        notes: ['Dry-run protection keeps the pump from drawing air while the bore empties.'],
      }),
    ),
    figure(
      context,
      {
        key: 'refillTime',
        title: 'Time the bore takes to fill again',
        symbol: 't_r',
        value: refill,
        as: 'seconds',
        text: context.show.time,
        missing: [
          noYield(context),
          values.usableStorage === null ? { path: 'water.staticLevel', words: 'the water level at rest' } : null,
        ],
      },
      () => ({
        terms: [
          term('V_b', 'water that was taken from the bore', values.usableStorage, 'volume'),
          term('Y', 'yield of the well', wellYield, 'flow'),
        ],
        steps: [step('t_r', 'V_b / Y', refill, 'seconds')],
        range: within('longer in truth: the yield falls while the level rises', null),
        source: 'arithmetic',
      }),
    ),
  ];
}
