/** The threads at the two ends of the string: in the pump's outlet, and in the adapter that it hangs on. */
import type { Facts } from '../facts.ts';
import { threadSystem } from '../tables/pipes.ts';
import { systemSaid, threadSize, type ThreadSystem } from '../tables/threadSizes.ts';

export type StringEnd = 'pump' | 'adapter';

export interface EndThread {
  /** "1-1/4 in"; as it was written, where that tells no thread. */
  readonly size: string;
  readonly system: ThreadSystem | null;
  /** Of the pipe and its fittings, which it meets. */
  readonly pipe: { readonly size: string; readonly system: ThreadSystem | null };
  /** A piece between them takes the one to the other. */
  readonly differs: boolean;
}

/** Where nobody said its system it is that of the pipe; where nobody said an adapter's thread at all, so is its size. */
export function threadAt(end: StringEnd, facts: Facts): EndThread {
  const { dropPipe } = facts;
  const own = { size: sized(dropPipe.nominalSize), system: threadSystem(dropPipe) };
  const said = writtenAt(end, facts);
  if (said === null) return { ...own, pipe: own, differs: false };
  const [size, system] = [sized(said), systemSaid(said) ?? own.system];
  // Two names that tell no thread cannot be told apart by one piece between them.
  const sizes = threadSize(said) !== null && threadSize(dropPipe.nominalSize) !== null && size !== own.size;
  return { size, system, pipe: own, differs: sizes || systemsDiffer(system, own.system) };
}

/** What somebody wrote of it; null for an adapter that suits the pipe, and under a seal, where there is none. */
export function writtenAt(end: StringEnd, { pump, top }: Facts): string | null {
  if (end === 'pump') return pump.outlet;
  return top.kind === 'pitless' ? top.thread : null;
}

/** Pipe whose fittings come in either goes with both. */
export function systemsDiffer(one: ThreadSystem | null, other: ThreadSystem | null): boolean {
  return one !== null && other !== null && one !== other;
}

function sized(name: string): string {
  return threadSize(name) ?? name;
}

/** The threads of the piece between, by their names; null where the one goes straight into the other. */
export function takenFrom(end: StringEnd, facts: Facts): { readonly from: string; readonly to: string } | null {
  const { size, system, pipe, differs } = threadAt(end, facts);
  if (!differs) return null;
  const named = (name: string, of: ThreadSystem | null): string =>
    systemsDiffer(system, pipe.system) && of !== null ? `${name} ${of}` : name;
  return { from: named(size, system), to: named(pipe.size, pipe.system) };
}
