/** Every place where two pieces are held together. */
import type { Facts, PipeFacts } from '../../facts.ts';
import type { Metres } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { isBarbed, isBuriedOnBarbs, PIPE_MATERIALS } from '../../tables/pipeMaterials.ts';
import { threadSystem } from '../../tables/pipes.ts';
import { threadSize } from '../../tables/threadSizes.ts';
import { COUPLING, FITTING_BARB } from '../lengths.ts';
import { threadAt } from '../threads.ts';
import { isLineEnd, lineEnd } from './fittings.ts';
import { KINDS } from './kinds.ts';
import { loadsOf } from './loads.ts';
import type { End, Joint, PieceKind, Seal, Way } from './piece.ts';
import { OUTER_CASING, SAME, SPOOL, type Bare } from './pieces.ts';

type Draft = Omit<Joint, 'a' | 'b' | 'load' | 'takesUp'> & {
  readonly a: Bare;
  readonly b: Bare;
  /** Over which they stand in one another; null: beside one another. */
  readonly takesUp: Metres | null;
  /** Depth from which on the string hangs on it; null beside the way of the load. */
  readonly bears: Metres | null;
};

export function jointsOf(solved: Solved, pieces: readonly Bare[], chain: readonly Bare[]): readonly Joint[] {
  const loads = loadsOf(solved);
  const drafts = [
    ...chain.slice(1).flatMap((below, i) => alongChain(chain[i], below, solved)),
    ...atTheTop(solved, pieces, chain),
    ...onOthers(pieces),
    ...lineJoints(solved, pieces),
    ...cableJoints(solved, pieces),
    ...ropeJoints(solved, pieces),
  ];
  return drafts.map(({ a, b, bears, takesUp, ...rest }) => ({
    a: endOf(a, b, rest.way, solved),
    b: endOf(b, a, rest.way, solved),
    ...rest,
    takesUp: takesUp ?? 0,
    load: bears === null ? null : loads(bears),
  }));
}

/** One in the next along the water; none where a plan that hangs its pump too high leaves them beside or in one another. */
function alongChain(above: Bare | undefined, below: Bare, solved: Solved): readonly Draft[] {
  if (above === undefined) return [];
  const way = wayBetween(above, below, solved);
  const takesUp = above.bottom - below.top;
  if (way === null || takesUp < -SAME || takesUp > mostTakenUp(above, below, way) + SAME) return [];
  const seal = sealOf(way);
  // Over the collar on a seal everything stands; from it down everything hangs.
  const stands = above.kind === 'plug' || above.kind === 'tee' || above.key === 'nipple/top';
  if (stands) return [{ a: below, b: above, way, seal, takesUp, first: 'a', bears: null }];
  const bears = way.by === 'bolts' ? null : below.top;
  // The string is put together from the pump up.
  return [{ a: above, b: below, way, seal, takesUp, first: 'b', bears }];
}

function wayBetween(above: Bare, below: Bare, { facts }: Solved): Way | null {
  const { fittings, clampsPerJoint: clamps } = facts.string;
  if (below.kind === 'intake' || below.kind === 'motor') return { by: 'bolts' };
  const kinds = [above.kind, below.kind];
  const [fits, pipes] = [kinds.includes('insertFitting'), kinds.includes('dropPipe')];
  if (fits && pipes) return { by: 'barb', fittings, clamps };
  if (above.kind === below.kind) return null;
  // Pipe that goes over barbs has no thread of its own.
  return pipes && isBarbed(facts.dropPipe) ? null : { by: 'thread' };
}

/** A barb, a collar: else they meet face to face, and a thread's turn is in no length. */
function mostTakenUp(above: Bare, below: Bare, { by }: Way): Metres {
  if (by === 'barb') return FITTING_BARB;
  return above.kind === 'coupling' || below.kind === 'coupling' ? COUPLING : 0;
}

function sealOf({ by }: Way): Seal {
  return by === 'thread' ? 'thread sealant' : by === 'barb' ? 'clamps' : by === 'socket' ? 'cement' : null;
}

/** What stands in the well and bears the string. */
function atTheTop({ facts }: Solved, pieces: readonly Bare[], chain: readonly Bare[]): readonly Draft[] {
  const find = (key: string): Bare | undefined => pieces.find((piece) => piece.key === key);
  const [casing, adapter, spool, seal, collar] = [OUTER_CASING, 'pitlessAdapter', SPOOL, 'seal', 'coupling/top'].map(
    find,
  );
  const drafts: Draft[] = [];
  const bear = (a: Bare | undefined, b: Bare | undefined, way: Way, sealing: Seal): void => {
    if (a === undefined || b === undefined) return;
    drafts.push({ a, b, way, seal: sealing, takesUp: null, first: 'a', bears: -facts.well.casingHeight });
  };
  bear(casing, adapter, { by: 'bolts' }, 'gasket');
  bear(adapter, spool, { by: 'slide' }, 'ring');
  bear(casing, seal, { by: 'rest' }, 'gasket');
  bear(seal, collar, { by: 'rest' }, null);
  const cable = find('cable');
  if (seal !== undefined && cable !== undefined)
    drafts.push({ a: seal, b: cable, way: { by: 'slide' }, seal: 'ring', takesUp: null, first: 'b', bears: null });
  const through = collar === undefined ? undefined : chain[chain.indexOf(collar) + 1];
  if (seal !== undefined && through !== undefined) {
    // It is slid over before the collar comes on.
    drafts.push({ a: seal, b: through, way: { by: 'slide' }, seal: 'ring', takesUp: null, first: 'b', bears: null });
  }
  return drafts;
}

/** What is fastened to something beside or over it. */
function onOthers(pieces: readonly Bare[]): readonly Draft[] {
  return pieces.flatMap((piece) => {
    const { on = [], by = null, seal = null } = KINDS[piece.kind] ?? {};
    // The line's own clamps are joined with it, whatever hangs in the well at their depth.
    if (by === null || piece.key.startsWith(LINE_CLAMP)) return [];
    return on.flatMap((kinds): readonly Draft[] => {
      const host = hostOf(piece, kinds, pieces);
      if (host === undefined) return [];
      return [{ a: host, b: piece, way: by, seal: seal ?? sealOf(by), takesUp: null, first: 'a', bears: null }];
    });
  });
}

/** From what the line leaves to the elbow under the riser: at either end a fitting, where the line has no thread. */
function lineJoints({ facts }: Solved, pieces: readonly Bare[]): readonly Draft[] {
  const find = (key: string): Bare | undefined => pieces.find((piece) => piece.key === key);
  const line = find('buriedLine');
  if (line === undefined) return [];
  const top = find('pitlessAdapter') ?? find('tee');
  const bushing = find(lineEnd('bushing'));
  const onTo = lineWay(facts.house.line ?? facts.dropPipe, facts);
  const draft = (a: Bare, b: Bare, way: Way, first: Joint['first'] = 'a'): Draft => ({
    ...{ a, b, way },
    ...{ seal: sealOf(way), takesUp: null, first, bears: null },
  });
  const end = (name: string, beside: Bare | undefined): readonly Draft[] => {
    const fitting = find(lineEnd(name));
    if (fitting === undefined) return beside === undefined ? [] : [draft(beside, line, THREAD)];
    const thread = beside === undefined ? [] : [draft(beside, fitting, THREAD)];
    const clamps = pieces.filter(({ kind, key }) => kind === 'clamp' && key.startsWith(`${LINE_CLAMP}${name}/`));
    return [
      ...thread,
      // From the well on: in the house the line is there, and the fitting comes on its end.
      draft(fitting, line, onTo, name === 'house' ? 'b' : 'a'),
      ...clamps.flatMap((clamp) => [draft(fitting, clamp, CLAMP), draft(line, clamp, CLAMP)]),
    ];
  };
  const elbow = find('elbow');
  const house = find(lineEnd('house'));
  const turned = elbow === undefined ? [] : [draft(house ?? line, elbow, THREAD)];
  const reduced = top === undefined || bushing === undefined ? [] : [draft(top, bushing, THREAD)];
  return [
    ...reduced,
    ...end('well', bushing ?? top),
    ...(house === undefined ? [] : end('house', undefined)),
    ...turned,
  ];
}

const LINE_CLAMP = 'clamp/line/';
const THREAD: Way = { by: 'thread' };
const CLAMP: Way = { by: 'clamp' };

function lineWay(pipe: Pick<PipeFacts, 'material'>, { string }: Solved['facts']): Way {
  if (isBuriedOnBarbs(pipe)) return { by: 'barb', fittings: string.fittings, clamps: string.clampsPerJoint };
  return PIPE_MATERIALS[pipe.material].buried === 'socket' ? { by: 'socket' } : THREAD;
}

/** Of the first kind that is there. */
function hostOf(piece: Bare, kinds: readonly PieceKind[], pieces: readonly Bare[]): Bare | undefined {
  for (const kind of kinds) {
    const all = pieces.filter((each) => each.kind === kind && each.key !== SPOOL && !isLineEnd(each.key));
    if (all.length === 0) continue;
    // What a house's wires lead to is on the cable's upper end.
    if (!CUT.has(kind) || KINDS[piece.kind]?.by?.by === 'wires') return all[0];
    const middle = (piece.top + piece.bottom) / 2;
    return all.find(({ top, bottom }) => top - SAME <= middle && middle <= bottom + SAME);
  }
  return undefined;
}

/** Of these there are many, and a part is on the one at its own depth or on none. */
const CUT: ReadonlySet<PieceKind> = new Set(['dropPipe', 'cable', 'insertFitting']);

function cableJoints({ facts }: Solved, pieces: readonly Bare[]): readonly Draft[] {
  const cable = pieces.filter(({ kind }) => kind === 'cable');
  const motor = pieces.find(({ kind }) => kind === 'motor');
  const splices = pieces.filter(({ kind }) => kind === 'splice').toSorted((a, b) => a.top - b.top);
  const way: Way = { by: 'splice', conductors: facts.pump.wires + 1 };
  const beside = { way, seal: 'wrapping', takesUp: null, first: 'a', bears: null } as const;
  const spliced = splices.flatMap((splice, i): Draft[] =>
    [cable[i], cable[i + 1]].flatMap((a) => (a === undefined ? [] : [{ a, b: splice, ...beside }])),
  );
  const atTop = pieces.find(({ kind }) => kind === 'capSplice');
  const onward = pieces.find(({ kind }) => kind === 'houseCable');
  const first = cable[0];
  for (const a of atTop === undefined ? [] : [first, onward])
    if (a !== undefined && atTop !== undefined) spliced.push({ a, b: atTop, ...beside });
  // Over a seal they meet in a box beside it.
  if (atTop === undefined && first !== undefined && onward !== undefined)
    spliced.push({ ...beside, a: first, b: onward, seal: null });
  const lead = cable.at(-1);
  if (motor === undefined || lead === undefined) return spliced;
  return [...spliced, { ...beside, a: motor, b: lead, way: { by: 'plug' }, seal: 'gasket' }];
}

/** Slack: it bears nothing until the string is lost. */
function ropeJoints({ facts }: Solved, pieces: readonly Bare[]): readonly Draft[] {
  const find = (key: string): Bare | undefined => pieces.find((piece) => piece.key === key);
  const rope = find('rope');
  if (rope === undefined || facts.rope === null) return [];
  const knot = { way: { by: 'knot' }, seal: null, takesUp: null, bears: null } as const;
  const pump = find('pump');
  const { tied } = facts.rope;
  // Under a seal its eye takes the place of a hook in the casing and of a cap.
  const above = tied === 'loose' ? undefined : (find('seal') ?? find(tied === 'casing hook' ? OUTER_CASING : 'cap'));
  return [
    ...(pump === undefined ? [] : [{ a: pump, b: rope, first: 'a', ...knot } as const]),
    ...(above === undefined
      ? []
      : [{ a: above, b: rope, first: above.key === OUTER_CASING ? 'a' : 'b', ...knot } as const]),
  ];
}

/** The thread at the pump is that of its outlet, one at the adapter that of its sliding half, all between that of the pipe. */
function endOf(piece: Bare, mate: Bare, { by }: Way, { facts }: Solved): End {
  const inLine = inHouse(piece) || inHouse(mate);
  const own = inLine ? (facts.house.line ?? facts.dropPipe) : facts.dropPipe;
  const none = { piece: piece.key, size: own.nominalSize, system: null, sex: null };
  if (by === 'barb') return { ...none, sex: isFitting(piece) ? 'male' : 'female' };
  if (by === 'socket') return none;
  if (by !== 'thread') return { ...none, size: piece.size };
  const { size, system } = threadBetween(piece, mate, facts);
  return { piece: piece.key, size, system, sex: sexOf(piece, mate) };
}

function threadBetween(piece: Bare, mate: Bare, facts: Facts): Pick<End, 'size' | 'system'> {
  const pipe = inHouse(piece) && inHouse(mate) ? (facts.house.line ?? facts.dropPipe) : facts.dropPipe;
  if (isPort(piece, mate)) return { size: null, system: threadSystem(pipe) };
  const ends = [piece, mate];
  if (ends.some(({ kind }) => kind === 'pump')) return threadAt('pump', facts);
  // The line leaves it by a thread as wide as the one that the string hangs on.
  if (ends.some(({ kind }) => kind === 'pitlessAdapter')) return threadAt('adapter', facts);
  return { size: threadSize(pipe.nominalSize) ?? pipe.nominalSize, system: threadSystem(pipe) };
}

/** Ports of a tank tee, a tap and a valve come in sizes and threads of their own: no plan tells them. */
function isPort(piece: Bare, mate: Bare): boolean {
  return PORTS.has(piece.kind) || PORTS.has(mate.kind);
}

const PORTS: ReadonlySet<PieceKind> = new Set([
  'gauge',
  'switch',
  'drain',
  'reliefValve',
  'reliefPipe',
  'tank',
  'shutOff',
  'tap',
  'union',
]);

function isFitting({ kind }: Bare): boolean {
  return kind === 'insertFitting';
}

function inHouse({ kind, key }: Bare): boolean {
  return KINDS[kind]?.run === 'house' || isLineEnd(key);
}

function sexOf(piece: Bare, mate: Bare): End['sex'] {
  const [own, other] = [piece, mate].map(({ kind }) => KINDS[kind]?.thread);
  // What takes a thread to a smaller one: outside that of what it stands in, inside that of what it takes.
  if (piece.kind === 'bushing') return other === 'female' ? 'male' : 'female';
  if (own !== 'either') return own ?? null;
  return other === 'male' ? 'female' : 'male';
}
