/** The section as a list from top to bottom: what each thing is, what it meets, and where the pump may hang. */
import type { HouseFacts } from '../../model/facts.ts';
import type { Tellings } from '../../model/string/fromTop.ts';
import type { HouseKind } from '../../model/string/houseKinds.ts';
import type { JoinedBy, Neighbour } from '../../model/string/meetings.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch } from '../../model/solution.ts';
import { wireName } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';
import { parts } from './parts.ts';
import { gap } from './phrases.ts';

/** A name, and whole sentences about it. */
interface Told {
  readonly name: string;
  readonly says: readonly string[];
}

type Say<V extends keyof Tellings> = (numbers: Tellings[V], show: Show) => Told;

/** What closes a well that flows by itself is not for the owner to choose. */
const FLOWING = ['What closes a well that flows by itself is for the contractor to say.'] as const;

const bores: Readonly<Record<BoreStretch['kind'], string>> = {
  casing: 'the casing',
  screen: 'the screen',
  openHole: 'the wall of the hole',
};

const tied: Readonly<Record<Tellings['rope']['tied'], string>> = {
  'casing hook': 'Tied to a hook on the casing.',
  cap: 'Tied to the cap.',
  'through cap': 'Tied to an anchor through the cap.',
  loose: 'Tied to nothing: it lies loose.',
};

/** Where no cap is, and no hook pierces the casing. */
const tiedToSeal: typeof tied = {
  ...tied,
  'casing hook': 'Tied to the eye under the seal.',
  cap: 'Tied to the seal.',
  'through cap': 'Tied to an anchor through the seal.',
};

const pumping: Readonly<Record<Tellings['pumpingLevel']['is'], readonly string[]>> = {
  held: ['The water while the pump runs.'],
  foretold: ['While pumping, the water falls to the intake.'],
  anywhere: ['Nobody knows how far the water falls: it may stand anywhere from the level at rest to the pump.'],
  notKnown: [],
};

const tellings: { readonly [V in keyof Tellings]: Say<V> } = {
  cap: ({ flowing }) => ({ name: 'Well cap', says: flowing ? FLOWING : ['On the casing.'] }),
  seal: ({ flowing }) => ({
    name: 'Sanitary seal',
    says: flowing ? FLOWING : ['In the top of the casing. It carries the whole string.'],
  }),
  plug: () => ({ name: 'Plug', says: ['It comes out for the lift-out pipe.'] }),
  tee: () => ({ name: 'Tee', says: ['The line to the house leaves here.'] }),
  union: () => ({ name: 'Union', says: ['In the line, beside the tee. Undo it and the seal lifts off.'] }),
  tap: () => ({ name: 'Sample tap', says: ['On the line, before it leaves for the house.'] }),
  support: () => ({ name: 'Pipe support', says: ['Under the line, from the ground up.'] }),
  capSplice: ({ joints }) => ({
    name: 'Splice under the cap',
    says: [`The pump’s cable meets the cable to the house: ${joints} joints.`],
  }),
  collar: () => ({ name: 'Coupling on the seal', says: ['It keeps the pipe from slipping down.'] }),
  shortNipple: () => ({ name: 'Nipple', says: [] }),
  pitlessAdapter: ({ belowFrost }, show) => ({
    name: 'Pitless adapter',
    says: [
      'In the wall of the casing. The line to the house leaves here.',
      'Its body stays in the wall; its sliding half lifts out with the pipe.',
      ...frostSentence(belowFrost, show),
    ],
  }),
  line: ({ pipe }) => ({
    name: 'Line to the house',
    says: [pipe === null ? 'Nobody said which pipe.' : `${sized(pipe.size, pipe.material)}.`],
  }),
  conduit: () => ({ name: 'Conduit', says: ['It takes the cable from the top of the well to the trench.'] }),
  bond: () => ({ name: 'Bond', says: ['It joins the casing to the ground wire.'] }),
  dropPipe: ({ size, material, rating, wallClass, length, sections, guards, index, count }, show) => ({
    name: `Drop pipe, ${sized(size, material)}${rating === null ? '' : ` ${show.pressure(rating)}`}${
      rating === null && wallClass !== null ? ` ${wallClass}` : ''
    }`,
    says: [
      count === 1 ? `${show.length(length)} long.` : `Piece ${index + 1} of ${count}, ${show.length(length)} long.`,
      ...(sections === null ? [] : [inSections(sections, show)]),
      ...(guards === null ? [] : [`Cable guards every ${show.depth(guards.every)}, ${guards.count} in all.`]),
    ],
  }),
  torqueArrestor: ({ against }) => ({
    name: 'Torque arrestor',
    says: [`Round the pipe, its arms against ${bores[against]}.`],
  }),
  splice: ({ joints, ...of }) => ({
    name: numbered('Splice', of),
    says: [`In the cable, beside the pipe: ${joints} joints, one above the other.`],
  }),
  probe: ({ overIntake }, show) => ({
    name: 'Probe of the dry-run protection',
    says: [
      `On wires of its own beside the pipe. It stops the pump when the water falls below it.`,
      `${gap(overIntake, show)} ${overIntake < 0 ? 'under' : 'over'} the intake.`,
    ],
  }),
  cable: ({ gauge, wires, ties, spliced }, { units, depth }) => ({
    name: 'Cable',
    says: [
      `${wireName(gauge, units)}, ${wires} wires and ground, tied to the pipe every ${depth(ties)}.`,
      spliced ? 'A splice joins it to the motor’s lead.' : 'The motor’s own lead, without a splice.',
    ],
  }),
  rope: ({ material, tied: to, top }) => ({
    name: `Rope, ${material}`,
    says: [top === 'seal' ? tiedToSeal[to] : tied[to], 'It hangs slack and never lifts.'],
  }),
  checkValve: ({ arrow, ...of }) => ({ name: numbered('Check valve', of), says: [`Its arrow points ${arrow}.`] }),
  flowLimiter: ({ flow }, show) => ({
    name: 'Flow-limiting valve',
    says: [
      `On the pump’s outlet. ${flow === null ? 'Nobody said which flow it holds.' : `It holds ${show.flow(flow)}.`}`,
    ],
  }),
  nipple: () => ({ name: 'Nipple', says: [] }),
  pump: ({ power, flow, generic, open }, show) => ({
    name: power === null ? 'Pump' : `Pump, ${show.power(power)}`,
    says:
      flow === null
        ? []
        : [`It gives ${generic ? 'at least ' : ''}${show.flow(flow)} ${open ? 'into the open tank' : 'at cut-out'}.`],
  }),
  intake: ({ water }, show) => ({
    name: 'Pump intake',
    says: [
      water === null
        ? 'How much water stands over it while pumping, nobody knows.'
        : water < 0
          ? `${show.depth(-water)} over the water while pumping.`
          : `${show.depth(water)} under the water while pumping.`,
    ],
  }),
  motor: ({ overBottom }, show) => ({
    name: 'Motor',
    says: [
      overBottom < 0
        ? `${show.length(-overBottom)} under the bottom of the well.`
        : `${show.length(overBottom)} over the bottom of the well.`,
    ],
  }),
  shroud: ({ diameter }, show) => ({
    name: 'Flow sleeve',
    says: [`Round intake and motor, ${show.bore(diameter)} wide outside.`],
  }),
  inHouse: ({ part, from, to, house }, show) => ({
    name: parts[part].name,
    says: [`${overFloor(from, to, show)}.`, ...inHouse(part, house, show)],
  }),
  tank: ({ open, volume, gives, precharge }, show) => ({
    name: `${open ? 'Open tank' : 'Pressure tank'}${volume === null ? '' : `, ${show.volume(volume)}`}`,
    says: [
      'On the floor of the house.',
      ...(volume === null ? ['Nobody said how large.'] : []),
      ...(gives === null ? [] : [`It gives ${show.volume(gives)} from cut-out to cut-in.`]),
      ...(open ? [] : [`Its air is set to ${show.pressure(precharge)} while it is empty.`]),
    ],
  }),
  ground: () => ({ name: 'The ground', says: [] }),
  frost: ({ estimated }) => ({ name: 'Frost line', says: estimated ? ['Estimated.'] : [] }),
  staticLevel: () => ({ name: 'Static level', says: ['The water at rest.'] }),
  pumpingLevel: ({ is }) => ({ name: 'Pumping level', says: pumping[is] }),
  casing: ({ size, material, inner, grout }, show) => ({
    name: [inner ? 'Liner,' : 'Casing,', size, material === 'other' ? 'other material' : (material ?? '')]
      .filter((word) => word !== '')
      .join(' ')
      .replace(/,$/, ''),
    says: [
      ...(material === null ? ['Nobody said what it is made of.'] : []),
      ...(grout === undefined
        ? []
        : [grout === null ? 'Nobody reported grout.' : `Grout round it to ${show.depth(grout)}.`]),
    ],
  }),
  casingFoot: ({ inner, over }) => ({
    name: inner ? 'Liner bottom' : 'Casing bottom',
    says: over === null ? [] : [under[over]],
  }),
  screen: (of) => ({ name: numbered('Screen', of), says: ['Water comes in here.'] }),
  openHole: ({ diameter, said }, show) => ({
    name: said ? 'Open hole' : 'Open hole or screen',
    says: [
      ...(said ? [] : ['Nobody said whether it stands open or a screen stands in it.']),
      diameter === null ? 'Nobody said how wide.' : `${show.bore(diameter)} wide.`,
    ],
  }),
  blankPipe: ({ sump }) => ({
    name: sump ? 'Sump' : 'Blank pipe',
    says: sump ? ['Blank pipe that catches what settles.'] : [],
  }),
  inflow: ({ share }, show) => ({
    name: 'Water comes in',
    says: [share === null ? 'Nobody said how much of it.' : `${show.percent(share)} of it.`],
  }),
  wellBottom: () => ({ name: 'Well bottom', says: [] }),
};

/** "8 in to 15 in over the floor of the house" */
function overFloor(from: Metres, to: Metres, { small }: Show): string {
  return from <= 0
    ? `From the floor of the house to ${small(to)} over it`
    : `${small(from)} to ${small(to)} over the floor of the house`;
}

/** What it must do, or what must not be done to it. */
function inHouse(part: HouseKind, { cutIn, cutOut }: HouseFacts, { pressure }: Show): readonly string[] {
  switch (part) {
    case 'riser':
      return ['Whether it comes up through warm ground or through frost, nobody said.'];
    case 'tankTee':
      return ['No valve stands between it and the pump.'];
    case 'switch':
      return [`It starts the pump at ${pressure(cutIn)} and stops it at ${pressure(cutOut)}.`];
    case 'reliefValve':
      return ['Never plug it or cap it.'];
    case 'reliefPipe':
      return ['Its end is open, over the floor or a drain.'];
    case 'shutOff':
      return ['It stands after the tank, on the side of the house.'];
    case 'disconnect':
      return ['Off and locked before any work on the pump.'];
    case 'controlBox':
    case 'drive':
      return ['An electrician connects it.'];
    default:
      return [];
  }
}

/** Under the foot of a casing. */
const under: Readonly<Record<BoreStretch['kind'], string>> = {
  casing: 'Pipe goes on below it.',
  screen: 'Below it the screen.',
  openHole: 'Below it the hole, without a casing.',
};

const neighbours: Readonly<Record<Neighbour, string>> = {
  pitlessAdapter: 'the pitless adapter',
  plug: 'the plug',
  tee: 'the tee',
  nipple: 'the nipple',
  coupling: 'the coupling',
  dropPipe: 'the drop pipe',
  checkValve: 'the check valve',
  pump: 'the pump',
  intake: 'the intake',
  motor: 'the motor',
};

export const fromTop = {
  title: 'From top to bottom',
  about: 'Each thing where it begins, and what it meets. Depths count from the ground.',
  tellings,
  above: (what: string) => `Above it: ${what}.`,
  below: (what: string) => `Below it: ${what}.`,
  liftOutPipe: 'the thread for the lift-out pipe',
  meets: (neighbour: Neighbour, joint: JoinedBy): string => `${neighbours[neighbour]}${joined(joint)}`,
  where: placed,
  placeAssumed: {
    both: (where: string) => `${where}, assumed`,
    top: (where: string) => `${where}, upper end assumed`,
    bottom: (where: string) => `${where}, lower end assumed`,
  },
  notKnown: 'depth not known',
  assumed: (names: readonly string[]) => `Assumed: ${names.join('; ')}.`,
  unasked: 'Drawn unasked: nobody said whether it is there.',
  mayHang: {
    title: 'Where the pump may hang',
    adapter: 'Where the pitless adapter may stand',
    /** @param now  where it hangs */
    within: (now: string) => `It hangs at ${now}, within that.`,
    /** In a stretch that nobody can call right. */
    withinUnknown: (now: string) => `It hangs at ${now}, and nobody can call that right.`,
    off: (now: string, by: string, deeper: boolean) =>
      `It hangs at ${now}, ${by} too ${deeper ? 'deep' : 'high'} for that.`,
    adapterWithin: (now: string) => `It stands at ${now}, within that.`,
    adapterOff: (now: string, by: string, deeper: boolean) =>
      `It stands at ${now}, ${by} too ${deeper ? 'deep' : 'high'} for that.`,
    /** Two rules exclude each other. */
    nowhere: (from: string, to: string) => `No depth meets both: ${from}, and ${to}.`,
    /** No depth would change that. */
    wrongAnywhere: (title: string) => `No depth is right: ${title}.`,
    noStaticLevel: 'Nobody can tell: the static level is not known.',
    noFrost: 'Nobody can tell: the frost depth is not known.',
    flowing: 'Nowhere yet. The well flows by itself: a licensed contractor has to see it first.',
  },
};

/** Shallower than this it is at the ground. */
const LEVEL: Metres = 0.005;

/**
 * "140 ft", "5 ft to 158 ft", "18 in above the ground to 90 ft"
 *
 * @param bottom   null for a level, and where nobody said
 * @param hasEnds  whether it reaches further down, as a level does not
 */
function placed(top: Metres, bottom: Metres | null, hasEnds: boolean, show: Show): string {
  const from = at(top, show);
  if (bottom === null) return hasEnds ? `from ${from} down, end not known` : from;
  const to = at(bottom, show);
  if (from === to) return from;
  return bottom < -LEVEL ? `${gap(top, show)} to ${to}` : `${from} to ${to}`;
}

function at(depth: Metres, show: Show): string {
  if (Math.abs(depth) < LEVEL) return show.depth(0);
  return depth < 0 ? `${gap(depth, show)} above the ground` : show.length(depth);
}

function joined(joint: JoinedBy): string {
  switch (joint.by) {
    case 'pushed':
      return `, on a ${joint.fittings} insert fitting with ${clamps(joint.clamps)}`;
    case 'threaded':
      return ', by a thread';
    case 'outlet':
      return `, by its outlet’s thread, ${joint.thread}`;
    case 'bolted':
      return '';
  }
}

function clamps(count: number): string {
  return count === 0 ? 'no clamp' : count === 1 ? '1 clamp' : `${count} clamps`;
}

function frostSentence(belowFrost: Metres | null, show: Show): readonly string[] {
  if (belowFrost === null) return ['Nobody said how deep the frost goes.'];
  return [`${show.small(Math.abs(belowFrost))} ${belowFrost < 0 ? 'above' : 'below'} the frost.`];
}

function inSections({ of, assumed, couplings }: NonNullable<Tellings['dropPipe']['sections']>, show: Show): string {
  const joints = couplings === 1 ? '1 coupling' : `${couplings} couplings`;
  return `In lengths of ${show.depth(of)}${assumed ? ', assumed,' : ''} with ${joints}.`;
}

/** "1 in PE" */
function sized(size: string, material: string): string {
  return [size, material].filter((word) => word !== '').join(' ');
}

/** The only one needs no number. */
function numbered(name: string, { index, count }: { readonly index: number; readonly count: number }): string {
  return count > 1 ? `${name} ${index + 1}` : name;
}
