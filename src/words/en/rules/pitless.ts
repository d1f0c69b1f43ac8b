import type { pitlessRules } from '../../../model/rules/pitless.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { DIGGING_CAUTION } from '../cautions.ts';
import { gap, toSpare } from '../phrases.ts';

export const short: ShortWords<typeof pitlessRules> = {
  'PR-19': {
    broken: 'The pitless adapter is in the frost zone',
    holds: 'The pitless adapter is below the frost',
    says: {
      belowFrost: ({ measured }, show) => ({ amount: toSpare(measured, show) }),
      inFrost: ({ measured }, show) => ({ amount: `${gap(measured, show)} too high` }),
      closeToFrost: ({ margin }, show) => ({
        title: 'The pitless adapter is close to the frost',
        amount: `${gap(margin, show)} short`,
      }),
    },
    limits: { belowFrost: ({ asked }, show) => `${gap(asked, show)} below frost` },
  },
  'PR-20': {
    broken: 'The pitless adapter is under water',
    holds: 'The pitless adapter is above the water',
    says: {
      aboveWater: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      underWater: ({ margin }, show) => ({ amount: `${gap(margin, show)} too deep` }),
      madeForWater: ({ margin }, show) => ({ amount: `${gap(margin, show)} too deep` }),
    },
    limits: { aboveStaticLevel: () => 'above the static level' },
  },
  'PR-21': {
    broken: 'The pump does not pass the pitless adapter',
    holds: 'The pump passes the pitless adapter',
    says: {
      passes: ({ measured }, show) => ({ amount: `${show.bore(measured)} free` }),
      hardlyPasses: ({ margin }, show) => ({
        title: 'The pump hardly passes the pitless adapter',
        amount: `${show.bore(-margin)} too tight`,
      }),
      doesNotPass: ({ margin }, show) => ({ amount: `${show.bore(-margin)} too tight` }),
    },
    limits: {},
  },
};

export const long: LongWords<typeof pitlessRules> = {
  'PR-19': {
    source: '77 Ill. Adm. Code 920.40(f); N.H. Admin. Rules We 702.05(k); margin: International Plumbing Code 305.4.1',
    why: 'Ice closes the line, cracks fittings and the adapter, and the pump runs against ice.',
    caution: DIGGING_CAUTION,
    messages: {
      belowFrost: ({ outlet, measured, estimated }, show) =>
        `The outlet’s top is at ${gap(outlet, show)}: meets ${estimated ? 'the estimate' : 'the depth you entered'}, with ${gap(measured, show)} to spare.`,
      inFrost: ({ outlet, frost, asked }, show) =>
        `The outlet’s top is at ${gap(outlet, show)}; frost reaches ${gap(frost, show)}, and ${gap(asked, show)} more is asked.`,
      closeToFrost: ({ measured, asked }, show) =>
        `The outlet’s top is ${gap(measured, show)} below the frost; ${gap(asked, show)} is asked.`,
    },
    fixes: { lowerOrHeat: () => 'Lower the adapter and the line, or insulate and heat the line.' },
  },
  'PR-20': {
    source: 'Wash. Admin. Code 173-160-291(5); Minn. Rules 4725.4850',
    why: 'A hole under water cannot be sealed dry, and nobody sees it leak.',
    caution: DIGGING_CAUTION,
    messages: {
      aboveWater: outletAndWater,
      underWater: outletAndWater,
      madeForWater: () => 'This adapter is made for use under water; the local code still decides.',
    },
    fixes: {
      askCode: () => 'Ask the local code whether this adapter may stand under water.',
      otherAdapterOrTop: () => 'Use an adapter made for submerged use, or ask the driller for another top.',
    },
  },
  'PR-21': {
    source: 'Wis. Adm. Code NR 812.31(2)(b); clearances: common practice, no source',
    why: 'The pump must come up past the adapter every time it is pulled.',
    messages: { passes: besideAdapter, hardlyPasses: besideAdapter, doesNotPass: besideAdapter },
    fixes: {
      otherAdapterOrPump: () => 'Choose an adapter that stands less far into the casing, or a slimmer pump.',
    },
  },
};

function outletAndWater({ outlet, water }: { outlet: Metres; water: Metres }, show: Show): string {
  const stands = water < 0 ? `${gap(water, show)} above ground` : show.depth(water);
  return `The outlet’s top is at ${gap(outlet, show)}; water stands at ${stands} at its highest.`;
}

function besideAdapter({ free, widest }: { free: Metres; widest: Metres }, show: Show): string {
  return `Beside the adapter ${show.bore(free)} is free; the pump is ${show.bore(widest)} wide over its guard.`;
}
