/** The sheet to work from: its heads, its cards, and the joints of the string. */
import type { Marked } from '../../model/work/tapeCard.ts';
import { parts } from './parts.ts';

const marks: Readonly<Record<Marked, string>> = {
  checkValve: parts.checkValve.name,
  torqueArrestor: parts.torqueArrestor.name,
  splice: parts.splice.name,
  probe: 'Probe',
  guard: 'Guard',
  tie: 'Tie',
  coupling: parts.coupling.name,
  water: 'The pump’s outlet enters the water',
  topJoint: 'STOP: make the top joint',
  hanging: 'Hangs as planned',
};

export const installSheet = {
  title: 'Install sheet',
  blanks: { customer: 'For', place: 'Place', who: 'Done by', when: 'Date' },
  heads: {
    settings: 'Settings',
    findings: 'Found when this was made',
    none: 'No danger, warning or note among what could be checked.',
    open: 'Could not be checked',
    assumed: 'Assumed: check each before you buy',
    parts: 'Parts and lengths to cut',
    steps: 'Order of the work',
    tape: 'Tape card',
    start: 'First start',
    cautions: 'What can hurt',
  },
  columns: {
    expected: 'Expected',
    measured: 'Measured',
    done: 'Done',
    what: 'What',
    tape: 'Tape at the casing top',
    hook: 'On the hook',
    why: 'Why',
    check: 'Check',
    mistake: 'Usual mistake',
  },
  settings: {
    staticLevel: 'Water at rest',
    pumpingLevel: 'Water while pumping',
    intake: 'Pump intake',
    adapter: 'Outlet of the adapter',
    frost: 'Frost',
    bottom: 'Bottom of the well',
    casingHeight: 'Casing over the ground',
    dropPipe: 'Drop pipe to cut',
    cable: 'Cable in the well',
    liftPipe: 'Lift-out pipe',
    switch: 'Switch',
    precharge: 'Air in the empty tank',
    hook: 'Hanging in the water, pipe full',
    clear: 'Lifted clear of the water, pipe full',
    gear: 'Hoist and clamps rated for at least',
    notKnown: 'not known',
    above: (depth: string): string => `${depth} above ground`,
    fromGround: 'Depths count from the ground.',
  },
  start: {
    staticLevel: 'Water at rest before the start',
    voltage: 'Voltage while running',
    current: (said: boolean): string =>
      said ? 'Amps while running, as the plate says' : 'Amps while running, from a table: the plate decides',
    flow: 'Flow into a bucket at cut-in',
    cutIn: 'Pump starts at',
    cutOut: 'Pump stops at',
    precharge: 'Air in the empty tank',
    level: 'Water after an hour of running',
    run: 'Shortest run at each start',
    leak: 'Pressure lost in 30 minutes with the pump off',
    none: 'none',
    fromBoth: (ground: string, casing: string): string => `${ground} below ground; tape at the casing top ${casing}`,
    upTo: (most: string): string => `up to ${most}`,
    between: (least: string, most: string): string => (least === most ? least : `${least} to ${most}`),
  },
  short: {
    more: (count: number): string => `and ${count} more: the whole sheet tells them`,
    assumed: (count: number): string =>
      count === 1
        ? 'One value is assumed: the whole sheet names it.'
        : `${count} values are assumed: the whole sheet names each.`,
  },
  causes: [
    'Flow too small, level as expected: a leak in the pipe, a valve upside down, or another pump than planned.',
    'Level lower than expected: the well gives less than its report says. Close the valve a little and ask.',
    'Amps too high: wrong voltage, wrong control box, sand, or a pump that rubs. Switch off.',
    'Amps too low: the pump draws air or turns backward.',
    'Pressure falls with the pump off: a joint, a ring or the check valve leaks.',
  ],
  marks,
  code: 'This plan, for a phone',
  box: '☐',
  page: (title: string): string => `${title}: install sheet`,
  caution: 'A planning aid and not a licence. The local code, the makers’ instructions and licensed practice decide.',
} as const;

export type InstallSheetWords = typeof installSheet;
