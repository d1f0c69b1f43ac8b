/** The placed parts as pieces: pipe cut where valves and couplings stand, cable where it is spliced. */
import { WIRE_LOOP, WIRE_SLACK } from '../../figures/allowances.ts';
import { assumedPaths } from '../../rules/assumed.ts';
import type { Metres } from '../../si.ts';
import type { PlacedPart, Solved } from '../../solution.ts';
import { pipeRun, type Stretch } from '../pipeRun.ts';
import { assumedEnds } from '../placedBy.ts';
import { dischargeDepth, motorHeadDepth } from '../pumpDepths.ts';
import { fieldsOf, KINDS, type KindRow } from './kinds.ts';
import { fittingPlaces, isLineEnd } from './fittings.ts';
import type { Place } from './place.ts';
import type { Piece, PieceValue } from './piece.ts';

/** A piece before its joints are known. */
export type Bare = Omit<Piece, 'holds' | 'after'>;

/** The half of an adapter that the string hangs on; the other is fixed in the wall. */
export const SPOOL = 'pitlessAdapter/spool';
export const OUTER_CASING = 'casing/0';

export function piecesOf(solved: Solved): readonly Bare[] {
  return [...placesOf(solved), ...fittingPlaces(solved), ...casingOf(solved)].flatMap((place) => {
    const row = KINDS[place.kind];
    return row === null ? [] : [pieceOf(place, row, solved)];
  });
}

function placesOf(solved: Solved): Place[] {
  const pipe = pipePlaces(solved);
  return solved.parts.flatMap((part): readonly Place[] => {
    const { key, kind, top, bottom, radius } = part;
    const whole = { key, kind, top, bottom, radius, cut: null, part: key };
    switch (kind) {
      case 'dropPipe':
        return pipe.map(({ part: of, ...piece }) => ({
          ...piece,
          kind,
          radius,
          part: of,
          cut: piece.bottom - piece.top,
        }));
      case 'coupling':
        // One that would stand in a valve is not there: the valve joins the pipe.
        return key === 'coupling/top' ||
          key === 'coupling/pump' ||
          pipe.some((piece) => Math.abs(piece.top - (top + bottom) / 2) < SAME)
          ? [whole]
          : [];
      case 'cable':
        return cablePlaces(solved, part);
      case 'rope':
        return [{ ...whole, cut: solved.values.ropeLength }];
      case 'riser':
        return [{ ...whole, cut: bottom - top }];
      case 'pitlessAdapter':
        return [whole, { ...whole, key: SPOOL }];
      default:
        return [whole];
    }
  });
}

/** Two depths that a rounding parts are one. */
export const SAME: Metres = 1e-6;

type PipePlace = Stretch & { readonly key: string; readonly part: string };

/** From the top down: pieces between valves, each in its sections between couplings. */
function pipePlaces({ facts, parts }: Solved): readonly PipePlace[] {
  const middles = parts
    .filter(({ kind, key }) => kind === 'coupling' && key !== 'coupling/top' && key !== 'coupling/pump')
    .map(({ top, bottom }) => (top + bottom) / 2)
    .sort((a, b) => a - b);
  return pipeRun(facts).pieces.flatMap((piece, i) => {
    const key = pipeKey(i);
    const cuts = middles.filter((depth) => depth > piece.top + SAME && depth < piece.bottom - SAME);
    if (cuts.length === 0) return [{ key, part: 'dropPipe', ...piece }];
    const ends = [piece.top, ...cuts, piece.bottom];
    return ends.slice(1).map((bottom, j) => ({
      key: `${key}${SECTION}${j + 1}`,
      part: 'dropPipe',
      top: ends[j] ?? piece.top,
      bottom,
    }));
  });
}

const SECTION = '/section/';

function pipeKey(index: number): string {
  return index === 0 ? 'dropPipe' : `dropPipe/${index + 1}`;
}

/** The piece between valves that a section belongs to. */
export function wholePipeKey(key: string): string {
  return key.split(SECTION)[0] ?? key;
}

/**
 * From the top down. The lowest is the motor's own lead, which nobody cuts, where a splice ends it; slack is in each piece
 * that is cut, the loop in the highest.
 */
function cablePlaces({ facts }: Solved, { key, kind, top, bottom, radius }: PlacedPart): readonly Place[] {
  const discharge = dischargeDepth(facts.pump);
  const splices = facts.string.splices
    .map((height) => Math.min(Math.max(discharge - height, top), bottom))
    .sort((a, b) => a - b);
  const ends = [top, ...splices, bottom];
  return ends.slice(1).map((end, i) => {
    const from = ends[i] ?? top;
    // It runs down beside the pump to the motor's head; what is cut ends at the discharge.
    const isLead = splices.length > 0 && i === splices.length;
    const cut = isLead ? null : (end - from) * (1 + WIRE_SLACK) + (i === 0 ? WIRE_LOOP : 0);
    return {
      key: i === 0 ? key : `${key}/${i + 1}`,
      kind,
      top: from,
      bottom: isLead ? Math.max(motorHeadDepth(facts.pump), end) : end,
      radius,
      cut,
      part: key,
    };
  });
}

/** What bears the rest is told by the plan, not placed with the string. */
function casingOf({ facts }: Solved): readonly Place[] {
  const outer = facts.well.casings[0];
  if (outer === undefined) return [];
  const { top, bottom, outsideDiameter } = outer;
  return [
    {
      key: OUTER_CASING,
      kind: 'casing',
      top,
      bottom: bottom ?? facts.well.bottom,
      radius: outsideDiameter / 2,
      cut: null,
      part: OUTER_CASING,
    },
  ];
}

function pieceOf(
  { key, kind, top, bottom, radius, cut, part, drawn = part }: Place,
  row: KindRow,
  solved: Solved,
): Bare {
  const { facts, values } = solved;
  // A barb goes into its own pipe, and that of the line may be another than hangs in the well.
  const sized = kind === 'insertFitting' && isLineEnd(key) && facts.house.line !== null ? KINDS.buriedLine : row;
  const of = { facts, values, cut };
  const ends = placeAssumed(solved, part);
  const place = ends.top || ends.bottom;
  const assumed = assumedPaths(solved);
  const rests = (value: PieceValue): boolean =>
    fieldsOf((value === 'size' ? sized : null) ?? row, value).some((path) => assumed.has(path));
  const length = row.cut?.is(of) ?? null;
  const isCutByPlace = cut !== null;
  return {
    key,
    kind,
    part: drawn,
    run: row.run,
    top,
    bottom,
    radius,
    size: sized?.size?.is(of) ?? null,
    material: row.material?.is(of) ?? null,
    mass: row.mass?.is(of) ?? null,
    cut: length,
    count: row.count?.is(of) ?? 1,
    assumed: {
      top: ends.top,
      bottom: ends.bottom,
      size: rests('size'),
      material: rests('material'),
      mass: rests('mass') || (isCutByPlace && place),
      cut: rests('cut') || (isCutByPlace && place),
      count: rests('count'),
    },
  };
}

function placeAssumed(solved: Solved, part: string) {
  const placed = solved.parts.find(({ key }) => key === part);
  if (part !== OUTER_CASING && placed !== undefined) return assumedEnds(solved, placed);
  return { top: assumedPaths(solved).has('well.casing.height'), bottom: false };
}
