/** The well as it stands at one step of the work: what is built so far, what the step is about, and what is yet to come. */
import type { PlacedPart, Solved } from '../solution.ts';
import { graphOf } from '../string/graph/graph.ts';
import type { Piece } from '../string/graph/piece.ts';
import type { Step, StepId, Work } from './step.ts';

type Told = Exclude<Work, { readonly kind: 'stop' }>;

export interface AtStep {
  /** By key of a part, and by kind where nothing of a kind is there yet. What is not named stands there, ground and water too. */
  readonly pieces: Readonly<Record<string, 'lit' | 'ghosted'>>;
  /** Key or kind of what the step is about while nothing of it is there: where it is to come. */
  readonly sought: string | null;
}

export function atStep(solved: Solved, work: Told, index: number): AtStep {
  const step = work.steps[index];
  if (step === undefined) throw new Error(`atStep: no step ${index}`);
  const pieces = piecesByPart(solved);
  const there = piecesThere(work, index);
  const isThere = (part: PlacedPart): boolean => {
    // A coupling that a valve takes the place of is no piece: it is drawn in the pipe.
    const own = pieces.get(part.key) ?? pieces.get('dropPipe') ?? [];
    return own.some(({ key }) => there.has(key));
  };
  const built = solved.parts.filter(isThere);
  const { lit, sought } = litAt(step, solved, { pieces, built });
  const builtKinds = new Set(built.map(({ kind }) => kind));
  const shown: Record<string, 'lit' | 'ghosted'> = {};
  for (const part of solved.parts) {
    if (lit.has(part.key)) shown[part.key] = 'lit';
    else if (!isThere(part)) {
      shown[part.key] = 'ghosted';
      // One sign may stand for all of a kind.
      if (!builtKinds.has(part.kind)) shown[part.kind] = 'ghosted';
    }
  }
  return { pieces: shown, sought };
}

/** Pieces that a part is drawn from: pipe and cable of many, and none that only comes with it. */
function piecesByPart(solved: Solved): ReadonlyMap<string, readonly Piece[]> {
  const byPart = new Map<string, Piece[]>();
  const kinds = new Map<string, string>(solved.parts.map(({ key, kind }) => [key, kind]));
  for (const piece of graphOf(solved).pieces) {
    if (kinds.get(piece.part) !== piece.kind) continue;
    const own = byPart.get(piece.part);
    if (own === undefined) byPart.set(piece.part, [piece]);
    else own.push(piece);
  }
  return byPart;
}

/** Keys of the pieces that are in their place at a step, those that it puts on included. */
function piecesThere({ kind, steps, there }: Told, index: number): ReadonlySet<string> {
  const now = new Set(there);
  const done = steps.slice(0, index + 1);
  const pulled = done.findIndex(({ id }) => id === 'pull');
  // An old string is in the well until it is pulled. It is drawn as the new one will hang, which is all that is known of it.
  if (kind === 'replace' && (pulled < 0 || pulled === index)) {
    const off = done.slice(0, -1).flatMap(({ id }) => COMES_OFF[id] ?? []);
    for (const key of steps.flatMap(({ puts }) => puts)) if (!off.includes(key)) now.add(key);
  }
  for (const key of done.flatMap(({ puts }) => puts)) now.add(key);
  return now;
}

/** What an old string loses before it is pulled; each is still there at the step that takes it. */
const COMES_OFF: { readonly [Id in StepId]?: readonly string[] } = {
  openTop: ['cap', 'capSplice'],
  unseat: ['seal', 'tee', 'plug', 'nipple/top', 'nipple/seal', 'coupling/top'],
};

interface Built {
  readonly pieces: ReadonlyMap<string, readonly Piece[]>;
  readonly built: readonly PlacedPart[];
}

/** What it puts on; and of what else it is about, what is there. */
function litAt({ puts, about }: Step, { parts }: Solved, { pieces, built }: Built) {
  const isOf = (name: string, { key, kind }: PlacedPart): boolean => key === name || kind === name;
  const on = built.filter((part) => pieces.get(part.key)?.some(({ key }) => puts.includes(key)) === true);
  const looked = about.filter((name) => !on.some((part) => isOf(name, part)));
  const seen = built.filter((part) => looked.some((name) => isOf(name, part)));
  const lit = new Set([...on, ...seen].map(({ key }) => key));
  const sought = lit.size > 0 ? undefined : looked.find((name) => parts.some((part) => isOf(name, part)));
  return { lit, sought: sought ?? null };
}
