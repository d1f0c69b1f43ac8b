/**
 * Which parts of a drawn well are seen: asked after all is laid out, so that windows, scales and labels stand still while
 * parts come and go, as they do from one step of building to the next.
 */
import type { Solution } from '../model/solution.ts';
import { kindOfKey } from './keys.ts';
import type { Shape } from './scene.ts';

/** Ringed; pale, as what is there already; left out. */
export type Showing = 'lit' | 'ghosted' | 'absent';

/** By key of a part ("clamp/pump/1") or by kind ("clamp"); a part's own key counts before its kind. What is not named is shown. */
export type Pieces = Readonly<Record<string, Showing>>;

export function showingOf(key: string, pieces: Pieces | undefined): Showing | undefined {
  return pieces === undefined ? undefined : (pieces[key] ?? pieces[kindOfKey(key)]);
}

/** Shapes that stand for parts of other names, by their key in the drawing, or by the key of what they are a shape of. */
const STANDS_FOR: Readonly<Record<string, readonly string[]>> = {
  ties: ['tie'],
  pumpBody: ['pump', 'motor', 'intake'],
  neck: ['insertFitting/top', 'nipple/seal'],
  standpipe: ['tee', 'plug', 'nipple/top'],
  spareLoop: ['cable'],
  cableThroughSeal: ['cable'],
  'probe/wires': ['probe'],
  vent: ['seal'],
  restoredGrout: ['pitlessAdapter'],
  toTank: ['tank'],
  toHouse: ['shutOff'],
  'wires/supply': ['disconnect'],
  'wires/toSwitch': ['disconnect'],
  'wires/fromSwitch': ['disconnect'],
  'wires/toWell': ['conduit'],
};

/** Groups of a scene that hold nothing but parts, or groups of them. */
const OF_PARTS: ReadonlySet<string> = new Set(['well', 'house', 'string', 'topWorks', 'slimPump', 'atHouse']);

/** How much of a ghost is left. */
const GHOST = 0.22;

/** @param shapes  of a whole scene or of one frame */
export function showPieces(shapes: readonly Shape[], { parts }: Solution, pieces: Pieces): Shape[] {
  const known = new Set(parts.flatMap(({ key, kind }) => [key, kind as string]));
  const inGroup = (shape: Shape): Shape[] => {
    if (OF_PARTS.has(shape.key)) return [within(shape, inGroup)];
    const named = [shape.key, shape.key.slice(0, Math.max(0, shape.key.lastIndexOf('/')))];
    const stands = named
      .map((key) => STANDS_FOR[key] ?? [key])
      .map((keys) => keys.filter((key) => known.has(key)))
      .find((keys) => keys.length > 0);
    if (stands === undefined) return [shape];
    const showings = stands.map((key) => showingOf(key, pieces));
    // What stands for several is there while one of them is.
    if (showings.some((each) => each === undefined || each === 'lit')) return [shape];
    return showings.includes('ghosted') ? [{ ...shape, attrs: { ...shape.attrs, opacity: GHOST } }] : [];
  };
  const inScene = (shape: Shape): Shape =>
    OF_PARTS.has(shape.key)
      ? within(shape, inGroup)
      : shape.tag === 'svg'
        ? within(shape, (each) => [inScene(each)])
        : shape;
  return shapes.map(inScene);
}

function within(shape: Shape, each: (child: Shape) => Shape[]): Shape {
  return { ...shape, children: (shape.children ?? []).flatMap(each) };
}

/** What is not there does not answer to the pointer. */
export function hitsShown<Hit extends { readonly part: string }>(hits: readonly Hit[], pieces: Pieces): Hit[] {
  return hits.filter(({ part }) => showingOf(part, pieces) !== 'absent');
}
