/** As it was built: what was put in beside what was planned, the readings of the first start, and the old pump. */
import type { Cause } from '../../model/asBuilt/cause.ts';
import type { Reading } from '../../model/asBuilt/readings.ts';
import { feet, type Show } from '../../model/units.ts';

const readings: Readonly<Record<Reading, string>> = {
  staticLevel: 'Water at rest before the start, from the ground',
  voltage: 'Voltage while running',
  current: 'Amps while running',
  flow: 'Flow into a bucket',
  precharge: 'Air in the empty tank',
  cutIn: 'Pump starts at',
  cutOut: 'Pump stops at',
  pumpingLevel: 'Water after an hour of running, from the ground',
  run: 'Shortest run at each start',
};

const causes: { readonly [Id in Cause['id']]: (cause: Extract<Cause, { id: Id }>, show: Show) => string } = {
  waterLower: ({ from, to }, show) => {
    const [high, low] = [show.depth(from), show.depth(to)];
    return high === low
      ? `With the water at ${high} while it runs, this pump gives just that. Measure the level.`
      : `With the water from ${high} to ${low} down while it runs, this pump gives just that. Measure the level.`;
  },
  notTheWater: ({ needed, measured }, show) =>
    `It is not the water: that would have to stand at ${show.depth(needed)}, and stands at ${show.depth(measured)}.`,
  notEvenAtIntake: ({ gives }, show) =>
    `It is not the water alone: even with the water at its intake this pump would give ${show.flow(gives)}.`,
  wayOut: () => 'A leak, a valve half shut, or a check valve upside down takes the rest.',
  otherPump: () => 'Or the pump is another one than planned: read its plate.',
  gaugeLow: () => 'The gauge stood lower than where the pump starts: measure again at that pressure.',
  lowVoltage: ({ volts, plate }, show) =>
    `The motor gets ${show.voltage(volts)} instead of ${show.voltage(plate)}, and draws more for it. Switch off and ask.`,
  wrongBox: () => 'The control box may be for another motor: compare both plates, with the breaker off.',
  sandOrRub: () => 'Sand, or wheels that rub: switch off, and run it clear at a small flow if the water is sandy.',
  drawsAir: ({ intake }, show) =>
    `Does water come? If not, it may stand at the intake, ${show.depth(intake)} down: switch off and measure.`,
  turnsBackward: () => 'A three-phase motor may turn backward: have two wires changed, and compare the flow.',
  cable: ({ drop }) =>
    drop === null
      ? 'The cable may be too thin for its length, or a joint is bad.'
      : `The cable takes ${percent(drop)} of it as planned; more than that is a bad joint or a thinner wire.`,
  supply: () => 'The supply may be at fault: have it measured at the panel.',
  levelFell: ({ over }, show) =>
    over > 0
      ? `The water stands lower than reported; ${show.length(over)} are left over the intake before it is pumped.`
      : 'The water stands below the intake: the pump must not run.',
  levelRose: () => 'The water stands higher than reported, as after a wet season. It will fall again.',
  givesLess: ({ now, planned }, show) =>
    planned === null
      ? `The well gives ${capacity(now, show)} of drawdown.`
      : `The well gives ${capacity(now, show)} of drawdown; the report says ${capacity(planned, show)}.`,
  drawnDown: () => 'The water fell less than the report says: the pump gives less, or the well gives more.',
  nearIntake: ({ over }, show) =>
    over > 0
      ? `Only ${show.length(over)} of water are left over the intake. Close the valve a little, and ask.`
      : 'The water is at the intake: switch off. The pump draws air there and runs dry.',
  setAir: ({ to }, show) => `With the tank empty and the power off, set its air to ${show.pressure(to)}.`,
  airOverCutIn: ({ cutIn }, show) =>
    `There is more air than ${show.pressure(cutIn)}, where the pump starts: the tank is empty before it does.`,
  setSwitch: ({ to }, show) =>
    `Planned was ${show.pressure(to)}. Have it set, or plan with what it is: the pump must still reach it.`,
  readAgain: () => 'The pump cannot stop at less than it starts at: read both again, and the gauge beside another one.',
  smallTank: () => 'The tank may be smaller than planned, or waterlogged. Short runs wear motor and switch out.',
};

function percent(share: number): string {
  return `${(share * 100).toFixed(1)} %`;
}

/** "0.24 gpm a foot" */
function capacity(value: number, show: Show): string {
  return show.units === 'us' ? `${show.flow(value * feet(1))} a foot` : `${show.flow(value)} a metre`;
}

export const asBuilt = {
  title: 'As it was built',
  toIt: 'Write down what was put in',
  about: 'Write down what was put in, where it is not as planned. It is kept with this well.',
  date: 'Date',
  by: 'Done by',
  installed: {
    title: 'Put in',
    name: (name: string, fromCasingTop: boolean): string => (fromCasingTop ? `${name}, from the casing’s top` : name),
    heights: {
      'string.checkValves': (number: number): string =>
        `Check valve${number === 1 ? '' : ` ${number}`}, above the pump`,
      'string.splices': (number: number): string => `Splice${number === 1 ? '' : ` ${number}`}, above the pump`,
    },
    planned: 'Planned',
    value: 'Put in',
    notSaid: 'not said',
    assumed: (value: string): string => `${value}, assumed`,
    differs: 'not as planned',
    asPlanned: 'The rest as planned',
    another: 'Another field',
    use: 'Make this the plan',
    using: 'The drawing then shows what was put in, and no fix moves it. What was planned stays here.',
    used: (count: string): string => `The plan is as it was built. Now: ${count}.`,
    refused: 'It cannot become the plan as it stands:',
  },
  start: {
    title: 'First start',
    about: 'Expected beside measured. A difference says what to think of in this well.',
    expected: 'Expected',
    measured: 'Measured',
    between: (least: string, most: string): string => (least === most ? least : `${least} to ${most}`),
    upTo: (most: string): string => `up to ${most}`,
    atLeast: (least: string): string => `${least} or more`,
    unknown: 'nobody knows',
    gauge: 'With the pump running and the gauge held where it starts.',
    bucket: 'Or as it was filled: 5 gal in 28 s.',
    metricBucket: 'Or as it was filled: 20 L in 28 s.',
    verdicts: {
      'as expected': 'as expected',
      low: 'less than expected',
      high: 'more than expected',
      'nothing expected': 'nothing to compare it with',
    },
    /** Of a depth more is lower. */
    levels: { low: 'higher than expected', high: 'lower than expected' },
    insulation: 'Insulation, megohms',
    insulationLow: (least: number): string =>
      `Under ${least.toFixed(2)} megohms: do not run it. A licensed person finds out if cable, splice or motor leaks.`,
    insulationNone: 'Write it as megohms: 200, or > 200.',
  },
  pulled: {
    title: 'The old pump',
    about: 'A short record of what came out.',
    use: 'Take the sounded bottom into the plan',
    using: 'It then says how deep the well is today.',
  },
  readings,
  causes,
} as const;

export type AsBuiltWords = typeof asBuilt;
