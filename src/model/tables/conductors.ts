/**
 * Copper conductors as the codes tabulate them, in the units printed there (AWG, circular mils, inches, ohms per
 * thousand feet, amperes).
 *
 * Sources  NFPA 70 (NEC), Chapter 9, Table 8: area, strand diameter, direct-current resistance at 75 °C, uncoated copper.
 *          NFPA 70 (NEC), Chapter 9, Table 9: alternating-current resistance and reactance in PVC conduit, 60 Hz, 75 °C.
 *          NFPA 70 (NEC), Table 310.16: ampacity, at most three current-carrying conductors, 30 °C around them.
 *          The 60 °C ampacities are from memory: older editions print other figures for 14, 12 and 10 AWG.
 */
export interface Conductor {
  readonly gauge: number;
  readonly areaCircularMils: number;
  readonly strandDiameterInches: number;
  /** Table 8 prints solid conductors up to 8 AWG only. */
  readonly solidOhmsPerThousandFeet: number | null;
  readonly strandedOhmsPerThousandFeet: number;
  readonly coatedStrandedOhmsPerThousandFeet: number;
  readonly alternatingOhmsPerThousandFeet: number;
  readonly reactanceOhmsPerThousandFeet: number;
  readonly ampacity60: number;
  readonly ampacity75: number;
  readonly ampacity90: number;
}

const conductor = (
  gauge: number,
  areaCircularMils: number,
  strandDiameterInches: number,
  solidOhmsPerThousandFeet: number | null,
  strandedOhmsPerThousandFeet: number,
  coatedStrandedOhmsPerThousandFeet: number,
  alternatingOhmsPerThousandFeet: number,
  reactanceOhmsPerThousandFeet: number,
  ampacity60: number,
  ampacity75: number,
  ampacity90: number,
): Conductor => ({
  gauge,
  areaCircularMils,
  strandDiameterInches,
  solidOhmsPerThousandFeet,
  strandedOhmsPerThousandFeet,
  coatedStrandedOhmsPerThousandFeet,
  alternatingOhmsPerThousandFeet,
  reactanceOhmsPerThousandFeet,
  ampacity60,
  ampacity75,
  ampacity90,
});

export const CONDUCTORS: readonly Conductor[] = [
  //        AWG  cmil   strand  solid  strand coated  ac    x      60   75   90 °C
  conductor(14, 4110, 0.073, 3.07, 3.14, 3.26, 3.1, 0.058, 15, 20, 25),
  conductor(12, 6530, 0.092, 1.93, 1.98, 2.05, 2.0, 0.054, 20, 25, 30),
  conductor(10, 10380, 0.116, 1.21, 1.24, 1.29, 1.2, 0.05, 30, 35, 40),
  conductor(8, 16510, 0.146, 0.764, 0.778, 0.809, 0.78, 0.052, 40, 50, 55),
  conductor(6, 26240, 0.184, null, 0.491, 0.51, 0.49, 0.051, 55, 65, 75),
  conductor(4, 41740, 0.232, null, 0.308, 0.321, 0.31, 0.048, 70, 85, 95),
  conductor(3, 52620, 0.26, null, 0.245, 0.254, 0.25, 0.047, 85, 100, 115),
  conductor(2, 66360, 0.292, null, 0.194, 0.201, 0.19, 0.045, 95, 115, 130),
];

/** Sizes that submersible pump cable is sold in, thinnest first. 3 AWG is tabulated but not a pump cable size. */
export const GAUGES: readonly number[] = [14, 12, 10, 8, 6, 4, 2];

/** Throws RangeError for a gauge that is not tabulated. */
export function conductorOf(gauge: number): Conductor {
  for (const row of CONDUCTORS) if (row.gauge === gauge) return row;
  throw new RangeError(`conductorOf: no ${gauge} AWG in the table; use one of 14, 12, 10, 8, 6, 4, 3, 2`);
}
