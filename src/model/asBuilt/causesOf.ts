/** What to think of first, reading by reading. Order: common practice, no source. */
import { levelAtFlow, pumpAtLevel } from '../figures/curves.ts';
import type { CubicMetresPerSecond, Metres, Pascals, Ratio } from '../si.ts';
import type { Solution } from '../solution.ts';
import { feet, psi } from '../units.ts';
import type { Cause } from './cause.ts';
import { airFor, withSwitchRead } from './expected.ts';
import { READINGS, type Reading, type Readings } from './readings.ts';

interface Asked {
  readonly reading: Reading;
  /** As `asHung` gives it. */
  readonly hung: Solution;
  readonly readings: Readings;
  readonly measured: number;
  readonly verdict: 'low' | 'high';
}

/** Water that stays over an intake. Common practice, no source; see PR-02. */
const ROOM: Metres = feet(10);
/** What tapes and gauges tell apart. Common practice, no source. */
const LEVEL: Metres = feet(2);
const PRESSURE: Pascals = psi(2);
/** Of its rating: NEMA MG 1, 12.44 (from memory). */
const LOW_VOLTAGE: Ratio = 0.9;
/** A well that gives so much less a foot than its report gives less. Common practice, no source. */
const GIVES_LESS: Ratio = 0.9;

export function causesOf(asked: Asked): readonly Cause[] {
  return CAUSES[asked.reading](asked);
}

/** Water at the intake is told whatever was expected. */
export function nearIntake(reading: Reading, measured: number, { facts }: Solution): readonly Cause[] {
  if (READINGS[reading] !== 'length') return [];
  const over = facts.pump.setting - measured;
  return over < ROOM ? [{ id: 'nearIntake', over }] : [];
}

const CAUSES: Readonly<Record<Reading, (asked: Asked) => readonly Cause[]>> = {
  staticLevel: ({ hung, measured, verdict }) =>
    // Depths: more is lower.
    verdict === 'low' ? [{ id: 'levelRose' }] : [{ id: 'levelFell', over: hung.facts.pump.setting - measured }],
  voltage: ({ hung, verdict }) =>
    verdict === 'low' ? [{ id: 'cable', drop: hung.values.voltageDropRunning }, { id: 'supply' }] : [{ id: 'supply' }],
  current: ({ hung, readings, verdict }) => {
    const { pump } = hung.facts;
    if (verdict === 'low')
      return [
        { id: 'drawsAir', intake: pump.setting },
        ...(pump.phase === 3 ? [{ id: 'turnsBackward' } as const] : []),
      ];
    const { voltage } = readings;
    const low = voltage !== undefined && voltage < pump.voltage * LOW_VOLTAGE;
    return [
      ...(low ? [{ id: 'lowVoltage', volts: voltage, plate: pump.voltage } as const] : []),
      ...(pump.wires === 3 && pump.phase === 1 ? [{ id: 'wrongBox' } as const] : []),
      { id: 'sandOrRub' },
    ];
  },
  flow: ({ hung, readings, measured, verdict }) =>
    verdict === 'high'
      ? [...(hung.facts.house.kind === 'open tank' ? [] : [{ id: 'gaugeLow' } as const]), { id: 'otherPump' }]
      : [
          ...lowWater(hung, readings, measured),
          ...(hung.facts.pump.phase === 3 ? [{ id: 'turnsBackward' } as const] : []),
          { id: 'wayOut' },
          { id: 'otherPump' },
        ],
  precharge: ({ hung, readings, measured }) => {
    const cutIn = readings.cutIn ?? hung.facts.house.cutIn;
    const set: Cause = { id: 'setAir', to: airFor(hung, readings) };
    return measured > cutIn ? [{ id: 'airOverCutIn', cutIn }, set] : [set];
  },
  cutIn: ({ hung, readings }) => [...swapped(readings), { id: 'setSwitch', to: hung.facts.house.cutIn }],
  cutOut: ({ hung, readings }) => [...swapped(readings), { id: 'setSwitch', to: hung.facts.house.cutOut }],
  pumpingLevel: ({ hung, readings, measured, verdict }) => {
    if (verdict === 'low') return [{ id: 'drawnDown' }];
    return [...nearIntake('pumpingLevel', measured, hung), ...givesLess(hung, readings, measured)];
  },
  run: ({ hung, readings }) => {
    const { house } = hung.facts;
    if (house.kind === 'open tank') return [{ id: 'smallTank' }];
    const to = airFor(hung, readings);
    const air = readings.precharge ?? house.precharge;
    return [...(Math.abs(air - to) > PRESSURE ? [{ id: 'setAir', to } as const] : []), { id: 'smallTank' }];
  },
};

function swapped({ cutIn, cutOut }: Readings): readonly Cause[] {
  return cutIn !== undefined && cutOut !== undefined && cutOut <= cutIn ? [{ id: 'readAgain' }] : [];
}

/** Only where it does: the same capacity at a larger flow draws the water lower too. */
function givesLess({ levels, values }: Solution, { staticLevel, flow }: Readings, measured: Metres): readonly Cause[] {
  const rest = staticLevel ?? levels.static;
  if (flow === undefined || rest === null || measured <= rest) return [];
  const [now, planned] = [flow / (measured - rest), values.specificCapacity];
  return planned !== null && now > planned * GIVES_LESS ? [] : [{ id: 'givesLess', now, planned }];
}

/** The water at which this pump gives so little, from the weaker to the stronger end of its band. */
function lowWater(hung: Solution, readings: Readings, flow: CubicMetresPerSecond): readonly Cause[] {
  const facts = withSwitchRead(hung.facts, readings);
  const [from, to] = (['least', 'most'] as const).map((end) => levelAtFlow(facts, { end, tank: 'cutIn' }, flow));
  if (from == null || to == null) return [];
  const { setting } = facts.pump;
  const { pumpingLevel } = readings;
  const atIntake = pumpAtLevel(facts, { end: 'least', tank: 'cutIn' }, setting);
  if (from > setting) return atIntake === null ? [] : [{ id: 'notEvenAtIntake', gives: atIntake.flow }];
  if (pumpingLevel !== undefined && pumpingLevel < from - LEVEL)
    return [{ id: 'notTheWater', needed: from, measured: pumpingLevel }];
  return [{ id: 'waterLower', from, to: Math.min(to, setting) }];
}
