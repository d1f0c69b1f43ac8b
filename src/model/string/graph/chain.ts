/** What stands on what along the water, from the top of the well down to the motor. */
import type { Solved } from '../../solution.ts';
import { TOP_BUSHING } from './fittings.ts';
import { SPOOL, type Bare } from './pieces.ts';

const AT_THE_TOP = [
  SPOOL,
  TOP_BUSHING,
  'plug',
  'tee',
  'nipple/top',
  'coupling/top',
  'nipple/seal',
  'insertFitting/top',
];
/** The fitting at the pipe's lower end, over the valve or the nipple. */
const TO_PUMP = 'insertFitting/pump';
const ON_THE_PUMP = ['nipple', 'bushing', 'pump', 'intake', 'motor'];

/** Pieces of the chain, from the top down. */
export function chainOf(pieces: readonly Bare[], { parts }: Pick<Solved, 'parts'>): readonly Bare[] {
  const byKey = new Map(pieces.map((piece) => [piece.key, piece]));
  const named = (keys: readonly string[]): readonly Bare[] => keys.flatMap((key) => byKey.get(key) ?? []);
  const pipe = pieces
    .filter(
      ({ kind, key }) => kind === 'dropPipe' || (kind === 'coupling' && key !== 'coupling/top') || key === TO_PUMP,
    )
    .map((piece) => ({ at: middle(piece), pieces: [piece] }));
  const valves = parts
    .filter(({ kind }) => kind === 'checkValve')
    .map(({ key, ...valve }) => ({ at: middle(valve), pieces: named(withFittings(key)) }));
  const between = [...pipe, ...valves].sort((a, b) => a.at - b.at).flatMap((each) => each.pieces);
  return [...named(AT_THE_TOP), ...between, ...named(ON_THE_PUMP)];
}

/** A valve with the fittings that the pipe is pushed on; one on the pump's nipple has none of its own. */
function withFittings(key: string): readonly string[] {
  return [`insertFitting/${key}/above`, key, `insertFitting/${key}/below`];
}

function middle({ top, bottom }: Pick<Bare, 'top' | 'bottom'>): number {
  return (top + bottom) / 2;
}
