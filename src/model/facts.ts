/**
 * What a plan says, in SI, with the defaults of the build filled in: the model's only input.
 *
 * Depths are metres below the ground surface, positive down, whatever datum the plan was typed in.
 * `null` is a fact of the place that nobody knows: it is never guessed.
 * A choice of the build that was left out holds its default here and stands in the list of assumed values.
 */
import type {
  Amperes,
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Kilograms,
  Metres,
  Newtons,
  Pascals,
  Ratio,
  Seconds,
  SquareMetresPerSecond,
  Volts,
  Watts,
} from './si.ts';
import type { PipeMaterial } from './tables/pipeMaterials.ts';
import type { WireSize } from './tables/wireSizes.ts';

export type { PipeMaterial } from './tables/pipeMaterials.ts';

export interface Facts {
  readonly title: string;
  /** Where the well is, in the reader's own words: nothing is worked out from it. */
  readonly place: string;
  readonly notes: string;
  readonly date: string | null;
  readonly units: 'us' | 'metric';
  readonly depthsFrom: 'ground' | 'casing top';
  readonly site: SiteFacts;
  readonly well: WellFacts;
  readonly water: WaterFacts;
  readonly house: HouseFacts;
  readonly top: TopFacts;
  readonly pump: PumpFacts;
  readonly dropPipe: PipeFacts & { readonly sectionLength: Metres | null };
  readonly string: StringFacts;
  readonly wire: WireFacts;
  readonly rope: RopeFacts | null;
  readonly disinfection: { readonly strength: Ratio; /** kg/m3: 100 mg/L is 0.1 */ readonly target: number };
  /** By plan path ("pump.setting"): only "to choose", and what is not listed, may be moved by a mend. */
  readonly status: Readonly<Record<string, Status>>;
}

/** How a value came into the plan: read in a report, measured today, standing there already, or still to choose. */
export type Status = 'reported' | 'measured' | 'installed' | 'to choose';

export interface Setback {
  readonly distance: Metres | null;
  readonly required: Metres | null;
}

export interface SiteFacts {
  readonly frostDepth: Metres | null;
  readonly frostFrom: 'local code' | 'estimate' | 'adviser' | null;
  readonly freezing: {
    readonly station: string | null;
    /** Air freezing index, kelvin-days below 0 degC. */
    readonly index: number | null;
    readonly soil: string | null;
    readonly surface: string | null;
  } | null;
  readonly waterTemperature: Celsius;
  readonly altitude: Metres;
  /** Height of the flood above the ground surface. */
  readonly floodHeight: Metres | null;
  readonly septicTank: Setback;
  readonly drainField: Setback;
  readonly building: Setback;
  readonly casingHeightRequired: Metres;
  readonly frostMargin: Metres;
}

export type CasingMaterial = 'steel' | 'PVC' | 'stainless steel' | 'concrete' | 'other';

export interface CasingFacts {
  readonly material: CasingMaterial;
  /** False where nobody said: `material` is then "other", of which no rule and no figure says anything. */
  readonly materialKnown: boolean;
  /** The name on the pipe ("6 in"): shown, never computed with. */
  readonly nominalSize: string;
  readonly schedule: string;
  readonly insideDiameter: Metres;
  /** False where it was neither measured nor is the size in a table: the diameters are then only for the drawing. */
  readonly insideKnown: boolean;
  readonly outsideDiameter: Metres;
  /** Depth of its upper end: minus its height for the one that carries the cap, positive for a liner hung lower. */
  readonly top: Metres;
  readonly bottom: Metres | null;
}

export interface ScreenFacts {
  readonly top: Metres;
  readonly bottom: Metres;
  readonly slot: Metres | null;
  /** Open share of the screen's surface. */
  readonly openArea: Ratio | null;
}

export interface WellFacts {
  readonly depth: Metres;
  readonly soundedDepth: Metres | null;
  /** Where the well ends today: sounded if known, else reported. */
  readonly bottom: Metres;
  /** Outermost first; never empty. */
  readonly casings: readonly CasingFacts[];
  /** Height of the outermost casing's top above ground, positive up. */
  readonly casingHeight: Metres;
  readonly groutBottom: Metres | null;
  readonly intake: {
    /** Null where nobody said: the hole may be open, or a screen may stand in it. */
    readonly kind: 'open hole' | 'screen' | 'driven point' | 'dug' | null;
    readonly diameter: Metres | null;
    readonly screens: readonly ScreenFacts[];
  };
  /** Zones where water enters; null when nobody said. */
  readonly inflows: readonly { readonly depth: Metres; readonly share: Ratio | null }[] | null;
  readonly yield: CubicMetresPerSecond | null;
  readonly yieldFrom: 'air lift' | 'bailer' | 'pump' | null;
  /** From the ground down, each from `top` to `bottom`; may end above the well's bottom. Empty when nobody said. */
  readonly layers: readonly { readonly material: string; readonly top: Metres; readonly bottom: Metres }[];
  readonly flowControl: boolean | null;
  readonly inPit: boolean | null;
  readonly tested: string | null;
}

export type PumpingFacts =
  | {
      readonly kind: 'test';
      readonly flow: CubicMetresPerSecond;
      readonly drawdown: Metres;
      readonly after: Seconds | null;
    }
  /**
   * `flow`: at which the level was measured; where nobody said, what the house wants and the well is said to give, listed
   * as assumed: that is no flow that anybody pumped.
   */
  | {
      readonly kind: 'level';
      readonly level: Metres;
      readonly flow: CubicMetresPerSecond | null;
      readonly flowAssumed?: true;
    }
  | {
      readonly kind: 'steps';
      readonly steps: readonly {
        readonly flow: CubicMetresPerSecond;
        readonly drawdown: Metres;
        readonly after: Seconds | null;
      }[];
    }
  | {
      readonly kind: 'aquifer';
      readonly transmissivity: SquareMetresPerSecond;
      readonly storativity: Ratio;
      readonly radius: Metres;
      readonly after: Seconds;
    }
  | { readonly kind: 'yield only' };

export interface WaterFacts {
  /** Negative above ground: a flowing well. */
  readonly staticLevel: Metres | null;
  readonly staticHighest: Metres | null;
  /** From staticLowest, else staticLevel + dryFall. */
  readonly staticLowest: Metres | null;
  readonly pumping: PumpingFacts | null;
  readonly acidity: number | null;
  /** S/m */
  readonly conductivity: number | null;
  readonly sand: boolean | null;
  readonly gas: boolean | null;
}

export interface HouseFacts {
  readonly demand: CubicMetresPerSecond | null;
  readonly cutIn: Pascals;
  readonly cutOut: Pascals;
  readonly tank: CubicMetres | null;
  readonly tankRating: Pascals;
  readonly precharge: Pascals;
  readonly reliefValve: boolean | null;
  /** Well to house along the buried line. */
  readonly distance: Metres | null;
  /** Ground at the well up to the tank. */
  readonly rise: Metres | null;
  readonly line: PipeFacts | null;
  readonly kind: 'pressure tank' | 'open tank';
  readonly control: 'switch' | 'variable speed';
}

export type TopFacts =
  | {
      readonly kind: 'pitless';
      /** Top of the outlet pipe. */ readonly depth: Metres;
      readonly protrusion: Metres | null;
      /** As it is stamped on the half that the string hangs on; null: nobody said, and it suits the pipe. */
      readonly thread: string | null;
      readonly submergedUse: boolean | null;
    }
  | { readonly kind: 'seal'; readonly heated: boolean; readonly housed: boolean };

export type PumpCurveFacts =
  | { readonly kind: 'generic'; readonly flow: CubicMetresPerSecond }
  | {
      readonly kind: 'points';
      readonly points: readonly { readonly flow: CubicMetresPerSecond; readonly head: Metres }[];
    };

export interface PumpFacts {
  /** Depth of the intake. */
  readonly setting: Metres;
  /** Rated shaft power. */
  readonly power: Watts | null;
  readonly phase: 1 | 3;
  /** Power conductors without the ground. */
  readonly wires: 2 | 3;
  readonly voltage: Volts;
  /** Of the supply [Hz]; null: nobody said, and the motor's name does not tell. */
  readonly frequency: 50 | 60 | null;
  readonly current: Amperes | null;
  readonly curve: PumpCurveFacts;
  /** Largest diameter, over the cable guard. */
  readonly diameter: Metres;
  readonly motorDiameter: Metres;
  readonly intakeToDischarge: Metres;
  readonly intakeToMotorBottom: Metres;
  /** Pump and motor together; from the power where nobody said; null when the power is unknown too. */
  readonly mass: Kilograms | null;
  readonly outlet: string;
  readonly checkValveInside: boolean;
  /** Inside, of the flow sleeve; null where there is none. */
  readonly shroudDiameter: Metres | null;
  /** 0 without a sleeve. */
  readonly shroudWall: Metres;
  readonly lowLevelCutOff: Metres | boolean | null;
  readonly flowLimiter: CubicMetresPerSecond | boolean | null;
}

export interface PipeFacts {
  readonly material: PipeMaterial;
  /** "ASTM D2239", "ISO 4427-2" …: as `pipeStandards` lists them. */
  readonly standard: string;
  readonly nominalSize: string;
  readonly insideDiameter: Metres;
  readonly outsideDiameter: Metres;
  /** SIDR, DR, schedule, PN or series as printed ("SIDR 9", "schedule 80", "PN 10"); null when nobody knows the wall. */
  readonly wallClass: string | null;
  /** False where rating and ratio leave the wall open: outside diameter and mass are then only for the drawing. */
  readonly wallKnown: boolean;
  readonly resin: string | null;
  /** Printed or computed pressure rating, at 23 degC (ISO standards: 20 degC); null for metal pipe. */
  readonly rating: Pascals | null;
  /** Darcy-Weisbach roughness height. */
  readonly roughness: Metres;
  readonly hazenWilliams: number;
  /** kg/m of dry pipe at minimum wall. */
  readonly massPerLength: number;
}

export interface StringFacts {
  /** Heights above the pump's discharge, rising. */
  readonly checkValves: readonly Metres[];
  readonly arrow: 'up' | 'down';
  readonly valveBetweenTopAndTank: boolean;
  readonly torqueArrestor: Metres | null;
  /** Spacing of cable guards; null when none is planned. */
  readonly guards: Metres | null;
  /** Spacing of cable ties. */
  readonly ties: Metres;
  /** Heights above the discharge; empty: the factory lead reaches the top. */
  readonly splices: readonly Metres[];
  readonly fittings: 'stainless steel' | 'brass' | 'bronze' | 'galvanized steel' | 'plastic' | 'nylon';
  readonly clampsPerJoint: number;
  readonly clampScrew: 'stainless steel' | 'carbon steel' | null;
}

export interface WireFacts {
  /** AWG number (14, 12, 10 …) or a cross-section ("4 mm2"). */
  readonly gauge: WireSize;
  /** Panel to well, along the wire. */
  readonly run: Metres | null;
  /** How far the conduit outside the casing goes down. */
  readonly conduitDepth: Metres;
}

export interface RopeFacts {
  readonly material: string;
  readonly diameter: Metres | null;
  readonly breakingStrength: Newtons | null;
  readonly tied: 'casing hook' | 'cap' | 'through cap' | 'loose';
}

/** A choice of the build that nobody made, with the value taken. */
export interface Assumed {
  readonly path: string;
  /** For people, as one would type it: "50 degF", "no", "4 ft, 40 ft", "none". */
  readonly value: string;
}

/** Facts with the account of what was taken for granted. */
export interface FactsReading {
  readonly facts: Facts;
  readonly assumed: readonly Assumed[];
  /** Paths of facts of the place that nobody said and that the model asks for. */
  readonly unknown: readonly string[];
  /** Paths that the plan carries and no figure or rule reads yet: kept, and listed. */
  readonly notUsed: readonly string[];
}
