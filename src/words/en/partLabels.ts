/** Labels of the parts in the details. */
import type { CasingFacts, PumpFacts, RopeFacts, SiteFacts, StringFacts, TopFacts } from '../../model/facts.ts';
import type { CubicMetresPerSecond, Metres, MetresPerSecond, Pascals, Ratio, Watts } from '../../model/si.ts';
import type { WireSize } from '../../model/tables/wireSizes.ts';
import { feet, toFeet, wireName } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';
import type { PartLabel } from '../labels.ts';

export interface Height {
  readonly height: Metres;
}

export interface Flowing {
  /** The water stands at the ground or over it. */
  readonly flowing: boolean;
}

export interface Depth {
  readonly depth: Metres | null;
}

export interface Stretch {
  readonly top: Metres;
  readonly bottom: Metres;
}

/** Of the line and the drop pipe. */
export interface Pipe {
  /** As it is printed on it: "1 in". */
  readonly size: string;
  readonly material: string;
}

export interface CasingNumbers {
  readonly size: string;
  /** Null where nobody said. */
  readonly material: CasingFacts['material'] | null;
  readonly top: Metres;
  readonly bottom: Metres | null;
}

export interface Joint {
  readonly clamps: number;
  readonly fittings: StringFacts['fittings'];
}

/** Who said how deep the frost goes: where the plan gives a depth and no name, whoever typed it. */
const frostFrom: Readonly<Record<NonNullable<SiteFacts['frostFrom']> | 'typed', string>> = {
  'local code': 'local code',
  estimate: 'estimate',
  adviser: 'adviser',
  typed: 'as entered',
};

/** What closes a well that flows by itself is not for the owner to choose: no vent, and no usual cap. */
const FLOWING_TOP = { name: 'Top: for the contractor', short: 'Top: contractor' } as const;

const bond: PartLabel = {
  name: 'Bond to the casing',
  short: 'Bond',
  note: 'clamp and ground wire',
  brief: 'ground wire',
};
/** Of the pitless adapter: the body stays in the wall. */
const slidingHalf: PartLabel = {
  name: 'Pitless sliding half',
  short: 'Sliding half',
  note: 'lifts out, thread on top',
};
const tee: PartLabel = { name: 'Tee with plug', note: 'plug out, lift-out pipe in' };
const union: PartLabel = { name: 'Union', note: 'undo it, the seal lifts off', brief: 'opens the line' };
const tap: PartLabel = { name: 'Sample tap', note: 'smooth, points down' };
const support: PartLabel = { name: 'Pipe support', note: 'carries the line' };
const capSplice: PartLabel = { name: 'Splice under the cap', note: 'to the house cable' };
const coupling: PartLabel = { name: 'Coupling', note: '' };
const guard: PartLabel = { name: 'Cable guard', note: 'keeps the cable off the wall', brief: 'off the wall' };
const cableGuardStrip: PartLabel = { name: 'Guard strip', note: 'over the motor leads' };

export const partLabels = {
  cap: ({ height, flowing }: Height & Flowing, { small }: Show): PartLabel => ({
    ...(flowing ? FLOWING_TOP : { name: 'Cap, screened vent', short: 'Cap, vent' }),
    note: `${small(height)} above ground`,
  }),
  bond,
  /** @param top  what it hangs under */
  rope: ({ tied, top }: { tied: RopeFacts['tied'] | null; top: TopFacts['kind'] }): PartLabel => ({
    name: tied !== 'casing hook' ? 'Rope' : top === 'seal' ? 'Rope on the seal’s eye' : 'Rope on a casing hook',
    short: 'Rope',
    note: 'slack, never lifts',
  }),
  cable: ({ gauge, wires }: { gauge: WireSize; wires: PumpFacts['wires'] }, { units }: Show): PartLabel => ({
    name: 'Drop cable',
    note: `${wireName(gauge, units)}, ${wires} + ground`,
    ...(units === 'metric' && { brief: wireName(gauge, units) }),
  }),
  conduit: ({ depth }: Depth, { small }: Show): PartLabel => ({
    name: 'Conduit to the house',
    short: 'Conduit',
    note: depth === null ? '' : `cable inside, ${small(depth)} deep`,
  }),
  /** @param pipe  null where nobody said which */
  buriedLine: ({ pipe, top }: { pipe: Pipe | null; top: Metres | null }, { depth }: Show): PartLabel => ({
    name: 'Line to the house',
    short: 'Line to house',
    note: `${pipe === null ? 'pipe not known' : pipeName(pipe.size, pipe.material)}, ${
      top !== null && top > 0 ? `top at ${depth(top)}` : 'above ground'
    }`,
  }),
  pitlessAdapter: (
    { depth, belowFrost }: { depth: Metres; belowFrost: Metres | null },
    { depth: deep, small }: Show,
  ): PartLabel => ({
    name: 'Pitless adapter, body',
    short: 'Pitless adapter',
    note:
      belowFrost === null
        ? `${deep(depth)} deep, frost depth not known`
        : `${deep(depth)}, ${small(Math.abs(belowFrost))} ${belowFrost >= 0 ? 'below' : 'above'} frost`,
  }),
  slidingHalf,
  seal: ({ height, flowing }: Height & Flowing, { small }: Show): PartLabel => ({
    ...(flowing ? FLOWING_TOP : { name: 'Sanitary seal' }),
    note: `${flowing ? '' : 'rubber, '}${small(height)} above ground`,
  }),
  tee,
  union,
  tap,
  support,
  capSplice,
  frost: ({ depth, from }: Depth & { from: keyof typeof frostFrom }, { small }: Show): PartLabel => ({
    name: 'Frost line',
    note: depth === null ? '' : `${small(depth)}, ${frostFrom[from]}`,
  }),
  /** The joint that carries the string. */
  fittingAtTop: ({ clamps }: Joint): PartLabel => fitting(clamps, 'carries the string'),
  fittingAtPump: ({ clamps, fittings }: Joint): PartLabel =>
    fitting(clamps, `${fittings.includes('steel') ? 'steel' : fittings}, screws opposed`),
  fitting: ({ clamps, fittings }: Joint): PartLabel => fitting(clamps, fittings),
  dropPipe: (
    {
      size,
      material,
      rating,
      wallClass,
      toCut,
    }: Pipe & { rating: Pascals | null; wallClass: string | null; toCut: Metres | null },
    { length: long, pressure }: Show,
  ): PartLabel => {
    const strength = rating === null ? (wallClass ?? '') : pressure(rating);
    const cut = toCut === null ? '' : `cut ${long(toCut)}`;
    return {
      name: `Drop pipe, ${pipeName(size, material)}`,
      short: 'Drop pipe',
      note: strength !== '' && cut !== '' ? `${strength}, ${cut}` : strength + cut,
    };
  },
  /** @param up  above the pump */
  splice: ({ joints, up }: { joints: number; up: Metres | null }, { depth }: Show): PartLabel => ({
    name: 'Splice, staggered',
    short: 'Splice',
    note: `${joints} joints${up === null ? '' : `, ${depth(up)} up`}`,
  }),
  torqueArrestor: ({ up }: { up: Metres | null }, { depth }: Show): PartLabel => {
    const height = up === null ? null : depth(up);
    return {
      name: 'Torque arrestor',
      note: height === null ? '' : `${height} above the pump`,
      brief: height === null ? '' : `${height} up`,
    };
  },
  /** @param above  the intake; negative where it hangs below it */
  probe: ({ depth, above }: { depth: Metres; above: Metres | null }, { depth: deep }: Show): PartLabel => ({
    name: `Probe, ${deep(depth)}`,
    note: above === null ? 'stops the pump' : `${deep(Math.abs(above))} ${above >= 0 ? 'over' : 'under'} the intake`,
  }),
  /** @param flow  that it holds; null where nobody said */
  flowLimiter: ({ flow }: { flow: CubicMetresPerSecond | null }, show: Show): PartLabel => ({
    name: 'Flow-limiting valve',
    note: flow === null ? 'flow not known' : `holds ${show.flow(flow)}`,
  }),
  checkValve: ({ arrow }: { arrow: StringFacts['arrow'] }): PartLabel => ({
    name: 'Check valve',
    note: `spring type, arrow ${arrow}`,
  }),
  /** @param outlet  its thread, as the plan names it */
  nipple: ({ outlet }: { outlet: string }): PartLabel => ({ name: 'Nipple', note: outlet }),
  coupling,
  tie: ({ every }: { every: Metres }, { depth }: Show): PartLabel => ({ name: 'Tie', note: `every ${depth(every)}` }),
  guard,
  cableGuardStrip,
  shroud: ({ diameter }: { diameter: Metres | null }, { bore }: Show): PartLabel => ({
    name: 'Flow sleeve',
    note: diameter === null ? '' : `${bore(diameter)} outside`,
  }),
  /** @param flow  at cut-out, or into an open tank; of a generic pump that of the weakest of its rating */
  pump: (
    {
      power,
      flow,
      generic,
      open,
    }: { power: Watts | null; flow: CubicMetresPerSecond | null; generic: boolean; open: boolean },
    { power: strong, flow: much }: Show,
  ): PartLabel => ({
    name: power === null ? 'Pump' : `Pump, ${strong(power)}`,
    note: flow === null ? '' : `${generic ? 'at least ' : ''}${much(flow)} ${open ? 'into the tank' : 'at cut-out'}`,
    ...(flow !== null && generic ? { brief: `at least ${much(flow)}` } : {}),
  }),
  /** @param water  that stands over it; negative where it hangs above the water */
  intake: ({ depth, water }: { depth: Metres; water: Metres | null }, { depth: deep }: Show): PartLabel => ({
    name: `Intake, ${deep(depth)}`,
    note:
      water === null
        ? 'water over it not known'
        : water < 0
          ? `${deep(-water)} over the water`
          : `${deep(water)} under water`,
    ...(water === null ? { brief: 'water not known' } : {}),
  }),
  /** @param velocity  of the water past it */
  motor: ({ diameter, velocity }: { diameter: Metres; velocity: MetresPerSecond | null }, show: Show): PartLabel => ({
    name: 'Motor',
    note: velocity === null ? show.bore(diameter) : `cooling flow, ${slowVelocity(velocity, show)}`,
  }),
  grout: ({ depth }: Depth, { depth: deep }: Show): PartLabel => ({
    name: 'Grout',
    note: depth === null ? 'not reported' : `to ${deep(depth)}`,
  }),
  /** Null for one that the plan does not tell of, as below. */
  casing: (pipe: CasingNumbers | null, { depth }: Show): PartLabel =>
    cased('Casing', pipe, pipe === null || pipe.bottom === null ? 'end not known' : `to ${depth(pipe.bottom)}`),
  liner: (pipe: CasingNumbers | null, { depth }: Show): PartLabel =>
    cased(
      'Liner',
      pipe,
      pipe === null || pipe.bottom === null ? 'end not known' : `${depth(pipe.top)} to ${depth(pipe.bottom)}`,
    ),
  /** Blank pipe under the last screen: it catches what settles. */
  sump: (stretch: Stretch, show: Show): PartLabel => ({ name: 'Sump', note: fromTo(stretch, show) }),
  blankPipe: (stretch: Stretch, show: Show): PartLabel => ({ name: 'Blank pipe', note: fromTo(stretch, show) }),
  screen: (stretch: Stretch | null, show: Show): PartLabel => ({
    name: 'Screen',
    note: stretch === null ? '' : fromTo(stretch, show),
  }),
  inflow: (inflow: { depth: Metres; share: Ratio | null } | null, { depth, percent }: Show): PartLabel =>
    inflow === null
      ? { name: 'Inflow', note: '' }
      : {
          name: `Inflow at ${depth(inflow.depth)}`,
          note: inflow.share === null ? 'share not known' : `${percent(inflow.share)} of the water`,
        },
  /** @param said  whether it is known to be open: else a screen may stand in it */
  openHole: ({ diameter, said }: { diameter: Metres | null; said: boolean }, { bore }: Show): PartLabel => ({
    name: said ? 'Open hole' : 'Open or screened?',
    note: !said ? 'not known' : diameter === null ? 'width not known' : bore(diameter),
  }),
  staticLevel: ({ depth }: Depth, { depth: deep }: Show): PartLabel => ({
    name: 'Static level',
    note: depth === null ? '' : `${deep(depth)}, pump off`,
  }),
  pumpingLevel: ({ depth }: Depth, { depth: deep }: Show): PartLabel => ({
    name: 'Pumping level',
    note: depth === null ? '' : `${deep(depth)}, pump on`,
  }),
  /** Below the intake, where no water gets to: what a test foretells of the flow that the house wants. */
  foretoldLevel: ({ demand }: { demand: number | null }, { flow }: Show): PartLabel => ({
    name: 'Pumping level',
    note: demand === null ? 'below the intake' : `where ${flow(demand)} would draw it`,
  }),
  /** A bottom that lies below the frame: how far it is from the motor, and how deep. */
  toBottom: ({ gap, bottom }: { gap: Metres; bottom: Metres }, { depth }: Show): PartLabel => ({
    name: `${depth(gap)} to the bottom`,
    short: `${depth(gap)} to bottom`,
    note: `well ends at ${depth(bottom)}`,
  }),
  /** Labels that found no room: "3 more: grout, casing, tie". */
  more: (names: readonly string[]): string => `${names.length} more: ${names.join(', ').toLowerCase()}`,
};

/** "Casing, 6 in steel"; a material that nobody said is told as that, and not as one of its own. */
function cased(what: string, pipe: CasingNumbers | null, note: string): PartLabel {
  if (pipe === null) return { name: what, note };
  const { size, material } = pipe;
  const own = [size, material === 'other' ? 'other material' : (material ?? '')]
    .filter((word) => word !== '')
    .join(' ');
  const label = { name: own === '' ? what : `${what}, ${own}`, short: what };
  return material === null
    ? { ...label, note: `material not known, ${note}`, brief: 'material not known' }
    : { ...label, note };
}

/** "1 in PE"; the kind of steel is told by the parts list. */
function pipeName(size: string, material: string): string {
  return `${size} ${material.includes('steel') ? 'steel' : material}`;
}

function fitting(clamps: number, note: string): PartLabel {
  return { name: `Insert fitting, ${clamps} clamp${clamps === 1 ? '' : 's'}`, short: 'Insert fitting', note };
}

function fromTo({ top, bottom }: Stretch, { depth }: Show): string {
  return `${depth(top)} to ${depth(bottom)}`;
}

/** A flow past a motor is judged by tenths of a foot: two decimals keep a slow one from reading as none. */
function slowVelocity(velocity: MetresPerSecond, { units, velocity: fast }: Show): string {
  return units === 'us' && velocity < feet(1) ? `${toFeet(velocity).toFixed(2)} ft/s` : fast(velocity);
}
