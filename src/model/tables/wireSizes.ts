/** The two families of wire sizes: American gauges, by their number, and cross-sections in square millimetres. */
import { CONDUCTORS, GAUGES } from './conductors.ts';
import { METRIC_CONDUCTORS } from './metricConductors.ts';

/** "4 mm2": the nominal cross-section that is printed on the cable. */
export type MetricWire = `${number} mm2`;
/** An AWG number (12), or a cross-section by its name ("4 mm2"). */
export type WireSize = number | MetricWire;

export function isMetricWire(size: WireSize): size is MetricWire {
  return typeof size === 'string';
}

export function metricWire(squareMillimetres: number): MetricWire {
  return `${squareMillimetres} mm2`;
}

/** As one types it: "12 AWG", "4 mm2". */
export function wireText(size: WireSize): string {
  return isMetricWire(size) ? size : `${size} AWG`;
}

const METRIC_SIZES: readonly MetricWire[] = METRIC_CONDUCTORS.map(({ area }) => metricWire(area));

/** Sizes of one family that pump cable is sold in, thinnest first. */
export function usualWires(family: 'AWG' | 'mm2'): readonly WireSize[] {
  return family === 'AWG' ? GAUGES : METRIC_SIZES;
}

/** The family that a size belongs to: what is chosen instead comes from the same one. */
export function familyOf(size: WireSize): 'AWG' | 'mm2' {
  return isMetricWire(size) ? 'mm2' : 'AWG';
}

/** Whether the tables have it. */
export function isTabulated(size: WireSize): boolean {
  return isMetricWire(size) ? METRIC_SIZES.includes(size) : CONDUCTORS.some(({ gauge }) => gauge === size);
}
