/** What levels are called, where they stand, what they stop at and why they go no further. */
import type { Block, HandleNames, OneOf } from '../../model/handleNames.ts';
import type { Stands } from '../../model/place/told.ts';

export const short: { readonly [V in keyof HandleNames]: (numbers: HandleNames[V]) => string } = {
  casingTop: () => 'Casing top',
  frostLine: () => 'Frost line',
  pitlessAdapter: () => 'Pitless adapter',
  staticLevel: () => 'Static level',
  pumpingLevel: () => 'Pumping level',
  pumpIntake: () => 'Pump intake',
  checkValve: (one) => numbered('Check valve', one),
  splice: (one) => numbered('Splice', one),
  wellBottom: () => 'Well bottom',
  casingBottom: () => 'Casing bottom',
  linerBottom: () => 'Liner bottom',
  screenTop: (one) => `${numbered('Screen', one)} top`,
  screenBottom: (one) => `${numbered('Screen', one)} bottom`,
  layerFoot: ({ material }) => `Foot of the ${material}`,
};

/** The only one needs no number. */
function numbered(name: string, { index, count }: OneOf): string {
  return count > 1 ? `${name} ${index + 1}` : name;
}

/** As the end of a sentence: "Stops here: the casing ends at the ground." */
const blocks: Readonly<Record<Block, string>> = {
  noTallerCasing: 'no casing stands higher than this',
  casingEndsAtGround: 'the casing ends at the ground',
  frostStartsAtGround: 'frost starts at the ground',
  permafrost: 'frost this deep is permafrost: ask a local engineer',
  adapterBelowGround: 'a pitless adapter is below the ground',
  pumpHangsBelow: 'the pump hangs below it',
  nobodyDigsThere: 'nobody digs down to it',
  noHigherFlow: 'higher than any flowing well drawn here',
  sayThatItFlows: 'water above the ground: say first that the well flows',
  meetsMeasuredLevel: 'it meets the measured pumping level',
  waterBelowBottom: 'the water would stand below the bottom',
  meetsStaticLevel: 'pumping cannot raise the water: it meets the static level',
  meetsWellBottom: 'it meets the bottom of the well',
  dropPipeEnds: 'the drop pipe ends here',
  meetsDischarge: "it meets the pump's discharge",
  pumpMeetsTopWorks: 'the pump meets the top works',
  motorOnBottom: 'the motor stands on the bottom',
  meetsMotor: 'it meets the motor: raise the pump first',
  meetsCasingOrScreen: 'it meets the casing or the screen',
  noDeeperWell: 'deeper than any well drawn here',
  casingNeedsLength: 'the casing needs some length',
  linerNeedsLength: 'the liner needs some length',
  meetsScreen: 'it meets the screen',
  meetsBottom: 'it meets the bottom',
  meetsWhatIsAbove: 'it meets what is above it',
  meetsOwnLowerEnd: 'it meets its own lower end',
  meetsOwnUpperEnd: 'it meets its own upper end',
  meetsWhatIsBelow: 'it meets what is below it',
  layerNeedsThickness: 'the layer needs some thickness',
  meetsNextLayer: 'it meets the foot of the next layer',
  notKnown: 'not known yet',
  staticLevelNotKnown: 'the static level is not known yet',
  followsFromAquifer: 'it follows from the aquifer’s transmissivity and storativity',
  followsFromStepTest: 'it follows from the steps of the test',
  airLiftTellsNoDrawdown: 'not known: a yield alone tells no drawdown',
  nothingHere: 'there is nothing here to move',
};

/** What a level is said with, besides its name. */
export interface Heard {
  readonly name: string;
  readonly reading: string;
  /** Empty where nothing matters most. */
  readonly relation: string;
  /** Empty where nothing is wrong with it. */
  readonly wrong: string;
}

export const long = {
  blocks,
  notKnown: 'not known',
  /** In place of a level below the pump, and of the head from it. */
  notHeld: 'none: the water falls to the pump',
  assumed: (reading: string) => `${reading}, assumed`,
  aboveGround: (length: string) => `${length} above the ground`,
  abovePump: (length: string) => `${length} above the pump`,
  heard: ({ name, reading, relation, wrong }: Heard) =>
    [`${name}, ${reading}.`, relation, wrong].filter((said) => said !== '').join(' '),
  heardUnknown: (name: string) => `${name}, not known.`,
  wrong: (severity: string, title: string) => `${severity}: ${title}.`,
  /** The one distance that matters most for a level: said after its own. */
  relations: {
    motorAboveBottom: (length: string) => `Motor ${length} above the bottom.`,
    motorBelowBottom: (length: string) => `Motor ${length} below the bottom.`,
    aboveIntake: (length: string) => `${length} above the intake.`,
    belowIntake: (length: string) => `${length} below the intake.`,
    lineAboveFrost: (length: string) => `Line ${length} above the frost.`,
    lineBelowFrost: (length: string) => `Line ${length} below the frost.`,
    drawdown: (length: string) => `${length} of drawdown while pumping.`,
  },
  /** Asked before a hand changes what somebody found in the well or hung in it. */
  asks: {
    reported: (name: string) => `The ${name} was reported. Change it?`,
    measured: (name: string) => `The ${name} was measured. Change it?`,
    installed: (name: string) => `The ${name} stands installed. Change it?`,
  } satisfies Record<Stands, (name: string) => string>,
  changes: 'Change',
  keeps: (stands: Stands) => `Keep as ${stands}`,
  /** What a dragged level stops at, where no rule ends there. */
  stopsAt: {
    ground: () => 'ground surface',
    footOfCasing: () => 'foot of the casing',
    footOf: ({ material }: { readonly material: string }) => `foot of the ${material}`,
    contact: ({ material, below }: { readonly material: string; readonly below: string }) =>
      `${material} meets ${below}`,
  },
};
