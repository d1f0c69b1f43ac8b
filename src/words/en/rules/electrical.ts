import { wireName } from '../../../model/units.ts';
import type { electricalRules } from '../../../model/rules/electrical.ts';
import type { Amperes, Metres, Ratio } from '../../../model/si.ts';
import type { WireSize } from '../../../model/tables/wireSizes.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { ELECTRIC_CAUTION } from '../cautions.ts';

const thickerWire = {
  thicker: () => 'Take thicker wire.',
  noneThickEnough: () => 'No usual pump cable is thick enough: a higher voltage, or a shorter way.',
  useGauge: ({ gauge }: { gauge: WireSize }, show: Show) => `Use ${wireName(gauge, show.units)}`,
};

export const long: LongWords<typeof electricalRules> = {
  'PR-49': {
    holds: 'The wire is thick enough for its length',
    held: {
      thickEnough: ofLimit,
      withinFive: ofLimit,
    },
    asks: ({ most, informational, start }, show) =>
      `At most ${show.percent(most)} of the voltage is lost, the code’s informational figure being ${show.percent(informational)}; a motor that starts has ${show.percent(start)} or more.`,
    source:
      'NFPA 70 (NEC) 210.19(A), informational note: 3 and 5 %; IEC 60364-5-52, annex G: 5 %; 5 % for submersible pumps, and half at start: common practice, no source',
    why: 'A motor short of voltage starts badly, runs hot and wears out early.',
    caution: ELECTRIC_CAUTION,
    messages: {
      thickEnough: lost,
      withinFive: ({ current, length, measured, most, gauge, informational }, show) =>
        `At ${show.current(current)} ${wireName(gauge, show.units)} loses ${show.percent(measured)} over ${show.depth(length)}; limit ${show.percent(most)}, advised ${show.percent(informational)}.`,
      doesNotStart: ({ length, share, voltage, gauge }, show) =>
        `Over ${show.depth(length)} of ${wireName(gauge, show.units)} ${show.percent(share)} of ${show.voltage(voltage)} arrives: too little to turn.`,
      tooThin: lost,
    },
    fixes: thickerWire,
  },
  'PR-50': {
    holds: 'The wire carries the motor’s current',
    held: {
      carries: ({ margin }, show) => ({ amount: `${show.current(margin)} to spare` }),
    },
    asks: ({ share }, show) =>
      `The wire carries ${show.percent(share)} of the motor’s current: the code’s, or the nameplate’s where that is more.`,
    source:
      'NFPA 70 (NEC) 430.22 (125 % of the table current) and Table 310.16, 60 °C column from memory; metric wire: IEC 60364-5-52, Table B.52.4, method B2',
    why: 'Wire too thin for its current overheats and can start a fire.',
    caution: ELECTRIC_CAUTION,
    messages: {
      carries: asksOfWire,
      hotTerminalsOnly: ({ gauge, asked }, show) =>
        `${wireName(gauge, show.units)} carries ${show.current(asked)} only where every terminal is marked 75 °C.`,
      tooThin: asksOfWire,
    },
    fixes: thickerWire,
  },
};

interface Lost {
  readonly current: Amperes;
  readonly length: Metres;
  readonly measured: Ratio;
  readonly most: Ratio;
  readonly gauge: WireSize;
}

function lost({ current, length, measured, most, gauge }: Lost, show: Show): string {
  return `At ${show.current(current)} ${wireName(gauge, show.units)} loses ${show.percent(measured)} over ${show.depth(length)}; ${show.percent(most)} is the limit.`;
}

function ofLimit({ measured, most }: Pick<Lost, 'measured' | 'most'>, show: Show): { amount: string } {
  return { amount: `${show.percent(measured)} lost, ${show.percent(most)} allowed` };
}

interface Asked {
  readonly gauge: WireSize;
  readonly carries: Amperes;
  readonly asked: Amperes;
  readonly current: Amperes;
  readonly byNameplate: boolean;
}

/** Of which current: the code's is not the one that the motor draws at its service factor. */
function asksOfWire({ gauge, carries, asked, current, byNameplate }: Asked, show: Show): string {
  const whose = byNameplate ? 'the nameplate’s' : 'the code’s figure';
  return `${wireName(gauge, show.units)} carries ${show.current(carries)}; ${show.current(asked)} is asked: 125 % of ${show.current(current)}, ${whose}.`;
}
