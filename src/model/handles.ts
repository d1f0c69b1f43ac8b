/** All that can be dragged: the levels of the well, what hangs along the pipe, and the ground's layers. */
import type { HandleName } from './handleNames.ts';
import { DEEPEST_WELL, levelHandlesOf, ROOM, toHandles, type Handle, type Placed } from './levelHandles.ts';
import type { Metres } from './si.ts';
import type { Solution } from './solution.ts';
import { dischargeDepth } from './string/pumpDepths.ts';
import { feet, readQuantity } from './units.ts';

export type { Block, HandleName, HandleNames } from './handleNames.ts';
export type { Handle, HandleInk } from './levelHandles.ts';

/** Asked for again and again in the same frame: found once for each solution. */
const FOUND = new WeakMap<Solution, readonly Handle[]>();

export function handlesOf(solution: Solution): readonly Handle[] {
  const found = FOUND.get(solution) ?? findHandles(solution);
  FOUND.set(solution, found);
  return found;
}

/** From the top down as far as they go: what hangs along the pipe follows its pump. */
function findHandles(solution: Solution): Handle[] {
  const levels = levelHandlesOf(solution);
  const along = levels.findIndex(({ id }) => id === 'pumpSetting') + 1;
  return [
    ...levels.slice(0, along),
    ...toHandles(solution, stringHandles(solution)),
    ...levels.slice(along),
    ...toHandles(solution, layerHandles(solution)),
  ];
}

function stringHandles({ plan, facts, parts }: Solution): Placed[] {
  const { pump, string } = facts;
  const valves = inTypedOrder(plan.string?.checkValves, string.checkValves);
  const splices = inTypedOrder(plan.string?.splices, string.splices);
  const pipe = parts.find((part) => part.key === 'dropPipe');
  const discharge = dischargeDepth(pump);
  const pipeTop = pipe?.top ?? 0;
  const alongPipe = (id: string, label: HandleName, path: string, height: Metres): Placed => ({
    id,
    label,
    path,
    depth: discharge - height,
    known: true,
    locked: null,
    min: Math.min(pipeTop + feet(0.5), discharge),
    minWhy: 'dropPipeEnds',
    max: discharge,
    maxWhy: 'meetsDischarge',
    ink: 'pump',
  });
  return [
    ...valves.map((height, i) =>
      alongPipe(
        `checkValve/${i}`,
        { variant: 'checkValve', numbers: { index: i, count: valves.length } },
        `string.checkValves.${i}`,
        height,
      ),
    ),
    ...splices.map((height, i) =>
      alongPipe(
        `splice/${i}`,
        { variant: 'splice', numbers: { index: i, count: splices.length } },
        `string.splices.${i}`,
        height,
      ),
    ),
  ];
}

/** Heights in the order of the plan's own list: a handle must keep its number when it is dragged past another. */
function inTypedOrder(typed: readonly string[] | undefined, heights: readonly Metres[]): readonly Metres[] {
  if (typed === undefined || typed.length !== heights.length) return heights;
  return typed.map((text, i) => {
    const height = readQuantity(text, 'length');
    return height.ok ? height.si : (heights[i] ?? 0);
  });
}

function layerHandles({ facts }: Solution): Placed[] {
  const { layers } = facts.well;
  return layers.map((layer, i): Placed => ({
    id: `layer/${i}`,
    label: { variant: 'layerFoot', numbers: { material: layer.material } },
    path: `well.layers.${i}.bottom`,
    depth: layer.bottom,
    known: true,
    locked: null,
    min: layer.top + ROOM,
    minWhy: 'layerNeedsThickness',
    max: (layers[i + 1]?.bottom ?? DEEPEST_WELL) - ROOM,
    maxWhy: 'meetsNextLayer',
    ink: 'ground',
  }));
}
