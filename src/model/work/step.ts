/** One step of the work: what is put on, seen in which view, and the numbers that its sentences are said with. */
import type { Facts, RopeFacts } from '../facts.ts';
import type { CubicMetres, Metres, Newtons, Pascals, Ratio, Volts, Watts } from '../si.ts';
import type { WireSize } from '../tables/wireSizes.ts';

/** Who or what holds a load; `unknown` while nobody knows what the pump weighs. */
export type Holder = 'unknown' | 'oldUnknown' | 'twoPeople' | 'wheel' | 'hoist' | 'machine' | 'threaded';

/** How the string that is pulled comes out. */
export type OldString = 'not told' | 'bends' | 'threaded';

/** What hangs on the hook when a step begins and when it ends: null while nobody knows what the pump weighs. */
export interface OnTheHook {
  readonly from: Newtons | null;
  readonly to: Newtons | null;
  /** What the gear is chosen for: the most that this string comes to, and not what happens to hang at the moment. */
  readonly gear: Newtons | null;
  /** Pipe that is screwed together length by length. */
  readonly threaded: boolean;
  /** Of the gear's load. */
  readonly holder: Holder;
  /** What two people hold, as an orientation. */
  readonly two: Newtons;
}

/** The threads that it takes one to the other: "1-1/4 in", "1-1/4 in ISO 7-1" where their systems differ. */
export interface Bushing {
  readonly from: string;
  readonly to: string;
}

/** One way down, from one place of the pump's discharge to another. */
interface Down {
  /** Depths of the discharge. */
  readonly from: Metres;
  readonly to: Metres;
  readonly ties: { readonly count: number; readonly every: Metres };
  readonly guards: number;
  readonly hook: OnTheHook;
}

/** Every step that there is, with its numbers. */
export interface StepNumbers {
  readonly permits: object;
  readonly services: { readonly digs: boolean };
  readonly breakerOff: { readonly voltage: Volts; /** An old pump is on it. */ readonly wired: boolean };
  readonly measure: {
    readonly depth: Metres;
    readonly staticLevel: Metres | null;
    readonly casingHeight: Metres;
    readonly widest: Metres;
  };
  readonly layOut: {
    readonly coil: boolean;
    readonly pipe: Metres;
    /** Of rigid pipe that is cut: the shortest, which hangs highest but where a valve stands. */
    readonly odd: Metres | null;
  };
  readonly houseShut: { readonly open: boolean };
  readonly openTop: { readonly kind: Facts['top']['kind'] };
  readonly unseat: {
    readonly kind: Facts['top']['kind'];
    readonly liftPipe: Metres | null;
    readonly hook: OnTheHook;
  };
  readonly pull: { readonly hook: OnTheHook; readonly old: OldString };
  readonly sound: { readonly depth: Metres; readonly motorBottom: Metres; readonly casingHeight: Metres };
  readonly trench: { readonly outlet: Metres };
  readonly hole: { readonly outlet: Metres; readonly fromCasingTop: Metres };
  readonly adapterBody: object;
  readonly line: {
    readonly length: Metres | null;
    readonly way: 'barb' | 'socket' | 'thread';
    readonly clamps: number;
    readonly above: boolean;
  };
  readonly conduit: {
    readonly run: Metres | null;
    readonly depth: Metres;
    /** Null: nobody said what the casing is made of. */ readonly bonded: boolean | null;
  };
  readonly insulation: object;
  readonly sleeve: { readonly diameter: Metres };
  readonly outlet: {
    readonly bushing: Bushing | null;
    readonly thread: string;
    readonly limiter: boolean;
  };
  readonly lowValve: { readonly arrow: Facts['string']['arrow'] };
  readonly leads: { readonly strip: boolean; readonly whole: boolean };
  readonly splice: {
    readonly height: Metres;
    readonly joints: number;
    readonly gauge: WireSize;
    readonly beforeLowering: boolean;
  };
  readonly ropeOn: { readonly material: string };
  readonly pumpJoint: {
    readonly way: 'barb' | 'thread';
    readonly clamps: number;
    readonly arrestor: Metres | null;
    /** Guards come on this string: such as are of one piece are slid on now. */
    readonly guards: boolean;
    readonly section: Metres | null;
  };
  readonly lift: { readonly hook: OnTheHook };
  readonly lower: Down;
  readonly sections: Down & { readonly count: number; readonly longest: Metres; readonly shortest: Metres };
  readonly valve: {
    readonly height: Metres;
    readonly arrow: Facts['string']['arrow'];
    readonly clamps: number | null;
    /** Of rigid pipe: the length that goes into the valve. */
    readonly next: Metres | null;
  };
  readonly probe: { readonly depth: Metres; readonly overIntake: Metres };
  readonly topJoint: {
    readonly way: 'barb' | 'thread';
    readonly clamps: number;
    /** In the adapter's sliding half, where it is threaded for another pipe. */
    readonly bushing: Bushing | null;
    readonly hook: OnTheHook;
  };
  readonly seat: {
    readonly outlet: Metres;
    readonly liftPipe: Metres | null;
    readonly thread: string;
    readonly hook: OnTheHook;
  };
  readonly seal: { readonly way: 'barb' | 'thread'; readonly clamps: number; readonly hook: OnTheHook };
  readonly aboveSeal: {
    /** The line stands there already, and its union is closed again. */
    readonly rejoins: boolean;
  };
  readonly ropeTied: { readonly tied: RopeFacts['tied']; readonly kind: Facts['top']['kind'] };
  readonly capSplice: { readonly joints: number; readonly gauge: WireSize; readonly cap: boolean };
  readonly cap: object;
  readonly riser: { readonly way: 'barb' | 'socket' | 'thread' };
  readonly tankTee: { readonly relief: boolean; readonly drive: boolean };
  readonly tank: {
    readonly precharge: Pascals;
    readonly cutIn: Pascals;
    /** It is there already, drained with the house. */
    readonly stands: boolean;
  };
  readonly openTank: object;
  readonly boxes: { readonly box: 'controlBox' | 'drive' | null; readonly relay: boolean; readonly phase: 1 | 3 };
  /** An old box, or a drive, that a new motor would run on. */
  readonly boxCheck: { readonly box: 'controlBox' | 'drive' | null; readonly power: Watts | null };
  readonly firstRun: { readonly open: boolean; readonly phase: 1 | 3 };
  readonly pressureTest: { readonly cutOut: Pascals; readonly trench: boolean };
  readonly backfill: object;
  readonly readings: {
    readonly cutIn: Pascals;
    readonly cutOut: Pascals;
    readonly level: Metres | null;
    readonly open: boolean;
  };
  readonly disinfect: {
    readonly product: CubicMetres | null;
    readonly strength: Ratio;
    readonly opens: 'cap' | 'seal';
    /** The tank is an open one: it stands full of the chlorine water as well. */
    readonly open: boolean;
  };
  readonly flush: { /** The tank is an open one. */ readonly open: boolean };
  readonly sample: object;
  readonly record: object;
}

export type StepId = keyof StepNumbers;

export type Phase = 'before' | 'pulling' | 'top' | 'pump' | 'lowering' | 'hanging' | 'house' | 'start' | 'after';

/** What can hurt at a step. */
export type Caution =
  | 'electric'
  | 'lifting'
  | 'overhead'
  | 'digging'
  | 'pressure'
  | 'coil'
  | 'stuck'
  | 'gas'
  | 'pit'
  | 'chlorine'
  | 'hygiene';

/** Where the drawing shows it best. */
export type StepView = 'section' | 'top' | 'pump' | 'house' | { readonly at: Metres };

interface Common {
  /** "lower/2": the same from plan to plan while the steps are. */
  readonly key: string;
  readonly phase: Phase;
  /** Keys of the pieces that are put on; none where something is looked at, measured or done. */
  readonly puts: readonly string[];
  /** Keys of drawn parts that it is about. */
  readonly about: readonly string[];
  readonly view: StepView;
  readonly cautions: readonly Caution[];
  /** Choices that nobody made and that its figures rest on: paths of the plan. */
  readonly assumed: readonly string[];
}

export type Step = { [Id in StepId]: Common & { readonly id: Id; readonly numbers: StepNumbers[Id] } }[StepId];

/** A new string in a well, or an old one drawn and another hung where it was. */
export type Kind = 'new' | 'replace';

export type Work =
  /** Not for owners: what is done there a licensed contractor decides. */
  | { readonly kind: 'stop'; readonly why: 'flowing' | 'inPit' }
  | {
      readonly kind: Kind;
      readonly steps: readonly Step[];
      /** Keys of the pieces that stand there already. */
      readonly there: readonly string[];
    };
