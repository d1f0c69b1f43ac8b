/** The string as what it is made of: pieces, and the joints that hold them together. */
import type { Facts } from '../../facts.ts';
import type { HangLoads } from '../../figures/hanging.ts';
import type { Kilograms, Metres } from '../../si.ts';
import type { PartKind } from '../../solution.ts';
import type { ThreadSystem } from '../../tables/threadSizes.ts';

/**
 * What no plan places by itself, and what no joint closes without: a bushing in the pump's outlet, fittings at the ends of the
 * line to the house, and the wires that lead away from the well.
 */
export type FittingKind = 'bushing' | 'threadAdapter' | 'elbow' | 'houseCable' | 'probeWires' | 'relay';
export type PieceKind = PartKind | FittingKind;

/** Along what a piece runs; `well`: what stands in the ground and bears the rest. */
export type Run = 'well' | 'water' | 'power' | 'rope' | 'house';

/** The values of a piece that somebody may have said. */
export type PieceValue = 'top' | 'bottom' | 'size' | 'material' | 'mass' | 'cut' | 'count';

export interface Piece {
  /** That of the placed part; of pipe and cable that are cut "dropPipe/2", "dropPipe/section/3", "cable/2" from the top. */
  readonly key: string;
  readonly kind: PieceKind;
  /** Key of the placed part that it is, is cut from, or stands at: what a drawing shows of it. */
  readonly part: string;
  readonly run: Run;
  readonly top: Metres;
  readonly bottom: Metres;
  readonly radius: Metres;
  /** As it is printed on it: "1-1/4 in", "12 AWG". Null where it has no name, or nobody said. */
  readonly size: string | null;
  readonly material: string | null;
  /** Null where no plan and no table tells it. The pump's is that of pump and motor together. */
  readonly mass: Kilograms | null;
  /** Length to cut it to; null for what is not cut. A thread's turn into a fitting is not in it. */
  readonly cut: Metres | null;
  /** How many it stands for: a splice is one joint a conductor. */
  readonly count: number;
  /** What is fastened to it: without it, they would have nothing to hang from. */
  readonly holds: readonly string[];
  /** What is there before it is put on. */
  readonly after: readonly string[];
  /** Of each value whether it rests on a choice that nobody made. */
  readonly assumed: Readonly<Record<PieceValue, boolean>>;
}

/** How two pieces are held together. */
export type Way =
  | { readonly by: 'thread' }
  /** Over the barb of an insert fitting, held by clamps. */
  | { readonly by: 'barb'; readonly fittings: Facts['string']['fittings']; readonly clamps: number }
  /** One glued into the other. */
  | { readonly by: 'socket' }
  /** One slides in the other: the halves of an adapter, a pipe through a seal's rubber. */
  | { readonly by: 'slide' }
  /** One lies on the other by its weight. */
  | { readonly by: 'rest' }
  | { readonly by: 'bolts' }
  | { readonly by: 'clamp' }
  | { readonly by: 'strap' }
  | { readonly by: 'splice'; readonly conductors: number }
  /** At terminals in a box on the wall. */
  | { readonly by: 'wires' }
  /** A cable into the motor's head. */
  | { readonly by: 'plug' }
  | { readonly by: 'knot' };

/** What keeps the water where it belongs. */
export type Seal = 'thread sealant' | 'clamps' | 'cement' | 'ring' | 'gasket' | 'wrapping' | null;

export interface End {
  readonly piece: string;
  readonly size: string | null;
  /** Null where the way has no system, or nobody knows it. */
  readonly system: ThreadSystem | null;
  readonly sex: 'male' | 'female' | null;
}

export interface Joint {
  /** Of what holds. */
  readonly a: End;
  /** Of what is held. */
  readonly b: End;
  readonly way: Way;
  readonly seal: Seal;
  /** Over which one stands in the other: on the way down their lengths add up less this. */
  readonly takesUp: Metres;
  /** Which of them is there before the other comes. */
  readonly first: 'a' | 'b';
  /** What hangs on it. Null beside the way of the load, or where it is not known. */
  readonly load: HangLoads | null;
}

export interface StringGraph {
  readonly pieces: readonly Piece[];
  readonly joints: readonly Joint[];
  /** Keys along the water from the top of the well down to the motor, each in the next. */
  readonly chain: readonly string[];
}
