/** How a report was read: what each value is called, why it is doubtful, and why a line was not taken. */
import type { Doubt, Note, Reading, WhyNot } from '../../reading/reading.ts';
import { nameOfPath } from './plan/paths.ts';

/** "The casing's bottom": names that stand beside the line of a report. */
const NAMES: Readonly<Record<string, string>> = {
  'well.casings': 'Casings',
  'well.layers': 'Layers',
  'well.inflows': 'Water comes in',
  'well.grout': 'Grout',
  'well.intake.screens': 'Screens',
  'pump.setting': 'Pump intake',
};

export function sayNameOf({ path }: Pick<Reading, 'path'>): string {
  return NAMES[path] ?? nameOfPath(path);
}

/** A value as one reads it: "62 ft", "clay to 28 ft, granite to 220 ft". */
export function sayReadValue({ path, value }: Pick<Reading, 'path' | 'value'>): string {
  if (typeof value === 'string') return value;
  return value.map((each) => sayPart(path, each)).join(', ');
}

function sayPart(path: string, each: Readonly<Record<string, unknown>>): string {
  const text = (key: string): string => (typeof each[key] === 'string' ? each[key] : '');
  const span = text('top') === '' ? `to ${text('bottom')}` : `${text('top')} to ${text('bottom')}`;
  switch (path) {
    case 'well.layers':
      return `${text('material')} to ${text('bottom')}`;
    case 'well.inflows':
      return text('share') === '' ? text('depth') : `${text('depth')} (${text('share')})`;
    case 'well.grout':
      return `to ${text('bottom')}`;
    case 'well.intake.screens':
      return text('slot') === '' ? span : `${span}, slot ${text('slot')}`;
    default: {
      const up = text('height') === '' ? '' : `, ${text('height')} up`;
      return `${[text('size'), text('material'), text('schedule')].filter((word) => word !== '').join(' ')} ${span}${up}`.trim();
    }
  }
}

export function sayDoubt(doubt: Doubt): string {
  switch (doubt.kind) {
    case 'two':
      return `Another line says ${doubt.other}. Which one holds?`;
    case 'less':
      return 'The report says “less than” that. How much less, nobody knows.';
    case 'more':
      return 'The report says “more than” that. No more is counted on.';
    case 'range':
      return `The report gives a range. Its other end is ${doubt.other}.`;
    case 'plus':
      return `The plus can mean above the ground, as it is read here, or ${doubt.other} below it.`;
    case 'fromCasingTop':
      return 'It counts from the top of the casing. Nobody said how high that stands.';
    case 'takenOff':
      return `It counted from the top of the casing: ${doubt.height} is taken off.`;
    case 'length':
      return 'This is a length of casing. Some of it stands over the ground, so it may end higher up.';
    case 'unit':
      return 'No line of the report names a unit. This one is assumed.';
    case 'comma':
      return `The comma can mean thousands, or ${doubt.other}.`;
    case 'standing':
      return 'The report does not say whether that pump hangs there now, or stood there for the test.';
    case 'gap':
      return 'The layers do not join: something is missing, or one lies over another.';
    case 'unlike':
      return `With a pumping level of ${doubt.other} it does not fit the static level.`;
  }
}

export const NOTES: Readonly<Record<Note, string>> = {
  imperial: 'The report counts in imperial gallons, the plan in US ones.',
  later: 'The later of two readings.',
  completed: 'The depth as completed; it was drilled deeper.',
  recommended: 'The driller’s advice. Nothing hangs there yet.',
  installed: 'It hangs there already.',
  shares: 'Shares from the flows of the zones.',
  airLift: 'Found with air: a rough figure, and mostly too high.',
};

export const WHY_NOT: Readonly<Record<WhyNot, string>> = {
  airLevel: 'With air the level is where the drill stem stood. It is no pumping level.',
  recommendedRate: 'A rate that the driller advised. It is not what the well gives.',
  firstWater: 'Where water was first met. It is not where the water stands.',
  testIntake: 'Where a pump or the stem stood for the test. No pump hangs there.',
  drilledDeeper: 'Drilled deeper than it was completed.',
  earlier: 'An earlier reading than the one that was taken.',
  installedInstead: 'Advice; the pump that hangs there was taken.',
  artesianFlow: 'What runs over by itself. It is not what a pump gets.',
  flows: 'The well flows. How high the water would stand is not said.',
  noPlace: 'Read, but the plan has no place for it beside the rest.',
};
