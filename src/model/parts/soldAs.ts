/** How each kind of piece is bought: one row of one record, which the compiler wants complete. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import type { Piece, PieceKind } from '../string/graph/piece.ts';
import { isLineEnd, TOP_BUSHING } from '../string/graph/fittings.ts';
import { systemsDiffer, threadAt } from '../string/threads.ts';
import { SPOOL } from '../string/graph/pieces.ts';
import { motorHeadDepth } from '../string/pumpDepths.ts';
import { isWider } from '../tables/threadSizes.ts';
import { isBarbed, PIPE_MATERIALS, type PipeJoint } from '../tables/pipeMaterials.ts';
import { RIGID_SECTION } from '../string/lengths.ts';
import { feet } from '../units.ts';
import type { PipeFacts } from '../facts.ts';
import type { Group, LineNumbers, NumbersOf } from './partLine.ts';

type Numbers<Kind extends PieceKind> = Kind extends keyof LineNumbers
  ? { readonly numbers: (solved: Solved, first: Piece) => NumbersOf<Kind> }
  : { readonly numbers?: undefined };

export type Sold<Kind extends PieceKind = PieceKind> = {
  readonly group: Group;
  /** All of it is one line, whatever its pieces' lengths: it is cut from one coil or reel. */
  readonly cut?: boolean;
  /** More than is cut: for a joint done again, what wires are stripped, the rest of a section. Common practice, no source. */
  readonly more?: (cut: Metres, pieces: number, solved: Solved) => Metres;
  /** Fields that its numbers rest on, besides those of its size, its material and its length. */
  readonly from?: readonly string[];
} & Numbers<Kind>;

/** Comes with another: motor, intake and leads with the pump, ground and hole with the well. */
type NotSold = null;

const IN_WELL = { group: 'well' } as const;
const LINE = { group: 'line' } as const;
const WIRES = { group: 'wires' } as const;
const HOUSE = { group: 'house' } as const;

/** A joint of a coil is made again once. */
const ONE_JOINT_MORE = feet(3);
/** A line lies in its trench with some slack. */
const SLACK_IN_TRENCH = 0.02;
/** Stripped at either end of every cable. */
const STRIPPED = feet(1);

const bore = ({ bore: stretches }: Solved): Metres =>
  Math.min(...stretches.map(({ insideRadius }) => insideRadius)) * 2;
const outside = ({ facts }: Solved): Metres => facts.well.casings[0]?.outsideDiameter ?? 0;

function pipe(
  of: PipeFacts & { readonly sectionLength?: Metres | null },
  joined: PipeJoint,
  cutSection: boolean,
): LineNumbers['dropPipe'] {
  const { rating, wallClass, standard } = of;
  const section = joined === 'barb' ? null : (of.sectionLength ?? RIGID_SECTION);
  return { joined, rating, wallClass, standard, section, cutSection };
}

const roundThePipe = (solved: Solved) => ({
  bore: bore(solved),
  pipe: solved.facts.dropPipe.outsideDiameter,
});
const spliced = ({ facts }: Solved) => ({ wires: facts.pump.wires + 1, gauge: facts.wire.gauge });
const started = ({ facts: { pump } }: Solved) => ({ power: pump.power, voltage: pump.voltage });

const wall = (pipe: string): readonly string[] =>
  ['size', 'material', 'standard', 'rating', 'ratio'].map((field) => `${pipe}.${field}`);
const PIPE = wall('dropPipe');
const LINE_PIPE = wall('house.line');
const MOTOR = ['pump.power', 'pump.voltage'];

/** The highest may be an inch or two longer than its section, where no coupling finds room: one more is cut for it. */
function inSections(cut: Metres, pieces: number, section: Metres): Metres {
  return Math.max(pieces, Math.ceil(cut / section - 1e-9)) * section;
}

export const SOLD: { readonly [Kind in PieceKind]: Sold<Kind> | NotSold } = {
  pump: {
    ...IN_WELL,
    from: [...MOTOR, 'pump.phase', 'pump.wires', 'pump.frequency', 'pump.diameter'],
    numbers: ({ facts: { pump } }) => ({
      power: pump.power,
      phase: pump.phase,
      wires: pump.wires,
      voltage: pump.voltage,
      frequency: pump.frequency,
      flow: pump.curve.kind === 'generic' ? pump.curve.flow : null,
      diameter: pump.diameter,
    }),
  },
  motor: null,
  intake: null,
  cableGuardStrip: IN_WELL,
  shroud: { ...IN_WELL, from: ['pump.shroud'], numbers: ({ facts }) => ({ inside: facts.pump.shroudDiameter ?? 0 }) },
  nipple: IN_WELL,
  bushing: {
    ...IN_WELL,
    numbers: ({ facts }, { key }) => {
      // The line's own takes one size to another and nothing else.
      if (isOfLine(key)) {
        const line = (facts.house.line ?? facts.dropPipe).nominalSize;
        return { sizes: true, systems: false, wider: isWider(line, threadAt('adapter', facts).size) };
      }
      const { size, system, pipe } = threadAt(key === TOP_BUSHING ? 'adapter' : 'pump', facts);
      return {
        sizes: size !== pipe.size,
        systems: systemsDiffer(system, pipe.system),
        wider: isWider(pipe.size, size),
      };
    },
  },
  checkValve: IN_WELL,
  flowLimiter: {
    ...IN_WELL,
    numbers: ({ facts }) => ({ flow: typeof facts.pump.flowLimiter === 'number' ? facts.pump.flowLimiter : null }),
  },
  insertFitting: {
    ...IN_WELL,
    numbers: ({ facts }, { key }) => ({
      byInside: (isOfLine(key) ? (facts.house.line ?? facts.dropPipe) : facts.dropPipe).standard === BARBED_STANDARD,
    }),
  },
  clamp: {
    ...IN_WELL,
    from: [...PIPE, 'string.clampsPerJoint', 'string.clampScrew'],
    numbers: ({ facts }, { key }) => ({
      over: (isOfLine(key) ? (facts.house.line ?? facts.dropPipe) : facts.dropPipe).outsideDiameter,
      perJoint: facts.string.clampsPerJoint,
      screw: facts.string.clampScrew,
    }),
  },
  dropPipe: {
    ...IN_WELL,
    from: PIPE,
    cut: true,
    more: (cut, pieces, { facts: { dropPipe } }) =>
      isBarbed(dropPipe) ? ONE_JOINT_MORE : inSections(cut, pieces, dropPipe.sectionLength ?? RIGID_SECTION) - cut,
    numbers: ({ facts, values }) =>
      pipe(facts.dropPipe, PIPE_MATERIALS[facts.dropPipe.material].inWell, isCutSection(facts, values.dropPipeToCut)),
  },
  torqueArrestor: { ...IN_WELL, from: PIPE, numbers: roundThePipe },
  splice: {
    ...WIRES,
    from: ['wire.size', 'string.splices'],
    numbers: (solved, { bottom, top }) => ({
      ...spliced(solved),
      lead: motorHeadDepth(solved.facts.pump) - (top + bottom) / 2,
    }),
  },
  capSplice: { ...WIRES, from: ['wire.size'], numbers: spliced },
  probe: WIRES,
  probeWires: { ...WIRES, cut: true, more: (_, pieces) => 2 * pieces * STRIPPED },
  tie: { ...IN_WELL, from: ['string.ties'], numbers: ({ facts }) => ({ every: facts.string.ties }) },
  guard: { ...IN_WELL, from: PIPE, numbers: roundThePipe },
  cable: {
    ...WIRES,
    from: ['pump.wires'],
    cut: true,
    more: (_, pieces) => 2 * pieces * STRIPPED,
    numbers: ({ facts }) => ({ wires: facts.pump.wires }),
  },
  houseCable: {
    ...WIRES,
    from: ['pump.wires'],
    cut: true,
    more: (_, pieces) => 2 * pieces * STRIPPED,
    numbers: ({ facts }) => ({ wires: facts.pump.wires }),
  },
  rope: {
    ...IN_WELL,
    from: ['rope.diameter'],
    cut: true,
    numbers: ({ facts }) => ({ diameter: facts.rope?.diameter ?? null }),
  },
  pitlessAdapter: {
    ...IN_WELL,
    numbers: ({ facts, values }, { key }) => ({
      casing: facts.well.casings[0]?.nominalSize ?? '',
      steel: facts.well.casings[0]?.material === 'steel',
      half: key === SPOOL,
      load: values.hangLoadDry,
    }),
  },
  cap: {
    ...IN_WELL,
    from: ['well.casing.size'],
    numbers: (solved) => ({ outside: outside(solved), known: casingKnown(solved) }),
  },
  seal: {
    ...IN_WELL,
    from: ['well.casing.size', 'well.casing.schedule'],
    numbers: (solved) => ({
      inside: solved.facts.well.casings[0]?.insideDiameter ?? 0,
      known: casingKnown(solved),
    }),
  },
  conduit: WIRES,
  bond: { ...WIRES, from: ['well.casing.size'], numbers: (solved) => ({ outside: outside(solved) }) },
  coupling: IN_WELL,
  tee: IN_WELL,
  plug: IN_WELL,
  union: LINE,
  tap: LINE,
  support: LINE,
  buriedLine: {
    ...LINE,
    from: LINE_PIPE,
    cut: true,
    more: (cut) => cut * SLACK_IN_TRENCH + ONE_JOINT_MORE,
    numbers: ({ facts }) => {
      const line = facts.house.line ?? facts.dropPipe;
      return pipe(line, PIPE_MATERIALS[line.material].buried, false);
    },
  },
  threadAdapter: LINE,
  elbow: LINE,
  riser: HOUSE,
  tankTee: HOUSE,
  reliefValve: {
    ...HOUSE,
    from: ['house.tankRating'],
    numbers: ({ facts, curves }) => ({ rating: facts.house.tankRating, flow: curves.atCutInMost?.flow ?? null }),
  },
  reliefPipe: HOUSE,
  gauge: { ...HOUSE, from: ['house.cutOut'], numbers: ({ facts }) => ({ cutOut: facts.house.cutOut }) },
  switch: {
    ...HOUSE,
    from: ['house.cutIn', 'house.cutOut'],
    numbers: ({ facts: { house } }) => ({
      cutIn: house.cutIn,
      cutOut: house.cutOut,
      sensor: house.control === 'variable speed',
    }),
  },
  drain: HOUSE,
  shutOff: HOUSE,
  tank: {
    ...HOUSE,
    from: ['house.kind', 'house.tank', 'house.tankRating'],
    numbers: ({ facts: { house } }) => ({
      open: house.kind === 'open tank',
      volume: house.tank,
      rating: house.tankRating,
    }),
  },
  float: HOUSE,
  disconnect: WIRES,
  controlBox: { ...WIRES, from: MOTOR, numbers: started },
  drive: { ...WIRES, from: MOTOR, numbers: started },
  relay: WIRES,
  casing: null,
  screen: null,
  openHole: null,
  grout: null,
  well: null,
  frost: null,
  staticLevel: null,
  pumpingLevel: null,
};

/** ID-controlled pipe, which insert fittings are made for. Source: ASTM D2239, title. */
const BARBED_STANDARD = 'ASTM D2239';

/** Whole sections do not add up to what hangs. */
function isCutSection({ dropPipe }: Solved['facts'], length: Metres | null): boolean {
  const sections = (length ?? 0) / (dropPipe.sectionLength ?? RIGID_SECTION);
  return !isBarbed(dropPipe) && Math.abs(sections - Math.round(sections)) > 1e-6;
}

/** Fittings and clamps at the ends of the line to the house. */
export function isOfLine(key: string): boolean {
  return isLineEnd(key) || key.startsWith('clamp/line/');
}

function casingKnown({ facts }: Solved): boolean {
  return facts.well.casings[0]?.insideKnown === true;
}
