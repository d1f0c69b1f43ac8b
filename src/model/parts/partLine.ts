/** One line of the parts list: what is bought, how much of it, and what it has to fit. */
import type { Facts } from '../facts.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Newtons, Pascals, Ratio, Volts, Watts } from '../si.ts';
import type { End, PieceKind } from '../string/graph/piece.ts';
import type { PipeJoint } from '../tables/pipeMaterials.ts';
import type { WireSize } from '../tables/wireSizes.ts';

/** What is used up, kept ready, or needed to do the work: in no graph of the string. */
export type SupplyKind =
  | 'threadTape'
  | 'threadPaste'
  | 'cement'
  | 'seamTape'
  | 'adapterGrease'
  | 'conduitSealant'
  | 'wallSleeve'
  | 'casingGrout'
  | 'bedding'
  | 'surgeArrester'
  | 'chlorine'
  | 'sampleBottles'
  | 'spareClamps'
  | 'spareFitting'
  | 'spareSplice'
  | 'liftOutPipe'
  | 'liftingPlug'
  | 'pipeWheel'
  | 'ropeHook'
  | 'warningTape'
  | 'clampMeter'
  | 'junctionBox'
  | 'boxForMotor'
  | 'starter'
  | 'holeSaw'
  | 'hoist'
  | 'pipeHolders'
  | 'insulationTester'
  | 'voltageTester'
  | 'lock'
  | 'wrenches'
  | 'pipeCutter'
  | 'crimper'
  | 'levelTape'
  | 'bucket'
  | 'hose'
  | 'airGauge'
  | 'goggles';

export type What = PieceKind | SupplyKind;

export type Group = 'well' | 'line' | 'wires' | 'house' | 'usedUp' | 'spares' | 'tools';

/** What a line says besides its size, its ends and its lengths. */
export interface LineNumbers {
  readonly pump: {
    readonly power: Watts | null;
    readonly phase: 1 | 3;
    readonly wires: 2 | 3;
    readonly voltage: Volts;
    readonly frequency: 50 | 60 | null;
    readonly flow: CubicMetresPerSecond | null;
    readonly diameter: Metres;
  };
  /** Outside diameter of the pipe that they go round. */
  readonly clamp: { readonly over: Metres; readonly perJoint: number; readonly screw: Facts['string']['clampScrew'] };
  readonly dropPipe: {
    readonly joined: PipeJoint;
    readonly rating: Pascals | null;
    readonly wallClass: string | null;
    readonly standard: string;
    /** Of rigid pipe: what it comes in. */
    readonly section: Metres | null;
    /** One of its sections is cut, and threaded again. */
    readonly cutSection: boolean;
  };
  readonly buriedLine: LineNumbers['dropPipe'];
  readonly torqueArrestor: { readonly bore: Metres; readonly pipe: Metres };
  readonly guard: { readonly bore: Metres; readonly pipe: Metres };
  readonly tie: { readonly every: Metres };
  readonly shroud: { readonly inside: Metres };
  readonly splice: {
    readonly wires: number;
    readonly gauge: WireSize;
    /** Of the motor's own lead, from its head up. */
    readonly lead: Metres;
  };
  readonly capSplice: { readonly wires: number; readonly gauge: WireSize };
  readonly cable: { readonly wires: number };
  readonly houseCable: { readonly wires: number };
  readonly rope: { readonly diameter: Metres | null };
  readonly pitlessAdapter: {
    readonly casing: string;
    readonly steel: boolean;
    /** Its body stays in the wall. */
    readonly half: boolean;
    /** What it has to bear: null while nobody knows what the pump weighs. */
    readonly load: Newtons | null;
  };
  /** What it takes from one end to the other: another size, another thread system. */
  /** Wider: its inner thread is larger than its outer one, which no bushing is. */
  readonly bushing: { readonly sizes: boolean; readonly systems: boolean; readonly wider: boolean };
  /** False for pipe that is measured by its outside: a barb need not fit its bore. */
  readonly insertFitting: { readonly byInside: boolean };
  readonly hoist: {
    readonly rated: Newtons | null;
    /** An old string comes out first, and nobody said what it is: the rating is not for that. */
    readonly oldNotTold: boolean;
    /** Of the hook over the ground, so that a length of rigid pipe with the pump hangs clear; null for a coil. */
    readonly height: Metres | null;
  };
  readonly boxForMotor: { readonly power: Watts | null };
  /** Of three phases: a pressure switch works its coil and no more. */
  readonly starter: { readonly power: Watts | null; readonly voltage: Volts; readonly old: boolean };
  readonly cap: { readonly outside: Metres; readonly known: boolean };
  readonly seal: { readonly inside: Metres; readonly known: boolean };
  readonly bond: { readonly outside: Metres };
  readonly flowLimiter: { readonly flow: CubicMetresPerSecond | null };
  readonly tank: { readonly open: boolean; readonly volume: CubicMetres | null; readonly rating: Pascals };
  readonly reliefValve: { readonly rating: Pascals; readonly flow: CubicMetresPerSecond | null };
  readonly switch: {
    readonly cutIn: Pascals;
    readonly cutOut: Pascals;
    /** Of a drive, in the switch's place. */ readonly sensor: boolean;
  };
  readonly gauge: { readonly cutOut: Pascals };
  readonly controlBox: { readonly power: Watts | null; readonly voltage: Volts };
  readonly drive: { readonly power: Watts | null; readonly voltage: Volts };
  readonly liftOutPipe: { readonly length: Metres };
  readonly holeSaw: { readonly casing: string };
  readonly wallSleeve: { readonly over: Metres };
  readonly chlorine: { readonly product: CubicMetres | null; readonly strength: Ratio };
  readonly bucket: { readonly flow: CubicMetresPerSecond | null };
}

export type NumbersOf<Kind extends What> = Kind extends keyof LineNumbers ? LineNumbers[Kind] : object;

/** A thread, barb or glued end that it comes with: what it meets has the other. */
export type BoughtEnd = Pick<End, 'size' | 'system' | 'sex'> & { readonly way: 'thread' | 'barb' | 'socket' };

interface Common {
  readonly key: string;
  readonly group: Group;
  /** Keys of the pieces that it is; none for what is used up, kept ready or only lent. */
  readonly pieces: readonly string[];
  /** Keys of the parts that show them on the drawing. */
  readonly parts: readonly string[];
  readonly count: number;
  readonly size: string | null;
  readonly material: string | null;
  readonly ends: readonly BoughtEnd[];
  /** Each length that is cut from it, from the top down. */
  readonly cuts: readonly Metres[];
  /** What to buy of it: what is cut, and what a cut more or a joint done again takes. Null where nobody knows, or it is not cut. */
  readonly buy: Metres | null;
  /** Depth of the highest of them; null where it has none. */
  readonly depth: Metres | null;
  /** It rests on a choice that nobody made. */
  readonly assumed: boolean;
  /** Which of its values do; `note`: one of its numbers. */
  readonly rests: Readonly<Record<'size' | 'material' | 'cut' | 'note', boolean>>;
}

export type PartLine = {
  [Kind in What]: Common & { readonly what: Kind; readonly numbers: NumbersOf<Kind> };
}[What];
