/** What this well's own figures say of a cause: which sentence, and the numbers that it is said with, in SI. */
import type {
  Amperes,
  CubicMetres,
  CubicMetresPerSecond,
  Metres,
  MetresPerSecond,
  Pascals,
  Ratio,
  Seconds,
  Volts,
  Watts,
} from '../si.ts';

/** What falling water comes to: no flow against cut-in, too little of it, no cut-out, or water drawn down to the intake. */
export type Shows = 'nothing' | 'little' | 'noStop' | 'air';

export interface OwnNumbers {
  /** Of the motor. */
  readonly supply: { readonly voltage: Volts; readonly phase: 1 | 3 };
  readonly switchPoints: { readonly cutIn: Pascals; readonly cutOut: Pascals };
  /** A drive holds one pressure. */
  readonly holds: { readonly pressure: Pascals };
  readonly probe: {
    readonly probe: Metres;
    /** Null: nobody knows where the water rests. */ readonly over: Metres | null;
  };
  readonly byCurrent: object;
  readonly noGuard: object;
  /** The pump takes more than the well gives. */
  readonly drawnDown: {
    /** From the level at rest; null while nobody can tell. */
    readonly time: Seconds | null;
    readonly level: Metres;
    readonly by: 'intake' | 'cutOff';
  };
  /** Its dry-run protection should stop the pump there. */
  readonly guardStops: object;
  /** At the most that the pump draws, so much water is left over its intake. */
  readonly staysOver: { readonly level: Metres; readonly over: Metres };
  readonly lower: {
    readonly shows: Shows;
    /** How much lower the water has to rest; 0: as the plan has it. */
    readonly by: Metres;
    /** With the strongest pump of this rating; null where one curve is known, or where it makes no difference. */
    readonly most: Metres | null;
    /** What it then stands no higher than; null where it does, and the pump cannot lift it. */
    readonly dryAt: 'intake' | 'cutOff' | null;
    /** Null into an open tank. */
    readonly cutIn: Pascals | null;
    readonly cutOut: Pascals | null;
  };
  /** The dry season takes the water so far down. */
  readonly dryFall: { readonly fall: Metres };
  readonly boxPower: { readonly power: Watts };
  readonly draws: { readonly current: Amperes; /** On the nameplate, by the plan. */ readonly said: boolean };
  readonly runningDrop: { readonly share: Ratio; readonly length: Metres };
  /** Lost on the way while the motor starts. */
  readonly startDrop: { readonly share: Ratio };
  readonly carries: { readonly carries: Amperes; readonly asked: Amperes };
  readonly splices: { readonly count: number; /** The lowest, over the pump. */ readonly height: Metres };
  readonly noSplices: object;
  readonly sandSaid: object;
  readonly noSandSaid: object;
  readonly gasSaid: object;
  readonly noGasSaid: object;
  /** Drop pipe above the water at rest. */
  readonly pipeInAir: { readonly from: Metres; readonly to: Metres; readonly length: Metres };
  readonly adapterAt: { readonly depth: Metres };
  readonly gives: {
    readonly least: CubicMetresPerSecond;
    readonly most: CubicMetresPerSecond;
    readonly wanted: CubicMetresPerSecond | null;
    /** Null into an open tank. */
    readonly cutIn: Pascals | null;
  };
  readonly topsOut: { readonly least: Pascals; readonly most: Pascals; readonly cutOut: Pascals };
  readonly friction: { readonly head: Metres; readonly flow: CubicMetresPerSecond };
  readonly speed: { readonly velocity: MetresPerSecond; readonly flow: CubicMetresPerSecond };
  /** Water that the tank gives from one start to the next. */
  readonly leaks: { readonly water: CubicMetres };
  readonly line: { readonly length: Metres; readonly depth: Metres };
  readonly valves: { readonly count: number };
  readonly noValve: object;
  readonly noSecondValve: object;
  readonly airSet: { readonly precharge: Pascals; readonly cutIn: Pascals };
  readonly airOver: { readonly over: Pascals; readonly cutIn: Pascals };
  readonly airUsual: { readonly usual: Pascals; readonly cutIn: Pascals };
  readonly airForDrive: { readonly usual: Pascals; readonly holds: Pascals };
  readonly tankGives: {
    readonly water: CubicMetres;
    /** Null while the pump's flow is unknown. */ readonly run: Seconds | null;
  };
  /** The same tank with no air pressure of its own left. */
  readonly withoutAir: { readonly water: CubicMetres; readonly run: Seconds | null };
  readonly switchGap: { readonly gap: Pascals; readonly cutIn: Pascals; readonly cutOut: Pascals };
  readonly arrestor: { readonly height: Metres };
  readonly noArrestor: object;
  readonly offBottom: { readonly clearance: Metres };
  readonly onBottom: object;
  readonly casingFoot: { readonly bottom: Metres };
  readonly casingStands: { readonly height: Metres };
  readonly dose: { readonly water: CubicMetres; readonly product: CubicMetres; readonly strength: Ratio };
  readonly acid: { readonly acidity: number };
  /** Frost against the top of the outlet, or of the line under a seal. */
  readonly frostAt: { readonly depth: Metres; readonly frost: Metres };
  readonly noFrost: object;
  readonly barePipe: { readonly frost: Metres };
}

export type OwnId = keyof OwnNumbers;

export type Own = { [Id in OwnId]: { readonly id: Id; readonly numbers: OwnNumbers[Id] } }[OwnId];

export function own<Id extends OwnId>(id: Id, numbers: OwnNumbers[Id]): Own {
  return { id, numbers } as Own;
}
