import { wireName } from '../../../model/units.ts';
import type { electricalRules } from '../../../model/rules/electrical.ts';
import type { Metres, Ratio, Volts } from '../../../model/si.ts';
import type { WireSize } from '../../../model/tables/wireSizes.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { ELECTRIC_CAUTION } from '../cautions.ts';

export const short: ShortWords<typeof electricalRules> = {
  'PR-49': {
    broken: 'The wire is thin for its length',
    holds: 'The wire is thick enough for its length',
    says: {
      thickEnough: ({ margin }, show) => ({ amount: `${show.percent(margin)} to spare` }),
      withinFive: ({ margin }, show) => ({ amount: `${show.percent(margin)} to spare` }),
      doesNotStart: ({ share }, show) => ({
        title: 'The motor does not start on this wire',
        amount: `${show.percent(share)} of the voltage arrives`,
      }),
      tooThin: ({ margin, most }, show) => ({ amount: `${show.percent(-margin)} over ${show.percent(most)}` }),
    },
    limits: {},
  },
  'PR-50': {
    broken: 'The wire is too thin for the current',
    holds: 'The wire carries the motor’s current',
    says: {
      carries: ({ margin }, show) => ({ amount: `${show.current(margin)} to spare` }),
      hotTerminalsOnly: ({ margin }, show) => ({
        title: 'The wire fits hot terminals only',
        amount: `${show.current(-margin)} short`,
      }),
      tooThin: ({ margin }, show) => ({ amount: `${show.current(-margin)} short` }),
    },
    limits: {},
  },
};

const thickerWire = {
  thicker: () => 'Take thicker wire.',
  noneThickEnough: () => 'No usual pump cable is thick enough: a higher voltage, or a shorter way.',
  useGauge: ({ gauge }: { gauge: WireSize }, show: Show) => `Use ${wireName(gauge, show.units)}`,
};

export const long: LongWords<typeof electricalRules> = {
  'PR-49': {
    asks: ({ most, informational, start }, show) =>
      `At most ${show.percent(most)} of the voltage is lost, the code’s informational figure being ${show.percent(informational)}; a motor that starts has ${show.percent(start)} or more.`,
    source:
      'NFPA 70 (NEC) 210.19(A), informational note: 3 and 5 %; IEC 60364-5-52, annex G: 5 %; 5 % for submersible pumps, and half at start: common practice, no source',
    why: 'A motor short of voltage starts badly, runs hot and wears out early.',
    caution: ELECTRIC_CAUTION,
    messages: {
      thickEnough: lost,
      withinFive: ({ length, measured, voltage, gauge, informational }, show) =>
        `${show.percent(measured)} of ${show.voltage(voltage)} is lost over ${show.depth(length)} of ${wireName(gauge, show.units)}; the code suggests ${show.percent(informational)}.`,
      doesNotStart: ({ length, share, voltage, gauge }, show) =>
        `Over ${show.depth(length)} of ${wireName(gauge, show.units)} ${show.percent(share)} of ${show.voltage(voltage)} arrives: too little to turn.`,
      tooThin: lost,
    },
    fixes: thickerWire,
  },
  'PR-50': {
    asks: ({ share }, show) =>
      `The wire carries ${show.percent(share)} of the motor’s current: the code’s, or the nameplate’s where that is more.`,
    source:
      'NFPA 70 (NEC) 430.22 (125 % of the table current) and Table 310.16, 60 °C column from memory; metric wire: IEC 60364-5-52, Table B.52.4, method B2',
    why: 'Wire too thin for its current overheats and can start a fire.',
    caution: ELECTRIC_CAUTION,
    messages: {
      carries: ({ gauge, carries, asked }, show) =>
        `${wireName(gauge, show.units)} carries ${show.current(carries)}; ${show.current(asked)} is asked, 125 % of the motor’s.`,
      hotTerminalsOnly: ({ gauge, asked }, show) =>
        `${wireName(gauge, show.units)} carries ${show.current(asked)} only where every terminal is marked 75 °C.`,
      tooThin: ({ gauge, carries, asked }, show) =>
        `${wireName(gauge, show.units)} carries ${show.current(carries)}; 125 % of the motor’s current is ${show.current(asked)}.`,
    },
    fixes: thickerWire,
  },
};

function lost(
  { length, measured, voltage, gauge }: { length: Metres; measured: Ratio; voltage: Volts; gauge: WireSize },
  show: Show,
): string {
  return `${show.depth(length)} from the panel, ${show.percent(measured)} of ${show.voltage(voltage)} is lost on ${wireName(gauge, show.units)}.`;
}
