/**
 * How finely parts are drawn at a scale, and how a look is kept while the scale wanders: a finer look is taken when the
 * scale has passed its threshold by some way, and left when it has fallen as far below it.
 */
import { kindsWith } from './kinds.ts';
import { feet } from '../model/units.ts';
import type { Metres } from '../model/si.ts';
import type { PartKind, PlacedPart } from '../model/solution.ts';

/** Of a view that shows parts at their own size. */
export interface PartLooks {
  /** The pump's shell is cut open to its stages. */
  readonly pumpOpen: boolean;
  /** A hose clamp's band is as thin as it is. */
  readonly bands: boolean;
}

/** Of a detail: its own scales besides. */
export interface DetailLooks extends PartLooks {
  /** What all widths are enlarged by. */
  readonly widthFactor: number;
  /** From one named tick of its rail to the next, in the reader's unit. */
  readonly tickStep: number;
}

/** Of the section. */
export interface SectionLooks extends PartLooks {
  /** The well stands as in the details, every part cut open. */
  readonly near: boolean;
  /** The pump is drawn to scale, not as a symbol. */
  readonly pump: boolean;
  /** Kinds of small parts that are drawn to scale, not as symbols. */
  readonly toScale: readonly PartKind[];
  /** Every joint of rigid pipe is drawn. */
  readonly joints: boolean;
  /** Of so many ties one is drawn. */
  readonly tieStep: number;
  /** Two that are drawn are no closer than this [px]. */
  readonly tieGap: number;
  /** Keys of the small parts that stand clear of one another; null where none were drawn as symbols. */
  readonly clear: readonly string[] | null;
}

/** As a view showed them last. */
export interface Looks {
  readonly O?: SectionLooks;
  readonly A?: DetailLooks;
  readonly B?: DetailLooks;
  readonly C?: DetailLooks;
  readonly D?: DetailLooks;
}

/** Share of a threshold by which it must be passed, either way: together 15 %. */
const PAST = 0.075;

/**
 * @param size    what the threshold is for, at the scale of now
 * @param before  whether the finer look was shown last; undefined where nothing was
 */
export function isFine(size: number, threshold: number, before: boolean | undefined): boolean {
  return size >= threshold * slack(before);
}

/** What a threshold is multiplied by. */
export function slack(before: boolean | undefined): number {
  return before === undefined ? 1 : before ? 1 - PAST : 1 + PAST;
}

/** Below this height the pump's stages would be a smear: the shell stays closed [px]. */
export const OPEN_PUMP_PX = 34;
/** A clamp's band thinner than this is drawn as a symbol of this height, about the true middle of its joint [px]. */
export const BAND_PX = 3.2;

/** @param down  px per metre of depth */
export function partLooks(parts: readonly PlacedPart[], down: number, before: PartLooks | undefined): PartLooks {
  return {
    pumpOpen: isFine(heightOf(parts, 'pump') * down, OPEN_PUMP_PX, before?.pumpOpen),
    bands: isFine(heightOf(parts, 'clamp') * down, BAND_PX, before?.bands),
  };
}

/** Of the first of a kind; 0 where there is none. */
function heightOf(parts: readonly PlacedPart[], kind: PartKind): Metres {
  for (const part of parts) if (part.kind === kind) return part.bottom - part.top;
  return 0;
}

/** From this scale on a valve is taller than its symbol [px per metre]. */
export const NEAR = 14 / feet(1);
/** The widest that parts cut open are drawn against their depths. */
export const NEAR_FACTOR = 6;
/** A part shorter than this becomes a symbol of this height [px]. */
export const SYMBOL = 10;
/** Closer pitch than this [px] and ties are one texture, so that some are left to the detail. */
export const TIE_PITCH = 12;
/** The same for the joints of rigid pipe, of which all or none are drawn [px]. */
export const JOINT_PITCH = 26;

export const SMALL = kindsWith(({ small }) => small === true);

export interface SectionScale {
  /** px per metre of depth. */
  readonly k: number;
  readonly widthFactor: number;
  /** The window leaves some of the well out. */
  readonly isCut: boolean;
}

/** @param pumpTall  from the pump's discharge to its motor's foot */
export function sectionLooks(
  parts: readonly PlacedPart[],
  pumpTall: Metres,
  { k, widthFactor, isCut }: SectionScale,
  before: SectionLooks | undefined,
): SectionLooks {
  const { pumpOpen, bands } = partLooks(parts, k, before);
  const { tieStep, tieGap } = tiesAt(pitchOf(parts, isTie) * k, before?.tieStep);
  return {
    pumpOpen,
    bands,
    near: isCut && isFine(Math.min(k / NEAR, NEAR_FACTOR / widthFactor), 1, before?.near),
    pump: isFine(pumpTall * k, SYMBOL, before?.pump),
    toScale: [...SMALL].filter((kind) => isFine(heightOf(parts, kind) * k, SYMBOL, before?.toScale.includes(kind))),
    joints: isFine(pitchOf(parts, isJoint) * k, JOINT_PITCH, before?.joints),
    tieStep,
    tieGap,
    clear: before?.clear ?? null,
  };
}

const isJoint = ({ kind, key }: PlacedPart): boolean => kind === 'coupling' && key !== 'coupling/top';
const isTie = ({ kind }: PlacedPart): boolean => kind === 'tie';

/** Between the first two of them; they are numbered from the pump up. */
function pitchOf(parts: readonly PlacedPart[], isOne: (part: PlacedPart) => boolean): Metres {
  let first: PlacedPart | undefined;
  for (const part of parts) {
    if (!isOne(part)) continue;
    if (first !== undefined) return first.top - part.top;
    first = part;
  }
  return Infinity;
}

/** The step stays where a pitch a little closer or a little wider than the least still gives it. */
function tiesAt(pitch: number, before: number | undefined): Pick<SectionLooks, 'tieStep' | 'tieGap'> {
  if (before !== undefined)
    for (const tieGap of [TIE_PITCH, TIE_PITCH * slack(true), TIE_PITCH * slack(false)])
      if (stepOf(tieGap, pitch) === before) return { tieStep: before, tieGap };
  return { tieStep: stepOf(TIE_PITCH, pitch), tieGap: TIE_PITCH };
}

const stepOf = (gap: number, pitch: number): number => (pitch > 0 ? Math.max(1, Math.ceil(gap / pitch)) : 1);
