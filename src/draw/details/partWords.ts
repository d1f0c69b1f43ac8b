/** What the labels of a detail say: the part's name, and what it is or its figure. */
import { feet, show, toFeet } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';
import type { Metres, MetresPerSecond } from '../../model/si.ts';
import type { BoreStretch, PlacedPart, Solution } from '../../model/solution.ts';

export interface Words {
  readonly name: string;
  readonly note: string;
  readonly weight: number;
  /** For a narrow column. */
  readonly short?: string;
  /** The note, for a narrow column. */
  readonly brief?: string;
}

/** What a window shows of the well. */
export interface Shown {
  readonly top: Metres;
  readonly bottom: Metres;
}

type Saying = (solution: Solution, units: Show, part: PlacedPart | undefined, key: string, shown: Shown) => Words;

/** "1 in PE"; the kind of steel is told by the parts list. */
const pipeName = ({ nominalSize, material }: { readonly nominalSize: string; readonly material: string }): string =>
  `${nominalSize} ${material.includes('steel') ? 'steel' : material}`;

const count = (n: number, word: string): string => `${n} ${word}${n === 1 ? '' : 's'}`;

/** Whose depth of frost it is; our own where the plan gives none. */
const saidBy = ({ frostDepth, frostFrom }: Solution['facts']['site']): string =>
  frostDepth === null ? 'estimate' : (frostFrom ?? 'as entered');

/** By part key, or by kind where all parts of a kind say the same. */
const SAYINGS: Readonly<Record<string, Saying>> = {
  cap: ({ facts }, { small }) => ({
    name: 'Cap, screened vent',
    short: 'Cap, vent',
    note: `${small(facts.well.casingHeight)} above ground`,
    weight: 2,
  }),
  bond: () => ({
    name: 'Bond to the casing',
    short: 'Bond',
    note: 'clamp and ground wire',
    brief: 'ground wire',
    weight: 1.4,
  }),
  rope: ({ facts }) => ({
    name: facts.rope?.tied === 'casing hook' ? 'Rope on a casing hook' : 'Rope',
    short: 'Rope',
    note: 'slack, never lifts',
    weight: 1.6,
  }),
  cable: ({ facts }) => ({
    name: 'Drop cable',
    note: `${facts.wire.gauge} AWG, ${facts.pump.wires} + ground`,
    weight: 1.8,
  }),
  conduit: (_, { small }, part) => ({
    name: 'Conduit to the house',
    short: 'Conduit',
    note: part === undefined ? '' : `cable inside, ${small(part.bottom)} deep`,
    weight: 1.5,
  }),
  buriedLine: ({ facts }, { depth }, part) => {
    const line = facts.house.line ?? facts.dropPipe;
    return {
      name: 'Line to the house',
      short: 'House line',
      note: `${pipeName(line)}, ${part !== undefined && part.top > 0 ? `top at ${depth(part.top)}` : 'above ground'}`,
      weight: 2,
    };
  },
  pitlessAdapter: ({ facts, values }, { depth, small }) => {
    const top = facts.top.kind === 'pitless' ? facts.top.depth : 0;
    const below = values.pitlessBelowFrost;
    if (below === null) return { name: 'Pitless adapter', note: `${depth(top)} deep, frost depth unknown`, weight: 4 };
    const side = below >= 0 ? 'below' : 'above';
    return { name: 'Pitless adapter', note: `${depth(top)}, ${small(Math.abs(below))} ${side} frost`, weight: 4 };
  },
  seal: ({ facts }, { small }) => ({
    name: 'Sanitary seal',
    note: `rubber, ${small(facts.well.casingHeight)} above ground`,
    weight: 4,
  }),
  tee: () => ({ name: 'Tee with plug', note: 'plug out, lift pipe in', weight: 2 }),
  frost: ({ values, facts }, { small }) => ({
    name: 'Frost line',
    weight: 4,
    note: values.frostDepth === null ? '' : `${small(values.frostDepth)}, ${saidBy(facts.site)}`,
  }),
  'insertFitting/top': ({ facts }) => ({
    name: `Insert fitting, ${count(facts.string.clampsPerJoint, 'clamp')}`,
    short: 'Insert fitting',
    note: 'carries the string',
    weight: 3,
  }),
  'insertFitting/pump': ({ facts }) => ({
    name: `Insert fitting, ${count(facts.string.clampsPerJoint, 'clamp')}`,
    short: 'Insert fitting',
    note: `${facts.string.fittings.includes('steel') ? 'steel' : facts.string.fittings}, screws opposed`,
    weight: 2,
  }),
  insertFitting: ({ facts }) => ({
    name: `Insert fitting, ${count(facts.string.clampsPerJoint, 'clamp')}`,
    short: 'Insert fitting',
    note: facts.string.fittings,
    weight: 1.5,
  }),
  dropPipe: ({ facts, values }, { length, pressure }) => ({
    name: `Drop pipe, ${pipeName(facts.dropPipe)}`,
    short: 'Drop pipe',
    weight: 2,
    note: [
      facts.dropPipe.rating === null ? (facts.dropPipe.wallClass ?? '') : pressure(facts.dropPipe.rating),
      values.dropPipeCutLength === null ? '' : length(values.dropPipeCutLength),
    ]
      .filter((each) => each !== '')
      .join(', '),
  }),
  splice: (solution, { depth }, part) => {
    const pump = solution.parts.find(({ kind }) => kind === 'pump');
    const above =
      part !== undefined && pump !== undefined ? `, ${depth(pump.top - (part.top + part.bottom) / 2)} up` : '';
    return {
      name: 'Splice, staggered',
      short: 'Splice',
      note: `${solution.facts.pump.wires + 1} joints${above}`,
      weight: 2,
    };
  },
  torqueArrestor: ({ facts }, { depth }) => ({
    name: 'Torque arrestor',
    note: facts.string.torqueArrestor === null ? '' : `${depth(facts.string.torqueArrestor)} above the pump`,
    brief: facts.string.torqueArrestor === null ? '' : `${depth(facts.string.torqueArrestor)} up`,
    weight: 2,
  }),
  checkValve: ({ facts }) => ({ name: 'Check valve', note: `spring type, arrow ${facts.string.arrow}`, weight: 3 }),
  nipple: ({ facts }) => ({ name: 'Nipple', note: facts.pump.outlet, weight: 0.6 }),
  coupling: () => ({ name: 'Coupling', note: '', weight: 0.6 }),
  tie: ({ facts }, { depth }) => ({ name: 'Tie', note: `every ${depth(facts.string.ties)}`, weight: 0.7 }),
  guard: () => ({ name: 'Cable guard', note: 'keeps the cable off the wall', brief: 'off the wall', weight: 1 }),
  cableGuardStrip: () => ({ name: 'Guard strip', note: 'over the motor leads', weight: 0.8 }),
  shroud: (_, { bore }, part) => ({
    name: 'Flow sleeve',
    note: part === undefined ? '' : `${bore(part.radius * 2)}, past the motor first`,
    weight: 2,
  }),
  pump: ({ facts, values }, { power, flow }) => ({
    name: facts.pump.power === null ? 'Pump' : `Pump, ${power(facts.pump.power)}`,
    weight: 4,
    note: values.operatingFlowAtCutOut === null ? '' : `${flow(values.operatingFlowAtCutOut)} at cut-out`,
  }),
  intake: ({ values, facts }, { depth }) => {
    const water = values.submergence;
    const note =
      water === null
        ? 'water over it unknown'
        : water < 0
          ? `${depth(-water)} over the water`
          : `${depth(water)} under water`;
    return { name: `Intake, ${depth(values.intakeDepth ?? facts.pump.setting)}`, note, weight: 4 };
  },
  motor: ({ values, facts }, units) => ({
    name: 'Motor',
    weight: 3,
    note:
      values.velocityPastMotor === null
        ? units.bore(facts.pump.motorDiameter)
        : `cooling flow, ${slowVelocity(values.velocityPastMotor, units)}`,
  }),
  grout: ({ facts }, { depth }) => ({
    name: 'Grout',
    note: facts.well.groutBottom === null ? 'not reported' : `to ${depth(facts.well.groutBottom)}`,
    weight: 1,
  }),
  // Of several in one hole, and of blank pipe, the one that this window shows.
  casing: ({ facts, bore }, { depth }, _part, _key, shown) => {
    const stretch = bore.find(({ kind, top, bottom }) => kind === 'casing' && bottom > shown.top && top < shown.bottom);
    if (stretch !== undefined && stretch.casing === undefined) return blankPipe(stretch, bore, depth);
    const index = stretch?.casing ?? 0;
    const casing = facts.well.casings[index];
    const word = index === 0 ? 'Casing' : 'Liner';
    return {
      name: casing === undefined ? word : `${word}, ${casing.nominalSize} ${casing.material}`,
      short: word,
      note:
        casing?.bottom == null
          ? 'end not known'
          : `${index === 0 ? 'to' : `${depth(casing.top)} to`} ${depth(casing.bottom)}`,
      weight: 1.2,
    };
  },
  screen: ({ facts }, { depth }) => {
    const screen = facts.well.intake.screens[0];
    return {
      name: 'Screen',
      note: screen === undefined ? '' : `${depth(screen.top)} to ${depth(screen.bottom)}`,
      weight: 2,
    };
  },
  inflow: ({ facts }, { percent, depth }, _part, key) => {
    const inflow = facts.well.inflows?.[Number(key.slice(key.indexOf('/') + 1)) - 1];
    if (inflow === undefined) return { name: 'Inflow', note: '', weight: 2 };
    return {
      name: `Inflow at ${depth(inflow.depth)}`,
      note: inflow.share === null ? 'share not known' : `${percent(inflow.share)} of the water`,
      weight: 2,
    };
  },
  openHole: ({ facts }, { bore }) => ({
    name: 'Open hole',
    note: facts.well.intake.diameter === null ? 'width not known' : bore(facts.well.intake.diameter),
    weight: 1,
  }),
  staticLevel: ({ levels }, { depth }) => ({
    name: 'Static level',
    note: levels.static === null ? '' : `${depth(levels.static)}, pump off`,
    weight: 4,
  }),
  pumpingLevel: ({ levels }, { depth }) => ({
    name: 'Pumping level',
    note: levels.pumping === null ? '' : `${depth(levels.pumping)}, pump on`,
    weight: 4,
  }),
};

/** Under the last screen it catches what settles; elsewhere it joins two screens, or a screen to its casing. */
function blankPipe({ top, bottom }: BoreStretch, bore: readonly BoreStretch[], depth: Show['depth']): Words {
  const isLast = !bore.some((each) => each.kind === 'screen' && each.top >= bottom - 1e-6);
  return { name: isLast ? 'Sump' : 'Blank pipe', note: `${depth(top)} to ${depth(bottom)}`, weight: 1.2 };
}

/** A flow past a motor is judged by tenths of a foot: two decimals keep a slow one from reading as none. */
const slowVelocity = (velocity: MetresPerSecond, { units, velocity: say }: Show): string =>
  units === 'us' && velocity < feet(1) ? `${toFeet(velocity).toFixed(2)} ft/s` : say(velocity);

export function wordsFor(solution: Solution, units: 'us' | 'metric', key: string, kind: string, shown: Shown): Words {
  const say = SAYINGS[key] ?? SAYINGS[kind];
  const part = solution.parts.find((each) => each.key === key);
  return say === undefined ? { name: kind, note: '', weight: 0.5 } : say(solution, show(units), part, key, shown);
}
