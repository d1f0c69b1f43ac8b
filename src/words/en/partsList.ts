/** The parts list: what each line is called, where it goes, and what it has to fit. */
import type { Group, LineNumbers, NumbersOf, What } from '../../model/parts/partLine.ts';
import type { PartKind } from '../../model/solution.ts';
import { decimals, wireName } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';
import { parts } from './parts.ts';

interface Bought {
  readonly name: string;
  /** Where it goes and why that one: whole sentences. */
  readonly note: string;
}

type Say<Kind extends What> = (numbers: NumbersOf<Kind>, show: Show) => Bought;

/** Parts that no list has: they come with another, or stand in the ground. */
type NeverBought =
  'motor' | 'intake' | 'casing' | 'screen' | 'openHole' | 'grout' | 'well' | 'frost' | 'staticLevel' | 'pumpingLevel';

const named = (kind: PartKind, note: string): (() => Bought) => {
  const { name } = parts[kind];
  return () => ({ name, note });
};
const plain = (name: string, note: string): (() => Bought) => {
  return () => ({ name, note });
};

const pipe = (name: string, where: string) => (numbers: LineNumbers['dropPipe'], show: Show) => {
  const { rating, wallClass, standard, section, joined, cutSection } = numbers;
  const of = [standard, wallClass, rating === null ? null : `${show.pressure(rating)} or more`]
    .filter(Boolean)
    .join(', ');
  const comes =
    joined === 'barb'
      ? 'In one piece off the coil wherever it goes: each joint more can let go.'
      : section === null
        ? ''
        : joined === 'thread'
          ? `In sections of ${show.length(section)}, threaded at both ends, each with its coupling.${
              cutSection ? ' One is cut: have the shop cut and thread it.' : ''
            }`
          : `In sections of ${show.length(section)}, each with a socket for the next.`;
  return { name, note: [`${where} ${of}.`, comes].filter(Boolean).join(' ') };
};

const horsepower = (power: number | null, show: Show): string =>
  power === null ? 'the power of the motor' : show.power(power);

const lines: { readonly [Kind in Exclude<What, NeverBought>]: Say<Kind> } = {
  pump: ({ power, phase, wires, voltage, frequency, flow, diameter }, show) => ({
    name: 'Submersible pump with its motor',
    note: [
      `${power === null ? 'Power not chosen yet' : show.power(power)}, ${show.voltage(voltage)}${
        frequency === null ? '' : `, ${frequency} Hz`
      }, ${phase === 3 ? 'three-phase' : `single-phase, ${wires} wires and ground`}.`,
      ...(flow === null ? [] : [`Of the ${show.flow(flow)} class.`]),
      `At most ${show.bore(diameter)} over its cable guard. Motor, leads and guard strip come with it: ask for them.`,
    ].join(' '),
  }),
  cableGuardStrip: named('cableGuardStrip', 'Along the pump, over the leads. Most pumps bring it.'),
  shroud: ({ inside }, show) => ({
    name: parts.shroud.name,
    note: `Round the motor, ${show.bore(inside)} inside. Pump, sleeve and cable together have to pass the casing.`,
  }),
  nipple: named('nipple', 'Stainless steel or brass, short: some 2 in between its threads.'),
  bushing: ({ sizes, systems, wider }) => ({
    name: !sizes ? 'Thread adapter' : wider ? 'Reducing coupling with nipple' : 'Reducing bushing',
    note: `Stainless steel, bronze or brass.${wider ? ' No bushing widens: a coupling with two inner threads, and a short nipple in its small end.' : ''} Its outer thread goes into the one, its inner thread takes the other.${
      systems ? ' The two threads are of two systems: try both at the shop, and force neither.' : ''
    }`,
  }),
  checkValve: named(
    'checkValve',
    'Spring type, for upright use, no swing valve; stainless steel, bronze or brass. Its arrow points up.',
  ),
  flowLimiter: ({ flow }, show) => ({
    name: parts.flowLimiter.name,
    note: `${flow === null ? 'For the flow that the well can give' : `For ${show.flow(flow)}`}. With a nipple to screw it on, if it brings none.`,
  }),
  insertFitting: ({ byInside }) => ({
    name: parts.insertFitting.name,
    note: byInside
      ? 'A barb for the pipe at one end, a thread at the other. Metal, in the well at least.'
      : 'This pipe is measured by its outside: take a metal fitting made for it that may hang a pump, or a barb for its very bore.',
  }),
  clamp: ({ perJoint, screw }) => ({
    name: 'Hose clamp, all stainless',
    note: `At each joint ${perJoint}, screws opposed.${
      screw === 'carbon steel'
        ? ' The plan tells carbon steel screws: these rust through.'
        : ' The screw is stainless too.'
    }`,
  }),
  dropPipe: pipe('Drop pipe', 'From the pump up to the top of the well. For drinking water.'),
  torqueArrestor: ({ bore, pipe: outside }, show) => ({
    name: parts.torqueArrestor.name,
    note: `For a bore of ${show.bore(bore)} and a pipe of ${show.bore(outside)} outside. Of one piece: it is slid on before the joint.`,
  }),
  splice: ({ wires, gauge, lead }, show) => ({
    name: 'Splice kit for under water',
    note: `For ${wires} wires, from the motor’s lead to ${wireName(gauge, show.units)}: one sleeve with heat-shrink for each. The lead has to be ${show.length(lead)} or longer.`,
  }),
  capSplice: ({ wires, gauge }, show) => ({
    name: 'Connectors for the splice under the cap',
    note: `For ${wires} wires of ${wireName(gauge, show.units)}, waterproof.`,
  }),
  probe: named('probe', 'Strapped to the pipe at the depth that it watches.'),
  probeWires: plain('Wires of the probe', 'Two conductors for wells, from the probe up to its relay in the house.'),
  tie: ({ every }, show) => ({
    name: parts.tie.name,
    note: `Every ${show.depth(every)}, and above and below each splice. Well tape or straps, nothing with an edge that cuts.`,
  }),
  guard: ({ bore, pipe: outside }, show) => ({
    name: parts.guard.name,
    note: `For a bore of ${show.bore(bore)} and a pipe of ${show.bore(outside)} outside.`,
  }),
  cable: ({ wires }) => ({
    name: 'Submersible pump cable',
    note: `${wires} wires and ground, made for wells: building cable does not last there. One length, no splice but those planned.`,
  }),
  houseCable: ({ wires }) => ({
    name: 'Cable from the house to the well',
    note: `${wires} wires and ground, of a kind that may be buried, or in conduit. A licensed electrician says which.`,
  }),
  rope: ({ diameter }, show) => ({
    name: parts.rope.name,
    note: `${diameter === null ? 'Nobody said how thick.' : `${show.bore(diameter)} thick.`} Its length has what the two knots take. Never for lifting.`,
  }),
  pitlessAdapter: ({ casing, steel, half, load }, show) => {
    const bears =
      load === null
        ? 'Ask what it may carry.'
        : `Its maker has to allow ${show.hook(load)} or more, and the twist of starting.`;
    if (half)
      return {
        name: 'Ring for the adapter’s sliding half',
        note: `Of the same make and model as the body in the wall: take the old half along. ${bears}`,
      };
    return {
      name: parts.pitlessAdapter.name,
      note: `For ${casing === '' ? 'your' : casing} ${steel ? 'steel casing' : 'casing, of its material'}: body, sliding half, gaskets and nut in one box. ${bears} Ask how far it stands into the casing.`,
    };
  },
  cap: ({ outside, known }, show) => ({
    name: `${parts.cap.name} with screened vent`,
    note: `For a casing of ${show.bore(outside)} outside${known ? '' : ' (measure it)'}, with a hub for the conduit and a gasket.`,
  }),
  seal: ({ inside, known }, show) => ({
    name: `${parts.seal.name} with screened vent`,
    note: `For a casing of ${show.bore(inside)} inside${known ? '' : ' (measure it)'}, with holes for the pipe, the cable and the vent.`,
  }),
  conduit: named(
    'conduit',
    'As wide as the hole for the cable in the well’s top, with a bend at the trench. Sealed inside against insects.',
  ),
  bond: ({ outside }, show) => ({
    name: 'Ground clamp and bonding wire',
    note: `Round a casing of ${show.bore(outside)} outside. The wire is as thick as the ground wire of the circuit, or more.`,
  }),
  coupling: named('coupling', 'Joins two lengths, of the pipe’s own strength; over a seal it carries the string.'),
  tee: named('tee', 'On the seal: the line to the house leaves at its side.'),
  plug: named('plug', 'In the upright end of the tee.'),
  union: named('union', 'In the line beside the tee, with what joins it to tee and line.'),
  tap: named('tap', 'Half-inch, no thread on its spout, on a reducing tee of the line’s size.'),
  support: named('support', 'Under the line, from firm ground up: close enough that it does not sag.'),
  buriedLine: pipe(
    'Line to the house',
    'From the well to the tank, below frost wherever it is buried. For drinking water.',
  ),
  threadAdapter: plain('Adapter, glued to threaded', 'At either end of the glued line.'),
  elbow: plain('Elbow', 'Where the line turns up to the tank.'),
  riser: named('riser', 'From the elbow at the floor up to the tank, threaded at both ends: measure it there.'),
  tankTee: named(
    'tankTee',
    'With ports for tank, switch, gauge, drain and relief valve. Its height has to suit the tank.',
  ),
  reliefValve: ({ rating, flow }, show) => ({
    name: parts.reliefValve.name,
    note: `Opens at or under ${show.pressure(rating)}, the tank’s rating${
      flow === null ? '' : `, and passes at least ${show.flow(flow)}, what the pump gives`
    }. With the thread of the tee’s port.`,
  }),
  reliefPipe: named('reliefPipe', 'Down to the floor or a drain, as wide as the valve’s outlet.'),
  gauge: ({ cutOut }, show) => ({
    name: parts.gauge.name,
    note: `Reads to about twice the cut-out pressure of ${show.pressure(cutOut)}. Its thread is that of the tee’s port, often 1/4 in.`,
  }),
  switch: ({ cutIn, cutOut, sensor }, show) => ({
    name: sensor ? 'Pressure sensor' : parts.switch.name,
    note: sensor
      ? 'It comes with the drive, or is of the kind that the drive names. In the tee’s port, with a nipple if it needs one.'
      : `Set to ${show.pressure(cutIn)} on and ${show.pressure(cutOut)} off, with a nipple to the tee’s port, often 1/4 in.`,
  }),
  drain: named('drain', 'At the lowest port of the tank tee, with that port’s thread.'),
  shutOff: named('shutOff', 'A full-bore ball valve toward the house, with a nipple where it has inner threads.'),
  tank: ({ open, volume, rating }, show) => ({
    name: open ? 'Open tank' : parts.tank.name,
    note: `${volume === null ? 'Nobody said how large.' : `${show.volume(volume)}.`}${
      open
        ? ' With a cover, a screened vent and an overflow.'
        : ` Rated ${show.pressure(rating)} or more. Its thread has to suit the tank tee.`
    }`,
  }),
  float: named('float', 'In the open tank. It switches the pump by way of a relay or starter that suits the motor.'),
  disconnect: named('disconnect', 'One that can be locked in the off position. For the electrician.'),
  controlBox: ({ power, voltage }, show) => ({
    name: parts.controlBox.name,
    note: `For ${horsepower(power, show)} at ${show.voltage(voltage)}, of the motor’s own kind: another one burns the motor out.`,
  }),
  drive: ({ power, voltage }, show) => ({
    name: parts.drive.name,
    note: `For ${horsepower(power, show)} at ${show.voltage(voltage)}, with its pressure sensor.`,
  }),
  relay: plain('Dry-run relay', 'At the panel: it stops the motor when the water is low. For the electrician.'),
  threadTape: plain('Thread tape', 'For drinking water, two or three turns the way the thread runs.'),
  threadPaste: plain('Thread paste', 'For drinking water, over the tape. Stainless threads seize without it.'),
  cement: plain('Primer and cement', 'For the glued line, as the pipe’s maker asks.'),
  seamTape: plain('Electrical tape', 'Holds the leads while you work. It seals no splice.'),
  adapterGrease: plain('Grease for the adapter’s ring', 'For drinking water. No mineral oil: it swells the rubber.'),
  conduitSealant: plain('Sealant for the conduit', 'Keeps insects and damp out of house and well.'),
  wallSleeve: ({ over }, show) => ({
    name: 'Sleeve through the house wall',
    note: `For a pipe of ${show.bore(over)} outside, with room for sealant all round.`,
  }),
  casingGrout: plain(
    'Bentonite',
    'Closes the ground round the casing again where the adapter’s hole was dug. How much depends on that hole.',
  ),
  bedding: plain(
    'Sand',
    'Under the line beside the casing: loose ground settles and pulls at the adapter. How much depends on the trench.',
  ),
  junctionBox: plain(
    'Box with connectors at the well',
    'For the joint of cable and house cable, watertight, with grips for both.',
  ),
  starter: ({ power, voltage, old }, show) => ({
    name: old
      ? 'Motor starter with overload protection, unless the old one suits'
      : 'Motor starter with overload protection',
    note: `For ${horsepower(power, show)} at ${show.voltage(voltage)}, three-phase. Switch or float work its coil, and never the motor. For the electrician.`,
  }),
  boxForMotor: ({ power }, show) => ({
    name: 'Control box or drive, unless the old one suits',
    note: `For ${power === null ? 'the new motor’s power' : show.power(power)}, of the new motor’s own kind. An electrician says whether the old one may stay.`,
  }),
  ropeHook: plain('Hook for the rope', 'Over the casing’s rim, inside, stainless.'),
  warningTape: plain('Warning tape', 'Over cable and line in the trench.'),
  surgeArrester: plain('Surge arrester', 'At the panel or box, against lightning. For the electrician.'),
  chlorine: ({ product, strength }, show) => ({
    name: 'Plain bleach',
    note: `${product === null ? 'How much cannot be told yet: it takes the water in the well.' : `${show.volume(product)} at least.`} ${decimals(strength * 100, 2)} %, fresh, without scent. Never with acid or ammonia.`,
  }),
  sampleBottles: plain(
    'Sample bottles',
    'From the laboratory, for coliform and nitrate at least. Ask which else your region wants.',
  ),
  spareClamps: plain('Spare clamps', 'Of the size in the well: one that strips is found at the worst moment.'),
  spareFitting: plain('Spare insert fitting', 'As those in the well, for a joint that has to be made again.'),
  spareSplice: plain('Spare splice kit', 'As the one at the pump, for a splice that fails its test.'),
  liftOutPipe: ({ length }, show) => ({
    name: 'Lift-out pipe with a T-handle',
    note: `${show.length(length)} long, of steel, threaded for the top of the adapter’s sliding half. Keep it for the next pull.`,
  }),
  holeSaw: ({ casing }) => ({
    name: 'Hole saw for metal and plastic',
    note: `Of the diameter that the adapter’s sheet names for ${casing === '' ? 'your' : `${casing}`} casing, and a file.`,
  }),
  liftingPlug: plain(
    'Plug made for lifting',
    'With the pipe’s thread, rated for the load: it lifts lengths, and the string at a seal.',
  ),
  hoist: ({ rated, oldNotTold, height }, show) => ({
    name: height === null ? 'Hoist or pipe wheel' : 'Hoist',
    note: [
      rated === null
        ? 'Rated for twice what hangs on it.'
        : `Rated for ${show.hook(rated)} or more, and all that hangs between.`,
      ...(oldNotTold ? ['That is for the new string: an old one of steel pipe may want a rig.'] : []),
      ...(height === null
        ? []
        : [`Its hook has to reach ${show.depth(height)} over the ground: shorter lengths need less.`]),
    ].join(' '),
  }),
  pipeWheel: plain('Pipe wheel', 'A wide wheel over the casing that bends the pipe gently, where no team walks it in.'),
  clampMeter: plain('Clamp meter and ohmmeter', 'For amps while running, and the windings before.'),
  pipeHolders: plain('Pipe clamp that rests on the casing', 'Holds the string before any grip is released.'),
  insulationTester: plain('Insulation tester', 'Before, on the way down and after: it finds a nicked wire in time.'),
  voltageTester: plain('Voltage tester', 'Proves the wires dead before they are touched.'),
  lock: plain('Lock and tag', 'For the breaker or the disconnect.'),
  wrenches: plain('Pipe wrench', 'Two: one holds, one turns.'),
  pipeCutter: plain('Pipe cutter', 'Cuts square, leaves no chips in the well.'),
  crimper: plain('Crimping tool and heat gun', 'For the splices. No open flame.'),
  levelTape: plain('Water-level tape', 'Or a chalked steel tape, disinfected.'),
  bucket: ({ flow }, show) => ({
    name: 'Bucket and watch',
    note: `Measures the flow${flow === null ? '' : `: expect ${show.flow(flow)} at cut-in`}.`,
  }),
  hose: plain('Garden hose', 'Runs the first water away from the well, and washes the casing with chlorine.'),
  airGauge: plain('Tire gauge and air pump', 'For the air in the tank while it is empty.'),
  goggles: plain('Goggles and gloves', 'For chlorine, and for lifting.'),
};

const groups: Readonly<Record<Group, string>> = {
  well: 'In the well',
  line: 'Line to the house',
  wires: 'Wires',
  house: 'In the house',
  usedUp: 'Used up',
  spares: 'Spares',
  tools: 'Tools',
};

/** What joins are made of: "1 in outer thread (NPT)". */
const ends = {
  thread: (size: string, sex: 'male' | 'female' | null, system: string | null): string =>
    `${size} ${sex === null ? '' : sex === 'male' ? 'outer ' : 'inner '}thread${system === null ? '' : ` (${system})`}`,
  barb: (size: string, sex: 'male' | 'female' | null): string =>
    sex === 'male' ? `barb for ${size} pipe` : `over a ${size} barb`,
  socket: (size: string, sex: 'male' | 'female' | null): string =>
    sex === 'male' ? `glued, ${size}` : `glued, ${size}`,
};

export const partsListWords = {
  title: 'Parts',
  lines,
  /** Over all that has a depth, from the top of the well down. */
  fromTop: 'From the top down',
  groups,
  ends,
  /** Of what goes round a pipe, which is bought by its outside. */
  over: (outside: string): string => `for a pipe of ${outside} outside`,
  /** "cut to 138 ft 4 in" */
  cutTo: (lengths: readonly string[]): string => `cut to ${lengths.join(', ')}`,
  cutAlike: (count: number, length: string): string => `${count} of ${length}`,
  buy: (length: string): string => `buy ${length}`,
  at: (depth: number, show: Show): string => (depth < 0 ? `${show.depth(-depth)} above ground` : show.depth(depth)),
  assumed: 'assumed',
  page: {
    about: 'All that this plan takes, as it stands now.',
    choose: 'Choose a part to light it on the drawing.',
    dots: 'What stands over dots was assumed, or rests on what was.',
    order: { label: 'Order of the list', kind: 'By kind', depth: 'By depth' },
    work: { label: 'What the list is for', new: 'New well', replace: 'In place of an old pump' },
    /** On paper, where there is nothing to press. */
    forWork: { new: 'For a new well.', replace: 'In place of an old pump: what stands there already is not listed.' },
    copy: 'Copy as text',
    save: 'Save as CSV',
    copied: 'The list is copied: paste it into a message.',
    notCopied: 'This browser did not let the list be copied. Save it as CSV.',
    saved: (file: string): string => `Saved as ${file}.`,
    toDrawing: 'See it on the drawing',
  },
  stop: {
    flowing: 'No list for a well that flows by itself: a licensed contractor decides what is hung in it.',
    inPit: 'No list for a well in a pit: nobody climbs in. A licensed contractor decides what is done.',
  },
  heads: {
    group: 'Where',
    count: 'Number',
    name: 'Part',
    size: 'Size and ends',
    material: 'Material',
    cut: 'Length',
    buy: 'To buy',
    depth: 'Depth',
    note: 'What it has to fit',
    assumed: 'Assumed',
  },
  caution:
    'A planning aid: the pump maker’s instructions, the local code and licensed practice decide. Check each thread and size at the shop.',
} as const;

export type PartsListWords = typeof partsListWords;
