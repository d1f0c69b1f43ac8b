/**
 * What each kind of part is as a piece: one row of one record, which the compiler wants complete. Null: it is no piece of a
 * build, but ground, water or hole.
 */
import type { Facts } from '../../facts.ts';
import { cableMassPerLength } from '../../formulas/wire.ts';
import type { Kilograms, Metres } from '../../si.ts';
import type { Values } from '../../solution.ts';
import { ropeMassPerLength } from '../../tables/ropes.ts';
import { wireText } from '../../tables/wireSizes.ts';
import { isBarbed } from '../../tables/pipeMaterials.ts';
import { threadSize } from '../../tables/threadSizes.ts';
import { lineLength } from '../lineLength.ts';
import { houseCableLength } from '../wireLengths.ts';
import type { PieceKind, PieceValue, Run, Seal, Way } from './piece.ts';

/** A value, and the fields of the plan that it rests on. */
interface Told<Value> {
  readonly is: (of: Of) => Value | null;
  readonly from: readonly string[];
}

/** What a row may ask about its piece. */
export interface Of {
  readonly facts: Facts;
  readonly values: Values;
  /** To cut it to; null where it is not cut. */
  readonly cut: Metres | null;
}

export interface KindRow {
  readonly run: Run;
  readonly size?: Told<string>;
  readonly material?: Told<string>;
  readonly mass?: Told<Kilograms>;
  readonly count?: Told<number>;
  /** Of what is cut: what its length rests on, besides its place. */
  readonly cut?: Told<Metres>;
  /** Of its threads. An insert fitting is made either way, whichever it meets. */
  readonly thread?: 'male' | 'female' | 'either';
  /** What it is fastened to, where it does not stand in the way of the water: of each group the first that is there. */
  readonly on?: readonly (readonly PieceKind[])[];
  readonly by?: Way;
  readonly seal?: Seal;
  /** What is there before it, besides what it is fastened to. */
  readonly after?: readonly PieceKind[];
}

const PIPE_SIZE = ['dropPipe.size'];
const PIPE_MATERIAL = ['dropPipe.material'];
const PIPE_WALL = [...PIPE_SIZE, ...PIPE_MATERIAL, 'dropPipe.standard', 'dropPipe.rating', 'dropPipe.ratio'];

const pipeSize: Told<string> = { is: ({ facts }) => facts.dropPipe.nominalSize, from: PIPE_SIZE };
/** Of what is screwed into the way of the water: bought by its thread, not by the pipe's name. */
const pipeThread: Told<string> = {
  is: ({ facts: { dropPipe } }) => threadSize(dropPipe.nominalSize) ?? dropPipe.nominalSize,
  from: PIPE_SIZE,
};
const lineThread: Told<string> = {
  is: ({ facts: { house } }) =>
    house.line === null ? null : (threadSize(house.line.nominalSize) ?? house.line.nominalSize),
  from: ['house.line.size', 'house.line.standard'],
};
const pipeMaterial: Told<string> = { is: ({ facts }) => facts.dropPipe.material, from: PIPE_MATERIAL };
/** Couplings come with rigid pipe and are of its metal or plastic; under PE they are what the shop has. */
const rigidMaterial: Told<string> = {
  is: ({ facts }) => (isBarbed(facts.dropPipe) ? null : facts.dropPipe.material),
  from: PIPE_MATERIAL,
};
const THREAD: Way = { by: 'thread' };
const STRAP: Way = { by: 'strap' };
const CLAMP: Way = { by: 'clamp' };
const WIRES: Way = { by: 'wires' };

/** On the line; which of them has the outer thread nobody says. */
const onTheLine: KindRow = {
  run: 'house',
  on: [['buriedLine']],
  by: THREAD,
  seal: 'thread sealant',
};

/** In the ports of the tank tee, so that no valve stands between them and the pump. */
const onTheTee: KindRow = {
  run: 'house',
  on: [['tankTee']],
  by: THREAD,
  seal: 'thread sealant',
  thread: 'male',
};

export const KINDS: Readonly<Record<PieceKind, KindRow | null>> = {
  motor: { run: 'water' },
  intake: { run: 'water' },
  pump: {
    run: 'water',
    size: { is: ({ facts }) => facts.pump.outlet, from: ['pump.outlet'] },
    mass: { is: ({ facts }) => facts.pump.mass, from: ['pump.mass'] },
    thread: 'female',
  },
  cableGuardStrip: { run: 'power', on: [['pump'], ['cable']], by: STRAP },
  shroud: { run: 'water', on: [['motor']], by: CLAMP },
  nipple: { run: 'water', size: pipeThread, thread: 'male' },
  // From the thread of the pump's outlet to that of the pipe, where they differ.
  bushing: { run: 'water', thread: 'either' },
  checkValve: { run: 'water', size: pipeThread, thread: 'female' },
  insertFitting: {
    run: 'water',
    size: pipeSize,
    material: { is: ({ facts }) => facts.string.fittings, from: ['string.fittings'] },
    thread: 'either',
  },
  clamp: { run: 'water', on: [['insertFitting'], ['dropPipe']], by: CLAMP },
  dropPipe: {
    run: 'water',
    size: pipeSize,
    material: pipeMaterial,
    mass: {
      is: ({ facts, cut }) => (cut === null ? null : cut * facts.dropPipe.massPerLength),
      from: [...PIPE_WALL, 'string.checkValves'],
    },
    cut: { is: ({ cut }) => cut, from: ['string.checkValves'] },
    thread: 'male',
  },
  torqueArrestor: { run: 'water', on: [['dropPipe']], by: CLAMP },
  splice: {
    run: 'power',
    count: { is: ({ facts }) => facts.pump.wires + 1, from: ['pump.wires'] },
  },
  // The cable's joint with the house's own, under the cap.
  capSplice: {
    run: 'power',
    count: { is: ({ facts }) => facts.pump.wires + 1, from: ['pump.wires'] },
  },
  // It takes the nipple's length: no plan says how long one is.
  flowLimiter: { run: 'water', on: [['nipple']], by: THREAD, seal: 'thread sealant', thread: 'female' },
  probe: { run: 'power', on: [['dropPipe']], by: STRAP },
  tie: { run: 'power', on: [['dropPipe'], ['cable']], by: STRAP },
  guard: { run: 'power', on: [['dropPipe']], by: CLAMP },
  cable: {
    run: 'power',
    size: { is: ({ facts }) => wireText(facts.wire.gauge), from: ['wire.size'] },
    material: { is: () => 'copper', from: [] },
    mass: {
      is: ({ facts, cut }) => (cut === null ? null : cut * cableMassPerLength(facts.wire.gauge, facts.pump.wires)),
      from: ['wire.size', 'pump.wires', 'string.splices'],
    },
    cut: { is: ({ cut }) => cut, from: ['string.splices'] },
  },
  rope: {
    run: 'rope',
    material: { is: ({ facts }) => facts.rope?.material ?? null, from: ['rope.material'] },
    mass: {
      is: ({ facts: { rope }, cut }) => {
        if (rope === null || rope.diameter === null || cut === null) return null;
        const mass = ropeMassPerLength({ material: rope.material, diameter: rope.diameter });
        return mass === null ? null : mass * cut;
      },
      from: ['rope.material', 'rope.diameter', 'pump.mass'],
    },
    // By how far the pipe stretches.
    cut: { is: ({ cut }) => cut, from: ['pump.mass', ...PIPE_WALL] },
  },
  pitlessAdapter: { run: 'water', thread: 'female' },
  cap: {
    run: 'well',
    on: [['casing']],
    by: { by: 'bolts' },
    seal: 'gasket',
    after: ['pitlessAdapter', 'cable', 'capSplice', 'rope', 'conduit'],
  },
  conduit: { run: 'power', on: [['casing']], by: CLAMP },
  bond: { run: 'power', on: [['casing']], by: CLAMP },
  seal: { run: 'well' },
  coupling: { run: 'water', size: pipeSize, material: rigidMaterial, thread: 'female' },
  tee: { run: 'water', size: pipeThread, thread: 'female' },
  plug: { run: 'water', size: pipeThread, thread: 'male' },
  buriedLine: {
    run: 'house',
    size: {
      is: ({ facts }) => facts.house.line?.nominalSize ?? null,
      from: ['house.line.size', 'house.line.standard'],
    },
    material: { is: ({ facts }) => facts.house.line?.material ?? null, from: ['house.line.material'] },
    mass: {
      is: ({ facts: { house, top } }) =>
        house.line === null || lineLength({ house, top }) === null
          ? null
          : house.line.massPerLength * (lineLength({ house, top }) ?? 0),
      from: ['house.line.size', 'house.line.material', 'house.line.standard', 'house.line.ratio'],
    },
    cut: { is: ({ facts }) => lineLength(facts), from: ['house.distance', 'house.rise'] },
    thread: 'male',
  },
  // Pipe that is glued has no thread: one end for the glue, one with a thread.
  threadAdapter: { run: 'house', size: lineThread, thread: 'male' },
  elbow: { run: 'house', size: lineThread, thread: 'female' },
  union: onTheLine,
  tap: onTheLine,
  support: { run: 'house', on: [['buriedLine']], by: { by: 'rest' } },
  riser: {
    run: 'house',
    size: lineThread,
    material: { is: ({ facts }) => facts.house.line?.material ?? null, from: ['house.line.material'] },
    cut: { is: ({ cut }) => cut, from: ['house.line.size'] },
    on: [['elbow']],
    by: THREAD,
    seal: 'thread sealant',
    thread: 'male',
  },
  tankTee: { run: 'house', on: [['riser']], by: THREAD, seal: 'thread sealant', thread: 'female' },
  reliefValve: onTheTee,
  reliefPipe: { run: 'house', on: [['reliefValve']], by: THREAD },
  gauge: onTheTee,
  switch: onTheTee,
  drain: onTheTee,
  shutOff: { ...onTheTee, on: [['tankTee', 'tank']] },
  tank: { ...onTheTee, on: [['tankTee', 'riser']] },
  float: { run: 'power', on: [['tank']], by: CLAMP },
  // On the wall of the house.
  controlBox: { run: 'power', on: [['switch', 'float']], by: WIRES },
  drive: { run: 'power', on: [['switch', 'float']], by: WIRES },
  disconnect: { run: 'power', on: [['controlBox', 'drive', 'switch', 'float']], by: WIRES },
  // From the house to the well, in conduit or of a kind that may be buried.
  houseCable: {
    run: 'power',
    size: { is: ({ facts }) => wireText(facts.wire.gauge), from: ['wire.size'] },
    material: { is: () => 'copper', from: [] },
    cut: { is: ({ facts }) => houseCableLength(facts), from: ['wire.run', 'house.distance'] },
    on: [['controlBox', 'drive', 'switch', 'float']],
    by: WIRES,
  },
  relay: { run: 'power', on: [['controlBox', 'drive', 'switch', 'float']], by: WIRES },
  probeWires: {
    run: 'power',
    cut: { is: ({ cut }) => cut, from: ['pump.lowLevelCutOff'] },
    on: [['probe'], ['relay']],
    by: WIRES,
  },
  casing: {
    run: 'well',
    size: { is: ({ facts }) => facts.well.casings[0]?.nominalSize ?? null, from: [] },
    material: {
      is: ({ facts }) => {
        const outer = facts.well.casings[0];
        return outer?.materialKnown === true ? outer.material : null;
      },
      from: [],
    },
  },
  screen: null,
  openHole: null,
  grout: null,
  well: null,
  frost: null,
  staticLevel: null,
  pumpingLevel: null,
};

/** Fields that a value of a kind rests on, besides those that place it. */
export function fieldsOf(row: KindRow, value: PieceValue): readonly string[] {
  return value === 'top' || value === 'bottom' ? [] : (row[value]?.from ?? []);
}
