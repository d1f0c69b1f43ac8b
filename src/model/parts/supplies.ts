/** What is used up, a few spares, and what the work is done with: each where this plan calls for it. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import type { StringGraph } from '../string/graph/piece.ts';
import { isBarbed, isBuriedOnBarbs, PIPE_MATERIALS } from '../tables/pipeMaterials.ts';
import { gearRating } from '../figures/gearRating.ts';
import { oldString } from '../work/hook.ts';
import type { Kind } from '../work/step.ts';
import { RIGID_SECTION } from '../string/lengths.ts';
import { pumpHeight } from '../string/pumpDepths.ts';
import { feet } from '../units.ts';
import type { Group, NumbersOf, SupplyKind } from './partLine.ts';

export interface Asked {
  readonly solved: Solved;
  readonly graph: StringGraph;
  readonly work: Kind;
}

interface Supply<Kind extends SupplyKind> {
  readonly group: Extract<Group, 'wires' | 'usedUp' | 'spares' | 'tools'>;
  /** Null: this plan does without. */
  readonly of: (asked: Asked) => { readonly count: number; readonly numbers: NumbersOf<Kind> } | null;
}

const USED_UP = 'usedUp';
const SPARES = 'spares';
const TOOLS = 'tools';

const one = () => ({ count: 1, numbers: {} });
const when =
  (does: (asked: Asked) => boolean, count = 1) =>
  (asked: Asked) =>
    does(asked) ? { count, numbers: {} } : null;

const digs = ({ solved: { facts }, work }: Asked): boolean => work === 'new' && facts.top.kind === 'pitless';
const threads = ({ graph }: Asked): boolean => graph.joints.some(({ way }) => way.by === 'thread');
const barbs = ({ solved: { facts } }: Asked): boolean => isBarbed(facts.dropPipe);
const glued = ({ solved: { facts }, work }: Asked): boolean => {
  const line = facts.house.line ?? facts.dropPipe;
  return work === 'new' && !isBuriedOnBarbs(line) && PIPE_MATERIALS[line.material].buried === 'socket';
};

/** Over the ground: casing, a section with the pump on it, and the tackle. Common practice, no source. */
function hookHeight({ dropPipe, pump, well }: Solved['facts']): Metres | null {
  if (isBarbed(dropPipe)) return null;
  return well.casingHeight + (dropPipe.sectionLength ?? RIGID_SECTION) + pumpHeight(pump) + TACKLE;
}

const TACKLE: Metres = feet(2);

export const SUPPLIES: { readonly [Kind in SupplyKind]: Supply<Kind> } = {
  threadTape: { group: USED_UP, of: when(threads, 2) },
  threadPaste: { group: USED_UP, of: when(threads) },
  cement: { group: USED_UP, of: when(glued) },
  seamTape: { group: USED_UP, of: one },
  adapterGrease: { group: USED_UP, of: when(({ solved }) => solved.facts.top.kind === 'pitless') },
  conduitSealant: { group: USED_UP, of: when(({ work }) => work === 'new') },
  wallSleeve: {
    group: USED_UP,
    of: ({ solved: { facts }, work }) =>
      work === 'new' ? { count: 1, numbers: { over: (facts.house.line ?? facts.dropPipe).outsideDiameter } } : null,
  },
  casingGrout: { group: USED_UP, of: when(digs) },
  bedding: { group: USED_UP, of: when(digs) },
  junctionBox: { group: USED_UP, of: when(({ solved }) => solved.facts.top.kind === 'seal') },
  boxForMotor: {
    group: USED_UP,
    of: ({ solved: { facts }, graph, work }) =>
      work === 'replace' && graph.pieces.some(({ kind }) => kind === 'controlBox' || kind === 'drive')
        ? { count: 1, numbers: { power: facts.pump.power } }
        : null,
  },
  starter: {
    group: 'wires',
    of: ({ solved: { facts }, work }) =>
      facts.pump.phase === 3 && facts.house.control === 'switch'
        ? { count: 1, numbers: { power: facts.pump.power, voltage: facts.pump.voltage, old: work === 'replace' } }
        : null,
  },
  ropeHook: {
    group: USED_UP,
    of: when(({ solved: { facts } }) => facts.top.kind === 'pitless' && facts.rope?.tied === 'casing hook'),
  },
  warningTape: { group: USED_UP, of: when(digs) },
  surgeArrester: { group: USED_UP, of: when(({ work }) => work === 'new') },
  chlorine: {
    group: USED_UP,
    of: ({ solved: { facts, values } }) => ({
      count: 1,
      numbers: { product: values.chlorineDose, strength: facts.disinfection.strength },
    }),
  },
  sampleBottles: { group: USED_UP, of: one },
  spareClamps: { group: SPARES, of: when(barbs, 2) },
  spareFitting: { group: SPARES, of: when(barbs) },
  spareSplice: { group: SPARES, of: when(({ graph }) => graph.pieces.some(({ kind }) => kind === 'splice')) },
  liftOutPipe: {
    group: TOOLS,
    of: ({ solved: { values } }) =>
      values.liftPipeLength === null ? null : { count: 1, numbers: { length: values.liftPipeLength } },
  },
  holeSaw: {
    group: TOOLS,
    of: (asked) =>
      digs(asked) ? { count: 1, numbers: { casing: asked.solved.facts.well.casings[0]?.nominalSize ?? '' } } : null,
  },
  liftingPlug: {
    group: TOOLS,
    of: when((asked) => !barbs(asked) || asked.solved.facts.top.kind === 'seal'),
  },
  hoist: {
    group: TOOLS,
    of: ({ solved, work }) => ({
      count: 1,
      numbers: {
        rated: gearRating(solved, work),
        oldNotTold: work === 'replace' && oldString(solved.facts) === 'not told',
        height: hookHeight(solved.facts),
      },
    }),
  },
  pipeWheel: { group: TOOLS, of: when(barbs) },
  clampMeter: { group: TOOLS, of: one },
  pipeHolders: { group: TOOLS, of: (asked) => ({ count: barbs(asked) ? 1 : 2, numbers: {} }) },
  insulationTester: { group: TOOLS, of: one },
  voltageTester: { group: TOOLS, of: one },
  lock: { group: TOOLS, of: one },
  wrenches: { group: TOOLS, of: () => ({ count: 2, numbers: {} }) },
  pipeCutter: { group: TOOLS, of: one },
  crimper: { group: TOOLS, of: when(({ graph }) => graph.pieces.some(({ kind }) => kind === 'splice')) },
  levelTape: { group: TOOLS, of: one },
  bucket: {
    group: TOOLS,
    of: ({ solved: { curves } }) => ({ count: 1, numbers: { flow: curves.atCutIn?.flow ?? null } }),
  },
  hose: { group: TOOLS, of: one },
  airGauge: { group: TOOLS, of: when(({ solved }) => solved.facts.house.kind === 'pressure tank') },
  goggles: { group: TOOLS, of: one },
};
