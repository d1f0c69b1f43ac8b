/**
 * What can be dragged, from where to where. A handle's `min` and `max` are what is physically possible; bad practice
 * lies between them and is allowed, because a drawing that teaches must be able to show a mistake.
 */
import type { Metres } from './si.ts';
import type { Solution } from './solution.ts';
import { feet, inches, parseQuantity } from './units.ts';

export type HandleInk = 'static' | 'pumping' | 'frost' | 'pump' | 'casing' | 'ground' | 'pitless';

export interface Handle {
  /** "pumpSetting", "checkValve/0" */
  readonly id: string;
  readonly label: string;
  /** Where the plan keeps it. */
  readonly path: string;
  /** Depth from the ground; a height is a negative depth. 0 when not known. */
  readonly depth: Metres;
  readonly known: boolean;
  /** Why it cannot be dragged; null when it can. */
  readonly locked: string | null;
  readonly min: Metres;
  readonly minWhy: string;
  readonly max: Metres;
  readonly maxWhy: string;
  readonly ink: HandleInk;
}

/** Least room between two things that must not touch while they are dragged. */
const ROOM = inches(1);
/** A pump's joint at the top takes about this much between outlet and discharge. */
const TOP_JOINT = feet(1.5);
const DEEPEST_WELL = feet(2000);
/** An adapter is fitted from a hole dug beside the casing. */
const DEEPEST_DIG = feet(20);
const DEEPEST_FROST = feet(12);
const TALLEST_CASING = feet(10);
const NOT_KNOWN = 'not known yet: type it in the record';

export function handlesOf(solution: Solution): Handle[] {
  return [
    ...topHandles(solution),
    ...waterHandles(solution),
    ...stringHandles(solution),
    ...wellHandles(solution),
    ...layerHandles(solution),
  ];
}

function topHandles({ plan, facts, values }: Solution): Handle[] {
  const { well, top, pump } = facts;
  const discharge = pump.setting - pump.intakeToDischarge;
  const handles: Handle[] = [
    {
      id: 'casingHeight',
      label: 'Casing top',
      path: `${outerCasingPath(plan)}.height`,
      depth: -well.casingHeight,
      known: true,
      locked: null,
      min: -TALLEST_CASING,
      minWhy: 'no casing stands higher than this',
      max: 0,
      maxWhy: 'the casing ends at the ground',
      ink: 'casing',
    },
    {
      id: 'frostDepth',
      label: 'Frost line',
      path: 'site.frostDepth',
      depth: values.frostDepth ?? 0,
      known: values.frostDepth !== null,
      locked: values.frostDepth === null ? NOT_KNOWN : null,
      min: 0,
      minWhy: 'frost starts at the ground',
      max: DEEPEST_FROST,
      maxWhy: 'frost this deep is permafrost: ask a local engineer',
      ink: 'frost',
    },
  ];
  if (top.kind === 'pitless') {
    handles.push({
      id: 'pitlessDepth',
      label: 'Pitless adapter',
      path: 'top.depth',
      depth: top.depth,
      known: true,
      locked: null,
      min: inches(2),
      minWhy: 'a pitless adapter is below the ground',
      max: Math.max(Math.min(discharge - TOP_JOINT, Math.max(DEEPEST_DIG, top.depth)), inches(2)),
      maxWhy: discharge - TOP_JOINT < DEEPEST_DIG ? 'the pump hangs below it' : 'nobody digs down to it',
      ink: 'pitless',
    });
  }
  return handles;
}

function waterHandles({ facts, levels, values }: Solution): Handle[] {
  const { water, well, house } = facts;
  const { pumping } = water;
  const floor = well.bottom - ROOM;
  const still = levels.static;
  const flowing = well.flowControl !== null || (still !== null && still < 0);
  const pumpingMoves = pumping !== null && (pumping.kind === 'test' || pumping.kind === 'level');
  const levelStays = pumping?.kind === 'level' ? pumping.level : floor;
  return [
    {
      id: 'staticLevel',
      label: 'Static level',
      path: 'water.staticLevel',
      depth: still ?? 0,
      known: still !== null,
      locked: still === null ? NOT_KNOWN : null,
      min: flowing ? -well.casingHeight - feet(40) : 0,
      minWhy: flowing
        ? 'higher than any flowing well drawn here'
        : 'water above the ground: say first that the well flows',
      max: Math.max(
        pumping?.kind === 'level' ? Math.min(levelStays, floor) : floor - (values.drawdown ?? 0),
        flowing ? -feet(40) : 0,
      ),
      maxWhy:
        pumping?.kind === 'level' ? 'it meets the measured pumping level' : 'the water would stand below the bottom',
      ink: 'static',
    },
    {
      id: 'pumpingLevel',
      label: 'Pumping level',
      path: pumping?.kind === 'level' ? 'water.pumping.level' : 'water.pumping.drawdown',
      depth: levels.pumping ?? 0,
      known: levels.pumping !== null,
      locked:
        pumpingMoves && levels.pumping !== null && house.demand !== null
          ? null
          : whyNoPumpingHandle(pumping?.kind ?? null, still),
      min: still ?? 0,
      minWhy: 'pumping cannot raise the water: it meets the static level',
      max: floor,
      maxWhy: 'it meets the bottom of the well',
      ink: 'pumping',
    },
  ];
}

function whyNoPumpingHandle(kind: string | null, still: Metres | null): string {
  if (still === null) return 'the static level is not known yet';
  if (kind === 'aquifer') return 'it follows from the aquifer: change transmissivity or storativity in the record';
  if (kind === 'steps') return 'it follows from the step test: change the steps in the record';
  if (kind === 'yield only') return 'not known: an air-lift yield tells no drawdown';
  return NOT_KNOWN;
}

function stringHandles({ plan, facts, parts }: Solution): Handle[] {
  const { pump, string, well } = facts;
  const valves = inTypedOrder(plan.string?.checkValves, string.checkValves);
  const splices = inTypedOrder(plan.string?.splices, string.splices);
  const pipe = parts.find((part) => part.key === 'dropPipe');
  const discharge = pump.setting - pump.intakeToDischarge;
  const pipeTop = pipe?.top ?? 0;
  const alongPipe = (id: string, label: string, path: string, height: Metres): Handle => ({
    id,
    label,
    path,
    depth: discharge - height,
    known: true,
    locked: null,
    min: Math.min(pipeTop + feet(0.5), discharge),
    minWhy: 'the drop pipe ends here',
    max: discharge,
    maxWhy: "it meets the pump's discharge",
    ink: 'pump',
  });
  return [
    {
      id: 'pumpSetting',
      label: 'Pump intake',
      path: 'pump.setting',
      depth: pump.setting,
      known: true,
      locked: null,
      min: Math.min(pipeTop + TOP_JOINT + pump.intakeToDischarge, well.bottom),
      minWhy: 'the pump meets the top works',
      max: well.bottom - pump.intakeToMotorBottom,
      maxWhy: 'the motor stands on the bottom',
      ink: 'pump',
    },
    ...valves.map((height, i) =>
      alongPipe(
        `checkValve/${i}`,
        valves.length > 1 ? `Check valve ${i + 1}` : 'Check valve',
        `string.checkValves.${i}`,
        height,
      ),
    ),
    ...splices.map((height, i) =>
      alongPipe(`splice/${i}`, splices.length > 1 ? `Splice ${i + 1}` : 'Splice', `string.splices.${i}`, height),
    ),
  ];
}

/** Heights in the order of the plan's own list: a handle must keep its number when it is dragged past another. */
function inTypedOrder(typed: readonly string[] | undefined, heights: readonly Metres[]): readonly Metres[] {
  if (typed === undefined || typed.length !== heights.length) return heights;
  return typed.map((text, i) => {
    const height = parseQuantity(text, 'length');
    return height.ok ? height.si : (heights[i] ?? 0);
  });
}

function wellHandles({ plan, facts }: Solution): Handle[] {
  const { well, pump } = facts;
  const last = well.casings[well.casings.length - 1];
  const screens = well.intake.screens;
  const motorBottom = pump.setting + pump.intakeToMotorBottom;
  const lowest = Math.max(motorBottom, last?.bottom ?? 0, ...screens.map((screen) => screen.bottom));
  const byMotor = lowest === motorBottom;
  const handles: Handle[] = [
    {
      id: 'wellBottom',
      label: 'Well bottom',
      path: well.soundedDepth === null ? 'well.depth' : 'well.soundedDepth',
      depth: well.bottom,
      known: true,
      locked: null,
      min: Math.min(lowest, well.bottom),
      minWhy: byMotor ? 'it meets the motor: raise the pump first' : 'it meets the casing or the screen',
      max: DEEPEST_WELL,
      maxWhy: 'deeper than any well drawn here',
      ink: 'ground',
    },
  ];
  if (last) {
    const floor = screens[0]?.top ?? well.bottom;
    const pipe = well.casings.length > 1 ? 'liner' : 'casing';
    handles.push({
      id: 'casingBottom',
      label: pipe === 'liner' ? 'Liner bottom' : 'Casing bottom',
      path: `${lastCasingPath(plan, well.casings.length)}.bottom`,
      depth: last.bottom ?? floor,
      known: last.bottom !== null,
      locked: last.bottom === null ? NOT_KNOWN : null,
      min: Math.max(last.top, 0) + feet(1),
      minWhy: `the ${pipe} needs some length`,
      max: floor,
      maxWhy: screens.length > 0 ? 'it meets the screen' : 'it meets the bottom',
      ink: 'casing',
    });
  }
  screens.forEach((screen, i) => {
    const short = !hasScreenList(plan);
    const base = short ? 'well.intake' : `well.intake.screens.${i}`;
    const above = screens[i - 1]?.bottom ?? Math.max(last?.top ?? 0, 0) + feet(1);
    const below = screens[i + 1]?.top ?? well.bottom;
    const name = screens.length > 1 ? `Screen ${i + 1}` : 'Screen';
    handles.push(
      {
        id: `screenTop/${i}`,
        label: `${name} top`,
        path: `${base}.top`,
        depth: screen.top,
        known: true,
        locked: null,
        min: above,
        minWhy: 'it meets what is above it',
        max: screen.bottom - ROOM,
        maxWhy: 'it meets its own lower end',
        ink: 'casing',
      },
      {
        id: `screenBottom/${i}`,
        label: `${name} bottom`,
        path: `${base}.bottom`,
        depth: screen.bottom,
        known: true,
        locked: null,
        min: screen.top + ROOM,
        minWhy: 'it meets its own upper end',
        max: below,
        maxWhy: 'it meets what is below it',
        ink: 'casing',
      },
    );
  });
  return handles;
}

function layerHandles({ facts }: Solution): Handle[] {
  const { layers } = facts.well;
  return layers.map((layer, i): Handle => ({
    id: `layer/${i}`,
    label: `Foot of the ${layer.material}`,
    path: `well.layers.${i}.bottom`,
    depth: layer.bottom,
    known: true,
    locked: null,
    min: layer.top + ROOM,
    minWhy: 'the layer needs some thickness',
    max: (layers[i + 1]?.bottom ?? DEEPEST_WELL) - ROOM,
    maxWhy: 'it meets the foot of the next layer',
    ink: 'ground',
  }));
}

function outerCasingPath(plan: Solution['plan']): string {
  return plan.well.casing !== undefined ? 'well.casing' : 'well.casings.0';
}

function lastCasingPath(plan: Solution['plan'], count: number): string {
  return plan.well.casing !== undefined ? 'well.casing' : `well.casings.${Math.max(count - 1, 0)}`;
}

function hasScreenList(plan: Solution['plan']): boolean {
  return plan.well.intake.screens !== undefined;
}
