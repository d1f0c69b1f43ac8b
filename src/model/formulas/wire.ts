import type { Amperes, Metres, Ratio, SquareMetres, Volts } from '../si.ts';
import { conductorOf } from '../tables/conductors.ts';
import { metricConductorOf } from '../tables/metricConductors.ts';
import { isMetricWire, usualWires } from '../tables/wireSizes.ts';
import type { WireSize } from '../tables/wireSizes.ts';
import { feet, inches } from '../units.ts';

export { GAUGES } from '../tables/conductors.ts';
export { cableDisplacedArea, cableMassPerLength } from './cable.ts';

const THOUSAND_FEET = feet(1000);
const KILOMETRE: Metres = 1000;

/** Copper at 75 °C over copper at 20 °C: (234.5 + 75) / (234.5 + 20). Source: IEC 60228 (2004), annex on temperature. */
const WARM_COPPER: Ratio = (234.5 + 75) / (234.5 + 20);

/** A conductor must carry this many times the full-load current of one motor (NFPA 70, 430.22). */
export const CONTINUOUS_MOTOR_FACTOR = 1.25;

/**
 * Diameter of a solid conductor by the gauge rule.
 *
 *     d = 0.005 · 92^((36 − n) / 39)  inches
 *
 * @param gauge  n, the AWG number; 0 is 1/0, −1 is 2/0
 * @returns      metres
 * Source        ASTM B258, the rule for diameters; printed tables round it
 */
export function awgDiameter(gauge: number): Metres {
  if (!Number.isFinite(gauge)) throw new RangeError(`awgDiameter: gauge is ${gauge}, must be a number`);
  return inches(0.005 * 92 ** ((36 - gauge) / 39));
}

/**
 * Copper area of a conductor by the gauge rule.
 *
 *     A = π/4 d²,   in circular mils (1000 d)² with d in inches
 *
 * @returns  square metres; NEC Chapter 9 Table 8 prints the same in circular mils, rounded
 * Source    ASTM B258
 */
export function awgArea(gauge: number): SquareMetres {
  return (Math.PI / 4) * awgDiameter(gauge) ** 2;
}

/**
 * Resistance of one stranded, uncoated copper conductor at 75 °C; of a metric size the flexible class that pump cable has.
 *
 * Conductors in cold well water have about a fifth less, so drops and runs from this lie on the cautious side.
 *
 * @returns  ohms per metre of conductor, one way
 * Throws    RangeError for a size that is not tabulated
 * Source    AWG: NFPA 70 (NEC), Chapter 9, Table 8, stranded column. mm2: IEC 60228 (2004), Table 3, class 5, greatest at
 *           20 °C, warmed to 75 °C as its annex does
 */
export function conductorResistance(size: WireSize): number {
  return isMetricWire(size)
    ? (WARM_COPPER * metricConductorOf(size).class5OhmsPerKilometre) / KILOMETRE
    : conductorOf(size).strandedOhmsPerThousandFeet / THOUSAND_FEET;
}

/** 2 for the way there and back in one phase, √3 between the lines of three. */
export function returnFactor(phase: 1 | 3): number {
  return phase === 1 ? 2 : Math.sqrt(3);
}

/**
 * Voltage lost along a run of any conductor.
 *
 *     ΔV = m I R L,   m = 2 (one phase) or √3 (three phases)
 *
 * @param resistance  R, ohms per metre of one conductor; a printed loop resistance is already doubled
 * @param length      L, one way [m]
 * @returns           volts
 *
 * Range    steady running; a good approximation below about 10 % of the supply. With the power factor left at 1
 *          it is the higher figure for 14 to 6 AWG (see `dropWithPowerFactor`).
 * Source   NFPA 70 (NEC), 210.19(A), and Chapter 9 Table 8; textbook formula
 */
export function dropOver({
  phase,
  current,
  length,
  resistance,
}: {
  readonly phase: 1 | 3;
  readonly current: Amperes;
  readonly length: Metres;
  readonly resistance: number;
}): Volts {
  if (!(current >= 0 && length >= 0 && resistance > 0 && current * length * resistance < Infinity)) {
    throw new RangeError(
      `dropOver: current ${current} A, length ${length} m, resistance ${resistance} ohm/m; ` +
        'the first two must not be negative and the last must be positive',
    );
  }
  return returnFactor(phase) * current * resistance * length;
}

export interface WireRun {
  readonly phase: 1 | 3;
  readonly current: Amperes;
  /** One way, along the wire. */
  readonly length: Metres;
  readonly gauge: WireSize;
}

/**
 * Voltage lost between supply and motor in copper wire of one gauge; the formula of `dropOver` with the resistance of
 * `conductorResistance`. Runs in series add up.
 *
 * @returns  volts
 * Throws    RangeError for a negative current or length and for a size that is not tabulated
 * Source    NFPA 70 (NEC), Chapter 9, Table 8; IEC 60228 (2004), Table 3
 */
export function voltageDrop(run: WireRun): Volts {
  return dropOver({
    phase: run.phase,
    current: run.current,
    length: run.length,
    resistance: conductorResistance(run.gauge),
  });
}

/**
 * Voltage lost, with the motor's power factor and the reactance of the wire in conduit.
 *
 *     ΔV = m I L (R cos φ + X sin φ)
 *
 * @param powerFactor  cos φ [-], 0 to 1; 0.8 where nobody knows (UFC 3-520-01, appendix B)
 * @returns            volts
 *
 * Range    the reactances hold for single conductors in PVC conduit, not for flat pump cable
 * Source   UFC 3-520-01 (2002), appendix B, B-2; resistances and reactances NFPA 70 (NEC), Chapter 9, Table 9
 */
export function dropWithPowerFactor({
  phase,
  current,
  length,
  gauge,
  powerFactor,
}: Omit<WireRun, 'gauge'> & {
  readonly gauge: number;
  readonly powerFactor: Ratio;
}): Volts {
  return dropOver({ phase, current, length, resistance: effectiveImpedance(gauge, powerFactor) });
}

/**
 * Effective impedance R cos φ + X sin φ of wire in PVC conduit at 75 °C and 60 Hz.
 *
 * @returns  ohms per metre
 * Source    NFPA 70 (NEC), Chapter 9, Table 9, note 2
 */
export function effectiveImpedance(gauge: number, powerFactor: Ratio): number {
  if (!(powerFactor >= 0 && powerFactor <= 1)) {
    throw new RangeError(`effectiveImpedance: power factor is ${powerFactor}, must lie between 0 and 1`);
  }
  const row = conductorOf(gauge);
  const sine = Math.sqrt(1 - powerFactor * powerFactor);
  return (row.alternatingOhmsPerThousandFeet * powerFactor + row.reactanceOhmsPerThousandFeet * sine) / THOUSAND_FEET;
}

/**
 * Run, one way, that loses just this much: `dropOver` turned round.
 *
 *     L = ΔV / (m I R)
 *
 * @returns  metres
 * Throws    RangeError unless all are positive
 */
export function runForDrop({
  phase,
  current,
  drop,
  resistance,
}: {
  readonly phase: 1 | 3;
  readonly current: Amperes;
  readonly drop: Volts;
  readonly resistance: number;
}): Metres {
  if (!(drop > 0 && current > 0 && resistance > 0)) {
    throw new RangeError(`runForDrop: drop ${drop} V, current ${current} A, resistance ${resistance} ohm/m`);
  }
  return drop / (returnFactor(phase) * current * resistance);
}

/**
 * Longest run, one way, that loses no more than a share of the supply voltage.
 *
 *     L = share · V / (m I R)
 *
 * @param share  of the supply voltage; 0.05 is usual for submersible pumps (common practice), 0.03 the advice of
 *               NFPA 70 (NEC), 210.19(A), for a branch circuit
 * @returns      metres
 * Throws        RangeError unless voltage, current and share are positive
 */
export function longestRun({
  phase,
  voltage,
  current,
  gauge,
  share = 0.05,
}: {
  readonly phase: 1 | 3;
  readonly voltage: Volts;
  readonly current: Amperes;
  readonly gauge: WireSize;
  readonly share?: Ratio;
}): Metres {
  if (!(voltage > 0 && current > 0 && share > 0)) {
    throw new RangeError(
      `longestRun: voltage ${voltage} V, current ${current} A, share ${share}; all must be positive`,
    );
  }
  return runForDrop({ phase, current, drop: share * voltage, resistance: conductorResistance(gauge) });
}

/**
 * Current a copper conductor may carry, by insulation and terminals.
 *
 * @param column  60 or 75 °C. Terminals up to 100 A count as 60 °C unless marked for 75 (NFPA 70, 110.14(C), from memory)
 * @returns       amperes, for at most three current-carrying conductors with 30 °C around them; metric sizes have one
 *                figure for both columns (PVC, 70 °C)
 * Source         NFPA 70 (NEC), Table 310.16; the 60 °C column is from memory. mm2: IEC 60364-5-52 (2009), Table B.52.4,
 *                method B2
 */
export function ampacity(gauge: WireSize, column: 60 | 75): Amperes {
  if (isMetricWire(gauge)) return metricConductorOf(gauge).ampacity;
  const row = conductorOf(gauge);
  return column === 60 ? row.ampacity60 : row.ampacity75;
}

/**
 * Current that a conductor to one motor must be able to carry: 125 % of its full-load current.
 *
 * Source  NFPA 70 (NEC), 430.22; kept for metric sizes, where IEC 60364-4-43, 433.1 asks for the breaker's rating
 */
export function requiredAmpacity(current: Amperes): Amperes {
  return CONTINUOUS_MOTOR_FACTOR * current;
}

/**
 * Thinnest pump cable that keeps the drop within the share and carries 125 % of the current.
 *
 * @param column  ampacity column, 60 °C unless the caller knows that insulation and terminals are marked for 75 °C
 * @param family  gauges, or cross-sections in square millimetres
 * @returns       null when the thickest pump cable is still too thin
 * Source         drop as in `voltageDrop`; ampacity as in `ampacity`; NFPA 70 (NEC), 430.22
 */
export function chooseGauge({
  phase,
  voltage,
  current,
  length,
  share = 0.05,
  column = 60,
  family = 'AWG',
}: {
  readonly phase: 1 | 3;
  readonly voltage: Volts;
  readonly current: Amperes;
  readonly length: Metres;
  readonly share?: Ratio;
  readonly column?: 60 | 75;
  readonly family?: 'AWG' | 'mm2';
}): WireSize | null {
  if (!(voltage > 0)) throw new RangeError(`chooseGauge: voltage is ${voltage} V, must be positive`);
  for (const gauge of usualWires(family)) {
    const carries = ampacity(gauge, column) >= requiredAmpacity(current);
    if (carries && voltageDrop({ phase, current, length, gauge }) <= share * voltage) return gauge;
  }
  return null;
}
