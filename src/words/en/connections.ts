/** Every joint from the pump to the tank in words: how it is made, sealed and tightened. */
import type { Seal, Way } from '../../model/string/graph/piece.ts';

const ways: { readonly [By in Way['by']]: (way: Extract<Way, { by: By }>) => string } = {
  thread: () => 'screwed together',
  barb: ({ fittings, clamps }) => `pushed over a barb of ${fittings}, ${clamps} ${clamps === 1 ? 'clamp' : 'clamps'}`,
  socket: () => 'glued',
  slide: () => 'slid in',
  rest: () => 'rests on it',
  bolts: () => 'bolted',
  clamp: () => 'clamped',
  strap: () => 'strapped',
  splice: ({ conductors }) => `spliced, ${conductors} wires`,
  wires: () => 'wired',
  plug: () => 'plugged in',
  knot: () => 'tied',
};

const joined: Readonly<Record<Way['by'], string>> = {
  thread: 'Threads',
  barb: 'Barbs',
  socket: 'Glued joints',
  slide: 'What slides in',
  rest: 'What rests on another',
  bolts: 'Bolts',
  clamp: 'Clamps',
  strap: 'Straps',
  splice: 'Splices',
  wires: 'Terminals',
  plug: 'Plugs',
  knot: 'Knots',
};

/** How tight, in words; the maker's own figure goes before them. Turns of metal threads: ASME B1.20.1; the rest common practice, no source. */
const tightness: { readonly [By in Way['by']]: string } = {
  thread: 'Metal: wrench-tight, about three turns past hand-tight. Plastic: one to two turns.',
  barb: 'Pushed all the way on; clamps tight while warm, and again when cold.',
  socket: 'Pushed in with a quarter turn and held; cured as its maker asks.',
  slide: 'All the way down; no force.',
  rest: 'Level; bolts, where it has some, evenly in turn.',
  bolts: 'Evenly, in turn.',
  clamp: 'So that it does not move by hand.',
  strap: 'Snug, a little slack in the cable.',
  splice: 'Each wire by itself; pull on it.',
  wires: 'By a licensed electrician.',
  plug: 'All the way in; its nut as its maker asks.',
  knot: 'Pulled tight, slack above.',
};

const seals: Readonly<Record<NonNullable<Seal>, string>> = {
  'thread sealant': 'tape and paste',
  clamps: 'clamps',
  cement: 'cement',
  ring: 'rubber ring, greased',
  gasket: 'gasket',
  wrapping: 'heat-shrink',
};

/** Pieces that no drawing names. */
const pieces = {
  spool: 'Sliding half of the adapter',
  pitlessAdapter: 'Body of the adapter',
  bushing: 'Bushing',
  threadAdapter: 'Adapter, glued to threaded',
  elbow: 'Elbow',
  houseCable: 'Cable to the house',
  probeWires: 'Wires of the probe',
  relay: 'Dry-run relay',
} as const;

export const connections = {
  title: 'Every joint from the pump to the tank',
  about: 'From the pump up, and on to the tank. The same joint more than once is told once.',
  columns: {
    from: 'One end',
    to: 'Other end',
    way: 'How',
    seal: 'Sealed by',
    tight: 'How tight',
    load: 'Bears at most',
    wrong: 'Wrong with it',
  },
  ways,
  joined,
  tightness,
  seals,
  pieces,
  /** A port of a tank tee, a tap, a valve: no plan tells its thread. */
  ownThread: ', by a thread of its own: measure it',
  /** Between the names of two ends. */
  to: 'to',
  into: (one: string, other: string): string => `${one}, to ${other}`,
  sealedBy: (seal: string): string => `sealed by ${seal}`,
  bears: (load: string): string => `bears up to ${load}`,
} as const;

export type ConnectionWords = typeof connections;
