/** The first start: what was measured beside what was expected, and what a difference comes of in this very well. */
import { levelAtFlow, pumpAtLevel } from '../figures/curves.ts';
import { parseQuantity, feet, psi, type QuantityKind } from '../units.ts';
import type { CubicMetresPerSecond, Metres, Pascals, Ratio, SquareMetresPerSecond, Volts } from '../si.ts';
import type { Solved } from '../solution.ts';
import { startCard } from '../work/startCard.ts';

/** In the order in which they are read. */
export const READINGS = {
  staticLevel: 'length',
  voltage: 'voltage',
  current: 'current',
  flow: 'flow',
  precharge: 'pressure',
  cutIn: 'pressure',
  cutOut: 'pressure',
  pumpingLevel: 'length',
  run: 'time',
} as const satisfies Readonly<Record<string, QuantityKind>>;

export type Reading = keyof typeof READINGS;

export interface Compared {
  readonly reading: Reading;
  readonly kind: (typeof READINGS)[Reading];
  /** SI, in the unit of its reading. */
  readonly measured: number;
  /** Null where nobody knows what to expect. */
  readonly expected: Expected | null;
  readonly verdict: 'as expected' | 'low' | 'high' | 'nothing expected';
  /** What to think of first. None where it is as expected. */
  readonly causes: readonly Cause[];
}

export interface Expected {
  readonly least: number;
  /** Null where more is never wrong. */
  readonly most: number | null;
}

/** What a difference may come of, with this well's own figures. */
export type Cause =
  /** The pump gives this flow with the water, while it runs, from the one level to the other. */
  | { readonly id: 'waterLower'; readonly from: Metres; readonly to: Metres }
  /** The water was measured higher than it would have to stand. */
  | { readonly id: 'notTheWater'; readonly needed: Metres; readonly measured: Metres }
  /** Even with the water at its intake it would give so much. */
  | { readonly id: 'notEvenAtIntake'; readonly gives: CubicMetresPerSecond }
  | { readonly id: 'wayOut' }
  | { readonly id: 'otherPump' }
  | { readonly id: 'gaugeLow' }
  | { readonly id: 'lowVoltage'; readonly volts: Volts; readonly plate: Volts }
  | { readonly id: 'wrongBox' }
  | { readonly id: 'sandOrRub' }
  | { readonly id: 'drawsAir'; readonly intake: Metres }
  | { readonly id: 'turnsBackward' }
  | { readonly id: 'cable'; readonly drop: Ratio | null }
  | { readonly id: 'supply' }
  /** What is left of the water over the intake at rest. */
  | { readonly id: 'levelFell'; readonly over: Metres }
  | { readonly id: 'levelRose' }
  /** Flow a metre of drawdown, as measured and as planned. */
  | { readonly id: 'givesLess'; readonly now: SquareMetresPerSecond; readonly planned: SquareMetresPerSecond | null }
  | { readonly id: 'drawnDown' }
  | { readonly id: 'nearIntake'; readonly over: Metres }
  | { readonly id: 'setAir'; readonly to: Pascals }
  | { readonly id: 'airOverCutIn'; readonly cutIn: Pascals }
  | { readonly id: 'setSwitch'; readonly to: Pascals }
  | { readonly id: 'smallTank' };

/** Readings of a pump within this are those of the pump: buckets, gauges and curves are no better. Common practice, no source. */
const FLOW: Ratio = 0.1;
/** A motor bears its rated voltage and a tenth more or less: NEMA MG 1, 12.44 (from memory). */
const VOLTAGE: Ratio = 0.1;
/** Over the nameplate, and so far under it that the pump cannot be lifting water. Common practice, no source. */
const CURRENT = { over: 0.1, under: 0.4 } as const;
/** What tapes and gauges tell apart. Common practice, no source. */
const LEVEL: Metres = feet(2);
const PRESSURE: Pascals = psi(2);
/** Water that stays over an intake. Common practice, no source; see PR-02. */
const ROOM: Metres = feet(10);

type Readings = Readonly<Partial<Record<Reading, number>>>;

/** Those that were written down, in their order. */
export function compared(solved: Solved): readonly Compared[] {
  const readings = readingsOf(solved);
  return Object.keys(READINGS).flatMap((each) => {
    const reading = each as Reading;
    const measured = readings[reading];
    if (measured === undefined) return [];
    const expected = expectedOf(reading, solved, readings);
    const verdict = expected === null ? 'nothing expected' : verdictOf(reading, measured, expected);
    const differs = verdict === 'low' || verdict === 'high';
    const causes = differs
      ? CAUSES[reading]({ solved, readings, measured, verdict })
      : nearIntake(reading, measured, solved);
    return [{ reading, kind: READINGS[reading], measured, expected, verdict, causes }];
  });
}

/** What to expect of each, from what is planned and what was read so far. */
export function expectations(solved: Solved): Readonly<Record<Reading, Expected | null>> {
  const readings = readingsOf(solved);
  const all = Object.keys(READINGS).map((each) => {
    const reading = each as Reading;
    return [reading, expectedOf(reading, solved, readings)] as const;
  });
  return Object.fromEntries(all) as Record<Reading, Expected | null>;
}

function readingsOf({ plan }: Solved): Readings {
  const typed = plan.asBuilt?.measured ?? {};
  return Object.fromEntries(
    Object.entries(READINGS).flatMap(([reading, kind]) => {
      const text = typed[reading as Reading];
      const parsed = text === undefined ? null : parseQuantity(text, kind);
      return parsed?.ok === true ? [[reading, parsed.si]] : [];
    }),
  );
}

function expectedOf(reading: Reading, solved: Solved, readings: Readings): Expected | null {
  const card = startCard(solved);
  const one = (value: number | null | undefined) => (value == null ? null : { least: value, most: value });
  switch (reading) {
    case 'staticLevel':
      return one(card.staticLevel);
    case 'voltage':
      return one(card.voltage);
    case 'current':
      return card.current === null ? null : { least: 0, most: card.current.most };
    case 'flow':
      return card.flow;
    case 'precharge':
    case 'cutIn':
    case 'cutOut':
      return one(card.switch?.[reading]);
    case 'pumpingLevel':
      return one(drawnFrom(solved, readings));
    case 'run':
      return { least: card.leastRun, most: null };
  }
}

/** Where the water should stand after an hour: as far under its level at rest as planned, from where that was today. */
function drawnFrom({ values, levels }: Solved, { staticLevel }: Readings): Metres | null {
  const { pumpingWaterLevel: planned } = values;
  if (planned === null || levels.static === null || staticLevel === undefined) return planned;
  return planned + (staticLevel - levels.static);
}

function verdictOf(reading: Reading, measured: number, { least, most }: Expected): Compared['verdict'] {
  const [under, over] = roomOf(reading, least, most ?? least);
  return measured < least - under ? 'low' : most !== null && measured > most + over ? 'high' : 'as expected';
}

/** How far under the least and over the most a reading may be. */
function roomOf(reading: Reading, least: number, most: number): readonly [number, number] {
  switch (READINGS[reading]) {
    case 'length':
      return [LEVEL, LEVEL];
    case 'pressure':
      return [PRESSURE, PRESSURE];
    case 'voltage':
      return [VOLTAGE * least, VOLTAGE * most];
    case 'current':
      // Nothing under the nameplate is wrong until it is so little that no water is lifted.
      return [-CURRENT.under * most, CURRENT.over * most];
    case 'flow':
      return [FLOW * least, FLOW * most];
    case 'time':
      return [FLOW * least, 0];
  }
}

interface Asked {
  readonly solved: Solved;
  readonly readings: Readings;
  readonly measured: number;
  readonly verdict: 'low' | 'high';
}

const CAUSES: Readonly<Record<Reading, (asked: Asked) => readonly Cause[]>> = {
  staticLevel: ({ solved, measured, verdict }) =>
    // Depths: more is lower.
    verdict === 'low' ? [{ id: 'levelRose' }] : [{ id: 'levelFell', over: solved.facts.pump.setting - measured }],
  voltage: ({ solved, verdict }) =>
    verdict === 'low'
      ? [{ id: 'cable', drop: solved.values.voltageDropRunning }, { id: 'supply' }]
      : [{ id: 'supply' }],
  current: ({ solved, readings, verdict }) => {
    const { pump } = solved.facts;
    if (verdict === 'low')
      return [
        { id: 'drawsAir', intake: pump.setting },
        ...(pump.phase === 3 ? [{ id: 'turnsBackward' } as const] : []),
      ];
    const { voltage } = readings;
    const low = voltage !== undefined && voltage < pump.voltage * (1 - VOLTAGE);
    return [
      ...(low ? [{ id: 'lowVoltage', volts: voltage, plate: pump.voltage } as const] : []),
      ...(pump.wires === 3 && pump.phase === 1 ? [{ id: 'wrongBox' } as const] : []),
      { id: 'sandOrRub' },
    ];
  },
  flow: ({ solved, readings, measured, verdict }) =>
    verdict === 'high'
      ? [{ id: 'gaugeLow' }, { id: 'otherPump' }]
      : [...lowWater(solved, readings, measured), { id: 'wayOut' }, { id: 'otherPump' }],
  precharge: ({ solved, readings, measured }) => {
    const cutIn = readings.cutIn ?? solved.facts.house.cutIn;
    const to = solved.facts.house.precharge;
    return measured > cutIn
      ? [
          { id: 'airOverCutIn', cutIn },
          { id: 'setAir', to },
        ]
      : [{ id: 'setAir', to }];
  },
  cutIn: ({ solved }) => [{ id: 'setSwitch', to: solved.facts.house.cutIn }],
  cutOut: ({ solved }) => [{ id: 'setSwitch', to: solved.facts.house.cutOut }],
  pumpingLevel: ({ solved, readings, measured, verdict }) => {
    if (verdict === 'low') return [{ id: 'drawnDown' }];
    const over = solved.facts.pump.setting - measured;
    const rest = readings.staticLevel ?? solved.levels.static;
    const { flow } = readings;
    const gives: readonly Cause[] =
      flow === undefined || rest === null || measured <= rest
        ? []
        : [{ id: 'givesLess', now: flow / (measured - rest), planned: solved.values.specificCapacity }];
    return [...(over < ROOM ? [{ id: 'nearIntake', over } as const] : []), ...gives];
  },
  run: ({ readings, solved }) => {
    const { precharge } = readings;
    const { house } = solved.facts;
    const wrong = precharge !== undefined && Math.abs(precharge - house.precharge) > PRESSURE;
    return [...(wrong ? [{ id: 'setAir', to: house.precharge } as const] : []), { id: 'smallTank' }];
  },
};

/** Water at the intake is told whatever was expected. */
function nearIntake(reading: Reading, measured: number, { facts }: Solved): readonly Cause[] {
  if (READINGS[reading] !== 'length') return [];
  const over = facts.pump.setting - measured;
  return over < ROOM ? [{ id: 'nearIntake', over }] : [];
}

/** The water at which this pump gives so little, from the weaker to the stronger end of its band. */
function lowWater(solved: Solved, { pumpingLevel }: Readings, flow: CubicMetresPerSecond): readonly Cause[] {
  const [from, to] = (['least', 'most'] as const).map((end) => levelAtFlow(solved.facts, { end, tank: 'cutIn' }, flow));
  if (from == null || to == null) return [];
  const { setting } = solved.facts.pump;
  const atIntake = pumpAtLevel(solved.facts, { end: 'least', tank: 'cutIn' }, setting);
  if (from > setting) return atIntake === null ? [] : [{ id: 'notEvenAtIntake', gives: atIntake.flow }];
  if (pumpingLevel !== undefined && pumpingLevel < from - LEVEL)
    return [{ id: 'notTheWater', needed: from, measured: pumpingLevel }];
  return [{ id: 'waterLower', from, to: Math.min(to, setting) }];
}
