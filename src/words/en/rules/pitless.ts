import type { Facts } from '../../../model/facts.ts';
import type { pitlessRules } from '../../../model/rules/pitless.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { DIGGING_CAUTION } from '../cautions.ts';
import { gap, toSpare } from '../phrases.ts';

export const long: LongWords<typeof pitlessRules> = {
  'PR-19': {
    holds: 'The pitless adapter is below the frost',
    held: {
      noFrost: () => ({ title: 'No frost reaches the pitless adapter', amount: 'no frost' }),
      belowFrost: ({ measured }, show) => ({ amount: toSpare(measured, show) }),
      belowEstimate: ({ measured }, show) => ({
        title: 'The pitless adapter is below any frost estimated here',
        amount: toSpare(measured, show),
      }),
    },
    asks: ({ margin }, show) =>
      `The adapter’s outlet is below the frost, by ${show.small(margin[show.units])} where you give no margin of your own.`,
    source: '77 Ill. Adm. Code 920.40(f); N.H. Admin. Rules We 702.05(k); margin: International Plumbing Code 305.4.1',
    why: 'Ice closes the line, cracks fittings and the adapter, and the pump runs against ice.',
    caution: DIGGING_CAUTION,
    messages: {
      noFrost: () => 'No frost is reported at this place.',
      belowFrost: ({ outlet, measured, from }, show) =>
        `The outlet’s top is at ${gap(outlet, show)}: meets ${saidBy(from)}, with ${gap(measured, show)} to spare.`,
      belowEstimate: ({ outlet, frost }, show) =>
        `The outlet’s top is at ${gap(outlet, show)}; frost here is estimated to reach ${gap(frost, show)} at the most.`,
      dependsOnFrost: ({ outlet, turn, deepest }, show) =>
        `The outlet’s top, at ${gap(outlet, show)}, is deep enough for frost to ${gap(turn, show)}; estimates allow ${gap(deepest, show)} here.`,
      inFrost: ({ outlet, frost, asked }, show) =>
        `The outlet’s top is at ${gap(outlet, show)}; frost reaches ${gap(frost, show)}, and ${gap(asked, show)} more is asked.`,
      closeToFrost: ({ measured, asked }, show) =>
        `The outlet’s top is ${gap(measured, show)} below the frost; ${gap(asked, show)} is asked.`,
    },
    fixes: {
      lowerOrHeat: () => 'Lower the adapter and the line, or insulate and heat the line.',
      askFrost: () => 'Ask the local code office how deep frost is held to reach here, and enter it.',
    },
  },
  'PR-20': {
    holds: 'The pitless adapter is above the water',
    held: {
      aboveWater: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: () => 'The adapter is above the water at rest, at the highest that it is known to stand.',
    source: 'Wash. Admin. Code 173-160-291(5); Minn. Rules 4725.4850',
    why: 'A hole under water cannot be sealed dry, and nobody sees it leak.',
    caution: DIGGING_CAUTION,
    messages: {
      aboveWater: (numbers, show) =>
        numbers.highest
          ? outletAndWater(numbers, show)
          : `Outlet at ${gap(numbers.outlet, show)}; water at ${show.depth(numbers.water)} today; how high it rises in a wet season is not known.`,
      underWater: outletAndWater,
      madeForWater: () => 'This adapter is made for use under water; the local code still decides.',
    },
    fixes: {
      askCode: () => 'Ask the local code whether this adapter may stand under water.',
      otherAdapterOrTop: () => 'Use an adapter made for submerged use, or ask the driller for another top.',
    },
  },
  'PR-21': {
    holds: 'The pump passes the pitless adapter',
    held: {
      passes: ({ measured }, show) => ({ amount: `${show.bore(measured)} free` }),
    },
    asks: ({ least }, show) =>
      `The pump passes the inner end of the adapter with ${show.bore(least)} or more to spare.`,
    source: 'Wis. Adm. Code NR 812.31(2)(b); clearances: common practice, no source',
    why: 'The pump must come up past the adapter every time it is pulled.',
    messages: {
      passes: besideAdapter,
      hardlyPasses: besideAdapter,
      doesNotPass: besideAdapter,
      dependsOnReach: ({ turn, most }, show) =>
        `The pump passes an adapter that reaches up to ${show.bore(turn)} into the casing; some reach ${show.bore(most)}.`,
    },
    fixes: {
      measureReach: () =>
        'Measure how far the adapter stands into the casing, or ask its maker, before the pump goes in.',
      slimmerPump: () => 'Choose a slimmer pump, or another top: no usual adapter leaves this one room.',
      slimmerSleeve: () => 'Choose a slimmer flow sleeve, or another top: no usual adapter leaves this one room.',
      otherAdapterOrSleeve: () => 'Choose an adapter that stands less far into the casing, or a slimmer flow sleeve.',
      otherAdapterOrPump: () => 'Choose an adapter that stands less far into the casing, or a slimmer pump.',
    },
  },
};

/** By whom the frost depth was said. */
function saidBy(from: Facts['site']['frostFrom']): string {
  switch (from) {
    case 'local code':
      return 'the local code’s depth';
    case 'adviser':
      return 'the depth an adviser named';
    case 'estimate':
      return 'an estimated depth';
    case null:
      return 'the depth you entered';
  }
}

interface OutletAndWater {
  readonly outlet: Metres;
  readonly water: Metres;
  /** False where only the level at rest is known, and not how high it rises. */
  readonly highest: boolean;
}

function outletAndWater({ outlet, water, highest }: OutletAndWater, show: Show): string {
  const stands = water < 0 ? `${gap(water, show)} above ground` : show.depth(water);
  return `The outlet’s top is at ${gap(outlet, show)}; water stands at ${stands} ${highest ? 'at its highest' : 'at rest'}.`;
}

interface BesideAdapter {
  readonly free: Metres;
  readonly widest: Metres;
  /** That is the flow sleeve, and not the pump over its cable guard. */
  readonly sleeve: boolean;
  readonly reach: Metres;
  /** Whether anybody said how far it reaches in. */
  readonly said: boolean;
  /** No usual adapter reaches in less. */
  readonly shortest: boolean;
}

function besideAdapter({ free, widest, sleeve, reach, said, shortest }: BesideAdapter, show: Show): string {
  const beside = said
    ? `Beside the adapter ${show.bore(free)} is free`
    : `${shortest ? 'Even an' : 'An'} adapter of ${show.bore(reach)} reach leaves ${show.bore(free)} free`;
  return `${beside}; the ${sleeve ? 'flow sleeve' : 'pump'} is ${show.bore(widest)} wide${sleeve ? '' : ' over its guard'}.`;
}
