/** What this well's own figures say of a cause. A sentence or a number that is left out does not compile. */
import type { OwnId, OwnNumbers } from '../../../model/matter/own.ts';
import type { Show } from '../../../model/units.ts';
import { gap, level, span } from '../phrases.ts';

type Saying<Id extends OwnId> = (numbers: OwnNumbers[Id], show: Show) => readonly string[];

/** The water came to rest so much lower; nothing where it does it already. */
function lower({ shows, by, most, dryAt, cutIn, cutOut }: OwnNumbers['lower'], show: Show): readonly string[] {
  const does = dryAt === null ? DOES[shows](cutIn, cutOut, show) : DRY[dryAt];
  const strongest = most === null ? [] : [`The strongest pump of this rating: only with it ${show.depth(most)} lower.`];
  if (by === 0) return [`Solved: with the water where the plan has it, ${does}.`, ...strongest];
  return [`Solved: with the water ${show.depth(by)} lower, ${does}.`, ...strongest];
}

const DRY = {
  intake: 'it stands no higher than the pump’s intake',
  cutOff: 'it stands no higher than the probe that stops the pump',
} as const;

const DOES: Readonly<
  Record<OwnNumbers['lower']['shows'], (cutIn: number | null, cutOut: number | null, show: Show) => string>
> = {
  nothing: (cutIn, _, show) =>
    cutIn === null
      ? 'the pump brings no water into the tank'
      : `the pump brings nothing at ${show.pressure(cutIn)}, the cut-in`,
  little: () => 'the house gets too little before long',
  noStop: (_, cutOut, show) =>
    cutOut === null
      ? 'the pump does not fill the tank'
      : `the pump no longer reaches ${show.pressure(cutOut)}, the cut-out`,
  air: () => 'the pump draws the water down to its intake',
};

const within = (time: number | null, show: Show): string => (time === null ? '' : ` in about ${show.time(time)}`);

export const own: { readonly [Id in OwnId]: Saying<Id> } = {
  supply: ({ voltage, phase }, show) => [
    phase === 3
      ? `The motor runs on three phases of ${show.voltage(voltage)}: all three have to be there.`
      : `The motor runs on ${show.voltage(voltage)}.`,
  ],
  switchPoints: ({ cutIn, cutOut }, show) => [
    `By the plan the pump starts at ${show.pressure(cutIn)} (cut-in) and stops at ${show.pressure(cutOut)} (cut-out).`,
  ],
  holds: ({ pressure }, show) => [`By the plan the drive holds ${show.pressure(pressure)}.`],
  probe: ({ probe, over }, show) => [
    `The probe that stops the pump hangs ${show.depth(probe)} down.`,
    ...(over === null ? [] : [`Water at rest stands ${gap(over, show)} over it.`]),
  ],
  byCurrent: () => ['By the plan it goes by the motor’s current.'],
  noGuard: () => ['The plan has no dry-run protection, so none can have stopped it.'],
  drawnDown: ({ time, level: at, by }, show) => [
    by === 'intake'
      ? `Solved: the pump draws the water down to its intake at ${show.depth(at)}${within(time, show)}.`
      : `Solved: the pump draws the water down to its probe at ${show.depth(at)}${within(time, show)}.`,
  ],
  guardStops: () => ['Dry-run protection should stop it there: see if that still works.'],
  staysOver: ({ level: at, over }, show) => [
    `At the most that this pump draws, the water falls to ${level(at, show)}.`,
    `That leaves ${gap(over, show)} over the intake.`,
  ],
  lower,
  dryFall: ({ fall }, show) => [`In a dry season, the plan says, it rests ${show.depth(fall)} lower.`],
  boxPower: ({ power }, show) => [`The box has to be one for ${show.power(power)}.`],
  draws: ({ current, said }, show) => [
    said
      ? `The plan has ${show.current(current)} from the motor’s plate: it should draw no more.`
      : `Such a motor draws about ${show.current(current)}; its plate goes before this.`,
  ],
  runningDrop: ({ share, length }, show) => [
    `Over ${show.length(length)} of wire the motor loses ${show.percent(share)} of its voltage as it runs.`,
  ],
  startDrop: ({ share }, show) => [`While it starts, the wire takes ${show.percent(share)} of the voltage.`],
  carries: ({ carries, asked }, show) => [
    `The wire may carry ${show.current(carries)}; this motor asks for wire that may carry ${show.current(asked)}.`,
  ],
  splices: ({ count, height }, show) => [
    count === 1
      ? `The plan has one splice in the well, ${gap(height, show)} over the pump.`
      : `The plan has ${count} splices in the well, the lowest ${gap(height, show)} over the pump.`,
  ],
  noSplices: () => ['The plan has no splice in the well.'],
  sandSaid: () => ['The plan says that this water brings sand.'],
  noSandSaid: () => ['The plan says that this water brought no sand: has that changed?'],
  gasSaid: () => ['The plan says that gas comes with this water.'],
  noGasSaid: () => ['The plan says that no gas comes with this water: has that changed?'],
  pipeInAir: ({ from, to, length }, show) => [
    from < 0
      ? `${show.length(length)} of pipe hang over the water at rest: there a leak is heard.`
      : `From ${show.depth(from)} to ${show.depth(to)} the pipe hangs over the water at rest: there a leak is heard.`,
  ],
  adapterAt: ({ depth }, show) => [`The adapter sits ${gap(depth, show)} under the ground.`],
  gives: ({ least, most, wanted, cutIn }, show) => [
    `New, this pump gives ${span(least, most, show.flow)}${cutIn === null ? '' : ` at ${show.pressure(cutIn)}`}.`,
    ...(wanted === null ? [] : [`The house wants ${show.flow(wanted)} at its busiest.`]),
  ],
  topsOut: ({ least, most, cutOut }, show) => [
    `With taps shut and the water at rest, it makes ${span(least, most, show.pressure)} at the tank.`,
    `The switch needs ${show.pressure(cutOut)} to stop it.`,
  ],
  friction: ({ head, flow }, show) => [
    `When clean, pipe and line take ${show.head(head)} of lift at ${show.flow(flow)}.`,
  ],
  speed: ({ velocity, flow }, show) => [
    `At ${show.flow(flow)} the water runs at ${show.velocity(velocity)} in the drop pipe.`,
  ],
  leaks: ({ water }, show) => [`Each start with no tap open means that ${show.volume(water)} have run off.`],
  line: ({ length, depth }, show) => [
    depth > 0
      ? `The line is ${show.length(length)} long and leaves the well ${gap(depth, show)} down.`
      : `The line is ${show.length(length)} long.`,
  ],
  valves: ({ count }) => [count === 1 ? 'The plan has one check valve.' : `The plan has ${count} check valves.`],
  noValve: () => ['The plan has no check valve: nothing holds the water back when the pump stops.'],
  noSecondValve: () => ['The plan has no check valve between the well and the tank.'],
  airSet: ({ precharge, cutIn }, show) => [
    `By the plan the air is set to ${show.pressure(precharge)}, and the cut-in to ${show.pressure(cutIn)}.`,
  ],
  airOver: ({ over, cutIn }, show) => [
    `By the plan the air is ${show.pressure(over)} over the cut-in of ${show.pressure(cutIn)}: this alone does it.`,
  ],
  airUsual: ({ usual, cutIn }, show) => [
    `For a cut-in of ${show.pressure(cutIn)}, ${show.pressure(usual)} of air is usual.`,
  ],
  airForDrive: ({ usual, holds }, show) => [
    `For a drive that holds ${show.pressure(holds)}, about ${show.pressure(usual)} of air is usual.`,
  ],
  tankGives: ({ water, run }, show) => [
    run === null
      ? `Full of air, the tank gives ${show.volume(water)} from stop to start.`
      : `As planned, the tank gives ${show.volume(water)} a start, so that the pump runs ${show.time(run)}.`,
  ],
  withoutAir: ({ water, run }, show) => [
    run === null
      ? `Solved with its air gone: ${show.volume(water)}, and less each week.`
      : `Solved with its air let out: ${show.volume(water)} and ${show.time(run)}; full of water, a few seconds.`,
  ],
  switchGap: ({ gap: between, cutIn, cutOut }, show) => [
    `By the plan it starts at ${show.pressure(cutIn)} and stops at ${show.pressure(cutOut)}: ${show.pressure(between)} apart.`,
  ],
  arrestor: ({ height }, show) => [`The plan has a torque arrestor ${gap(height, show)} over the pump.`],
  noArrestor: () => ['The plan has no torque arrestor.'],
  offBottom: ({ clearance }, show) => [`By the plan the motor hangs ${gap(clearance, show)} off the bottom.`],
  onBottom: () => ['By the plan the motor stands on the bottom, or deeper.'],
  casingFoot: ({ bottom }, show) => [`The outer casing ends ${show.depth(bottom)} down: that is one place to look.`],
  casingStands: ({ height }, show) => [
    height > 0
      ? `By the plan the casing stands ${gap(height, show)} over the ground.`
      : 'By the plan the casing ends under the ground.',
  ],
  dose: ({ water, product, strength }, show) => [
    `The well holds ${show.volume(water)}: to disinfect it takes ${show.volume(product)} of chlorine of ${show.percent(strength)}.`,
  ],
  acid: ({ acidity }) => [`The plan has a pH of ${acidity}; under 7 the water is acid.`],
  frostAt: ({ depth, frost }, show) => [
    `The outlet lies ${gap(depth, show)} down, and frost goes ${gap(frost, show)} deep by the plan.`,
  ],
  noFrost: () => ['By the plan the ground does not freeze here: has that changed?'],
  barePipe: ({ frost }, show) => [
    `Frost goes ${gap(frost, show)} deep by the plan, and the pipe leaves over the ground.`,
  ],
};
