/**
 * Copper conductors of metric countries, in the units printed there: square millimetres, ohms per kilometre, amperes.
 *
 * Sources  IEC 60228 (2004), Tables 1 and 2 (classes 1 and 2, plain copper) and 3 (class 5): greatest direct-current
 *          resistance at 20 °C.
 *          IEC 60364-5-52 (2009), Table B.52.4: three loaded conductors, PVC, copper, method B2 (cable in a conduit on a
 *          wall), 30 °C around it. Two loaded conductors may carry more.
 *          Insulation and sheath of flat pump cable with PVC, rounded: from memory.
 */
export interface MetricConductor {
  /** Nominal cross-section, mm². */
  readonly area: number;
  /** Solid and stranded conductors of fixed wiring. */
  readonly class2OhmsPerKilometre: number;
  /** Flexible conductors, which pump cable has. */
  readonly class5OhmsPerKilometre: number;
  readonly ampacity: number;
  readonly insulationMillimetres: number;
  readonly sheathMillimetres: number;
}

const conductor = (
  area: number,
  class2OhmsPerKilometre: number,
  class5OhmsPerKilometre: number,
  ampacity: number,
  insulationMillimetres: number,
  sheathMillimetres: number,
): MetricConductor => ({
  area,
  class2OhmsPerKilometre,
  class5OhmsPerKilometre,
  ampacity,
  insulationMillimetres,
  sheathMillimetres,
});

export const METRIC_CONDUCTORS: readonly MetricConductor[] = [
  //       mm²   cl. 2  cl. 5  A   ins. sheath
  conductor(1.5, 12.1, 13.3, 15, 0.7, 1),
  conductor(2.5, 7.41, 7.98, 20, 0.8, 1),
  conductor(4, 4.61, 4.95, 27, 0.8, 1.2),
  conductor(6, 3.08, 3.3, 34, 0.8, 1.2),
  conductor(10, 1.83, 1.91, 46, 1, 1.4),
  conductor(16, 1.15, 1.21, 62, 1, 1.5),
  conductor(25, 0.727, 0.78, 80, 1.2, 1.6),
];

/** Throws RangeError for a cross-section that is not tabulated. */
export function metricConductorOf(size: string): MetricConductor {
  for (const row of METRIC_CONDUCTORS) if (`${row.area} mm2` === size) return row;
  const sizes = METRIC_CONDUCTORS.map(({ area }) => area).join(', ');
  throw new RangeError(`metricConductorOf: no ${size} in the table; use one of ${sizes} mm2`);
}
