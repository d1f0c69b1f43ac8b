/** All that a plan takes: every piece of its string on just one line, then what is used up, spares and tools. */
import type { Metres } from '../si.ts';
import { graphOf, SPOOL } from '../string/graph/graph.ts';
import { isAtHouse } from '../string/graph/fittings.ts';
import type { Joint, Piece, PieceKind, StringGraph } from '../string/graph/piece.ts';
import { orderOfWork } from '../work/orderOfWork.ts';
import type { Kind } from '../work/step.ts';
import { assumedPaths } from '../rules/assumed.ts';
import type { PartKind, Solved } from '../solution.ts';
import { isInHouse } from '../string/houseKinds.ts';
import { isOfLine, SOLD, type Sold } from './soldAs.ts';
import type { BoughtEnd, Group, PartLine } from './partLine.ts';
import { SUPPLIES, type Asked } from './supplies.ts';

export type PartsList =
  /** Not for owners: what is hung there a licensed contractor decides. */
  | { readonly kind: 'stop'; readonly why: 'flowing' | 'inPit' }
  | { readonly kind: Kind; readonly lines: readonly PartLine[] };

/**
 * @param work  by default as `orderOfWork` takes it; what stands there already is on no line
 */
export function partsList(solved: Solved, work?: Kind): PartsList {
  const done = orderOfWork(solved, work);
  if (done.kind === 'stop') return done;
  const graph = graphOf(solved);
  const asked: Asked = { solved, graph, work: done.kind };
  const there = new Set(done.there);
  return { kind: done.kind, lines: [...pieceLines(asked, there), ...supplyLines(asked)] };
}

const GROUPS: readonly Group[] = ['well', 'line', 'wires', 'house', 'usedUp', 'spares', 'tools'];

function pieceLines({ solved, graph }: Asked, there: ReadonlySet<string>): readonly PartLine[] {
  const lines = new Map<string, { readonly group: Group; readonly sold: Sold; readonly pieces: Piece[] }>();
  for (const piece of graph.pieces) {
    const sold = SOLD[piece.kind] as Sold | null;
    if (sold === null || there.has(piece.key) || isLead(piece)) continue;
    const name = nameOf(piece, sold, graph);
    const line = lines.get(name) ?? { group: groupOf(piece, sold), sold, pieces: [] };
    line.pieces.push(piece);
    lines.set(name, line);
  }
  return [...lines.entries()]
    .map(([key, line]) => lineOf(key, line, solved, graph))
    .sort((a, b) => GROUPS.indexOf(a.group) - GROUPS.indexOf(b.group) || (a.depth ?? 0) - (b.depth ?? 0));
}

/** Pieces of one name are one line: what is cut off one coil, or what is the same in size, material and ends. */
function nameOf({ kind, key, size, material }: Piece, { cut: isCut }: Sold, graph: StringGraph): string {
  // An adapter is bought whole: its sliding half is on the line of its body, or alone where the body stays.
  const place = isOfLine(key) ? 'line' : '';
  const ends = isCut === true || WITHOUT_ENDS.has(kind) ? [] : endsOf([key], graph);
  return [kind, place, size, material, ...ends.map((end) => Object.values(end).join(' '))].filter(Boolean).join(', ');
}

const WITHOUT_ENDS: ReadonlySet<PieceKind> = new Set(['clamp', 'pitlessAdapter']);

/** The motor's own, which comes with it. */
export function isLead({ kind, cut }: Pick<Piece, 'kind' | 'cut'>): boolean {
  return kind === 'cable' && cut === null;
}

function groupOf({ key }: Piece, { group }: Sold): Group {
  return isOfLine(key) ? 'line' : group;
}

function lineOf(
  key: string,
  { group, sold, pieces }: { readonly group: Group; readonly sold: Sold; readonly pieces: readonly Piece[] },
  solved: Solved,
  graph: StringGraph,
): PartLine {
  const [first] = pieces;
  if (first === undefined) throw new Error(`partsList: nothing on the line "${key}"`);
  const { kind, size, material } = first;
  const cuts = pieces.flatMap(({ cut }) => cut ?? []);
  const whole = sum(cuts);
  const assumedOf = assumedPaths(solved);
  // Clamps of the line go round another pipe than those in the well.
  const from = (sold.from ?? []).map((path) => (isOfLine(first.key) ? path.replace('dropPipe', 'house.line') : path));
  const note = from.some((path) => assumedOf.has(path));
  const isWhole = sold.cut === true && cuts.length === pieces.length;
  return {
    key,
    what: kind,
    group,
    pieces: pieces.map((each) => each.key),
    parts: [...new Set(pieces.map(({ part }) => part))],
    count: countOf(kind, pieces),
    size,
    material,
    ends: endsOf(
      pieces.map((each) => each.key),
      graph,
    ),
    cuts,
    buy: isWhole ? whole + (sold.more?.(whole, pieces.length, solved) ?? 0) : null,
    depth: least(pieces.filter((piece) => !standsInHouse(piece)).map(({ top }) => top)),
    numbers: sold.numbers?.(solved, first) ?? {},
    assumed: note || pieces.some(({ assumed }) => assumed.size || assumed.material || assumed.cut || assumed.count),
    rests: {
      note,
      size: pieces.some(({ assumed }) => assumed.size),
      material: pieces.some(({ assumed }) => assumed.material),
      cut: pieces.some(({ assumed }) => assumed.cut),
    },
  } as PartLine;
}

/** It is at no depth of the well. */
function standsInHouse({ kind, key }: Piece): boolean {
  return isInHouse(kind as PartKind) || kind === 'elbow' || kind === 'relay' || isAtHouse(key);
}

function least(depths: readonly Metres[]): Metres | null {
  return depths.length === 0 ? null : Math.min(...depths);
}

/** A splice of four wires is one kit; body and sliding half are one adapter. */
function countOf(kind: PieceKind, pieces: readonly Piece[]): number {
  return kind === 'pitlessAdapter' && pieces.some(({ key }) => key === SPOOL) ? 1 : pieces.length;
}

const BOUGHT: ReadonlySet<Joint['way']['by']> = new Set(['thread', 'barb', 'socket']);

/** Threads, barbs and glued ends that pieces come with: none told twice. */
function endsOf(keys: readonly string[], { joints }: StringGraph): readonly BoughtEnd[] {
  const found = new Map<string, BoughtEnd>();
  for (const { a, b, way } of joints) {
    if (!BOUGHT.has(way.by)) continue;
    for (const { piece, size, system, sex } of [a, b]) {
      if (!keys.includes(piece)) continue;
      const end = { way: way.by, size, system, sex } as BoughtEnd;
      found.set(Object.values(end).join(' '), end);
    }
  }
  return [...found.entries()].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, end]) => end);
}

function sum(values: readonly Metres[]): Metres {
  return values.reduce((all, one) => all + one, 0);
}

function supplyLines(asked: Asked): readonly PartLine[] {
  const lines = Object.entries(SUPPLIES).flatMap(([what, { group, of }]): readonly PartLine[] => {
    const found = of(asked);
    if (found === null) return [];
    const none = { pieces: [], parts: [], size: null, material: null, ends: [], cuts: [], buy: null, depth: null };
    const said = { assumed: false, rests: { size: false, material: false, cut: false, note: false } };
    return [{ key: what, what, group, ...found, ...none, ...said } as unknown as PartLine];
  });
  return lines.sort((a, b) => GROUPS.indexOf(a.group) - GROUPS.indexOf(b.group));
}

/** From the top of the well down; what has no depth keeps its place at the end. */
export function byDepth(lines: readonly PartLine[]): readonly PartLine[] {
  return lines.toSorted((a, b) => (a.depth ?? Infinity) - (b.depth ?? Infinity) || 0);
}
