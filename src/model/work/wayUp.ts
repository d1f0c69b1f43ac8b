/** The string from the pump up, as it goes into the well: one pipe after the other, and what comes on beside it. */
import type { Metres } from '../si.ts';
import type { Piece } from '../string/graph/piece.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import type { Job } from './making.ts';

/** A length of pipe, with what joins it to the one below it. */
export interface Length {
  /** Over the discharge: where its lower joint is. */
  readonly height: Metres;
  readonly joint: readonly string[];
  readonly pipe: string;
  /** A valve is in the joint. */
  readonly valve: string | null;
}

/** One thing beside the pipe. */
export interface Beside {
  readonly height: Metres;
  readonly key: string;
}

export interface WayUp {
  /** The length on the pump; null for a pump that hangs in its own top works. */
  readonly first: Length | null;
  /** From the lowest up. */
  readonly further: readonly Length[];
  readonly splices: readonly Beside[];
  readonly ties: readonly Beside[];
  readonly guards: readonly Beside[];
  readonly probe: Beside | null;
  /** A joint over the highest pipe: of a plan that has a valve where its pipe should hang. */
  readonly above: readonly string[];
}

export function wayUp({ solved, pieces }: Job): WayUp {
  const discharge = dischargeDepth(solved.facts.pump);
  const { graph } = pieces;
  const up = graph.chain.toReversed();
  const lengths: (Length & { readonly joint: string[] })[] = [];
  let joint: string[] = [];
  let height: Metres = 0;
  let valve: string | null = null;
  for (const [i, key] of up.entries()) {
    const { kind, top, bottom } = pieces.piece(key);
    if (kind === 'dropPipe') {
      lengths.push({ height, joint, pipe: key, valve });
      [joint, height, valve] = [[], 0, null];
    } else if (OF_A_JOINT.has(kind) && !ATOP.test(key) && !AT_PUMP.has(key) && up[i - 1] !== 'nipple') {
      if (joint.length === 0) height = discharge - (top + bottom) / 2;
      if (kind === 'checkValve') valve = key;
      joint.push(...(kind === 'insertFitting' ? pieces.withClamps(key.replace(/^insertFitting\//, ''), key) : [key]));
    }
  }
  const beside = (kind: 'splice' | 'tie' | 'guard' | 'probe'): readonly Beside[] =>
    graph.pieces
      .filter((piece) => piece.kind === kind)
      .map(({ key, top, bottom }) => ({ key, height: discharge - (top + bottom) / 2 }))
      // Of two at one height the graph has the upper first.
      .toReversed()
      .sort((a, b) => a.height - b.height);
  // It is slid over the pipe that it sits on, before that pipe is joined.
  const arrestor = graph.pieces.find(({ kind }) => kind === 'torqueArrestor');
  const on =
    lengths.find(({ pipe }) => arrestor !== undefined && surrounds(pieces.piece(pipe), arrestor)) ?? lengths[0];
  if (arrestor !== undefined) on?.joint.push(arrestor.key);
  const [first = null, ...further] = lengths;
  return {
    first,
    further,
    splices: beside('splice'),
    ties: beside('tie'),
    guards: beside('guard'),
    probe: beside('probe')[0] ?? null,
    above: joint,
  };
}

function surrounds(pipe: Piece, { top, bottom }: Piece): boolean {
  const middle = (top + bottom) / 2;
  return pipe.top <= middle && middle <= pipe.bottom;
}

const OF_A_JOINT: ReadonlySet<string> = new Set(['coupling', 'checkValve', 'insertFitting']);
/** What stands on the pump itself. */
const AT_PUMP: ReadonlySet<string> = new Set(['coupling/pump', 'insertFitting/pump']);
/** The joint that the string hangs on, and the collar on a seal. */
const ATOP = /\/top$/;
