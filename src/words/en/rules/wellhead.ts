import { feet } from '../../../model/units.ts';
import type { SourceOfDirt, wellheadRules } from '../../../model/rules/wellhead.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { PIT_CAUTION } from '../cautions.ts';
import { gap, toSpare } from '../phrases.ts';
import { SOURCES } from '../brief/wellhead.ts';

/** "septic tank and building". */
function listed(sources: readonly SourceOfDirt[]): string {
  return sources.map((source) => SOURCES[source]).join(' and ');
}

export const long: LongWords<typeof wellheadRules> = {
  'PR-23': {
    holds: 'The casing stands high enough',
    held: {
      highEnough: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ usual }, show) =>
      `The casing stands as high above the ground as your code asks, ${show.small(usual[show.units])} where you give no figure.`,
    source: (show) =>
      `${show.small(feet(1))} in most state codes (N.Y. App. 5-B, Wis. NR 812, 12 Va. Admin. Code 5-630), ${show.small(feet(0.5))} to ${show.small(feet(1.5))} in others; the plan names the local figure`,
    why: 'Rain and melt water must not run into the well.',
    messages: { highEnough: casingHeight, tooLow: casingHeight },
    fixes: { lengthenCasing: () => 'Have the casing lengthened by a licensed contractor.' },
  },
  'PR-24': {
    holds: 'The casing top is above the flood',
    held: {
      aboveFlood: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ above }, show) => `The casing’s top is ${show.depth(above)} or more above the highest flood.`,
    source: (show) =>
      `Wash. Admin. Code 173-160-291; Wis. Adm. Code NR 812.28; 77 Ill. Adm. Code 920: ${show.depth(feet(2))} above the flood`,
    why: 'Flood water that enters through the cap carries sewage and mud into the well.',
    messages: { aboveFlood: casingAndFlood, closeToFlood: casingAndFlood, underFlood: casingAndFlood },
    fixes: {
      lengthenCasingOrRaiseGround: () => 'Have the casing lengthened, or the ground raised, by a licensed contractor.',
    },
  },
  'PR-26': {
    holds: 'The well top is not in a pit',
    held: {
      inTheOpen: () => ({ amount: 'no pit' }),
    },
    asks: () => 'The top of the well is not down a pit.',
    source: '77 Ill. Adm. Code 925.40(b); Wis. Adm. Code NR 812.29; Wash. Admin. Code 173-160-291',
    why: 'A pit floods, holds bad air, and lets surface water into the well.',
    caution: PIT_CAUTION,
    messages: {
      inTheOpen: () => 'The well top stands in the open, not in a pit.',
      inPit: () => 'The well top is in a pit; most codes ask for it above the ground.',
    },
    fixes: { bringAboveGround: () => 'Have the casing brought above the ground by a licensed contractor.' },
  },
  'PR-40': {
    holds: 'The well keeps its distances',
    held: {
      farEnough: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      farEnoughAsTold: ({ said, margin }, show) => ({
        title: `The well keeps its distance to ${listed(said)}`,
        amount: toSpare(margin, show),
      }),
    },
    asks: ({ septicTank, drainField, building }, show) =>
      `The well is ${show.depth(septicTank)} from septic tanks, ${show.depth(drainField)} from drain fields and ${show.depth(building)} from buildings, or as your code asks.`,
    source: (show) =>
      `${show.depth(feet(50))}, ${show.depth(feet(100))} and ${show.depth(feet(5))} as in Wash. Admin. Code 173-160-171; other states differ, and the plan may name the local figure`,
    why: 'Soil needs distance to clean waste water before it reaches the well.',
    messages: {
      farEnough: away,
      farEnoughAsTold: ({ unsaid, ...worst }, show) => `${apart(worst, show)}; nobody told of ${listed(unsaid)}.`,
      tooNear: away,
    },
    fixes: { askAndTest: () => 'Ask the health department, and have the water tested.' },
  },
  'PR-43': {
    holds: 'The well top stands clear of frost',
    held: {
      noFrost: () => ({ amount: 'no frost' }),
      noneEstimated: () => ({ amount: 'no frost estimated' }),
    },
    asks: () => 'A seal on top of the well stands where the ground does not freeze.',
    source: 'common practice, no source',
    why: 'With a seal on top the pipe leaves the well in the cold, and ice bursts it.',
    messages: {
      noFrost: () => 'No frost is reported at this place.',
      noneEstimated: () => 'The climate entered gives no frost in the ground.',
      dependsOnFrost: ({ deepest, shelter }, show) =>
        `The pipe leaves the well above the ground${shelter ? ', sheltered' : ''}; frost here is estimated to reach up to ${gap(deepest, show)}.`,
      heated: ({ frost }, show) =>
        `Frost reaches ${gap(frost, show)}; the heated top depends on it through every power cut.`,
      housed: ({ frost }, show) =>
        `Frost reaches ${gap(frost, show)}; the housed top depends on it through every power cut.`,
      bare: ({ frost }, show) => `Frost reaches ${gap(frost, show)}, and the pipe leaves the well above the ground.`,
    },
    fixes: {
      askFrost: () => 'Ask the local code office how deep frost is held to reach here, and enter it.',
      lookAfterHeat: () => 'Look after heat and insulation, and mind power cuts.',
      heatTop: () => 'Insulate and heat the top',
      heatTopAndMindPowerCuts: () => 'Insulate and heat the top, and mind power cuts.',
      pitlessOrWellHouse: () => 'Use a pitless adapter below the frost, or a heated well house.',
    },
  },
};

function casingHeight({ measured, asked }: { measured: Metres; asked: Metres }, show: Show): string {
  const side = measured < 0 ? 'below' : 'above';
  return `The casing stands ${gap(measured, show)} ${side} the ground; ${gap(asked, show)} is asked.`;
}

function casingAndFlood({ measured, asked }: { measured: Metres; asked: Metres }, show: Show): string {
  const side = measured < 0 ? 'below' : 'above';
  return `The casing top is ${gap(measured, show)} ${side} the flood; ${show.depth(asked)} above it is asked.`;
}

interface Apart {
  readonly source: SourceOfDirt;
  readonly distance: Metres;
  readonly asked: Metres;
}

function apart({ source, distance, asked }: Apart, show: Show): string {
  return `The ${SOURCES[source]} is ${show.depth(distance)} away; ${show.depth(asked)} is asked`;
}

function away(worst: Apart, show: Show): string {
  return `${apart(worst, show)}.`;
}
