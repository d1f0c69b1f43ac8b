import type { pumpDepthRules } from '../../../model/rules/pumpDepth.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords, ShortWords } from '../../ruleWords.ts';
import { gap, toSpare } from '../phrases.ts';

export const short: ShortWords<typeof pumpDepthRules> = {
  'PR-01': {
    broken: 'The pump is too near the bottom',
    holds: 'The motor hangs clear of the bottom',
    says: {
      clear: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      belowBottom: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
      tooLow: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { offTheBottom: ({ least }, show) => `${show.depth(least)} off the bottom` },
  },
  'PR-02': {
    broken: 'Too little water covers the intake',
    holds: 'The intake stays under water',
    says: {
      covered: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      runsDry: ({ margin }, show) => ({ title: 'The pump runs dry', amount: `${gap(margin, show)} too high` }),
      barelyCovered: ({ margin }, show) => ({ amount: `${gap(margin, show)} too high` }),
    },
    limits: {
      underCutOff: ({ least }, show) => `${show.depth(least)} under the cut-off`,
      underDryLevel: ({ least }, show) => `${show.depth(least)} under the dry level`,
      underLevel: ({ least }, show) => `${show.depth(least)} under the pumping level`,
    },
  },
  'PR-03': {
    broken: 'The pump hangs in the screen',
    holds: 'The pump hangs above the screen',
    says: {
      above: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      inScreen: ({ margin }, show) => ({ amount: `${gap(margin, show)} too low` }),
    },
    limits: { aboveScreen: () => 'motor above the screen' },
  },
};

export const long: LongWords<typeof pumpDepthRules> = {
  'PR-01': {
    source: 'common practice, no source; inspectors’ training in North Carolina asks for 20 ft where possible',
    why: 'Sediment gathers at the bottom; a pump near it draws sand, and a buried motor overheats.',
    messages: {
      clear: ({ measured, usual }, show) =>
        `The motor ends ${show.depth(measured)} above the bottom; ${show.depth(usual)} is usual.`,
      belowBottom: ({ measured }, show) =>
        `The motor would end ${gap(measured, show)} below the bottom of the well.`,
      tooLow: ({ measured, usual }, show) =>
        `The motor ends ${gap(measured, show)} above the bottom; common practice keeps ${show.depth(usual)}.`,
    },
    fixes: {
      leaveIt: () => 'Leave it: above the screen the sump below does not matter much.',
      raiseOrCleanOut: () => 'Raise the pump, or have the well cleaned out by a contractor.',
    },
  },
  'PR-02': {
    source: 'common practice, no source; the pump’s own instructions overrule it',
    why: 'A pump that draws air loses its flow and the water that cools it.',
    messages: {
      covered: covered,
      runsDry: ({ water, intake }, show) =>
        `While pumping, water falls to ${show.depth(water)}; the intake is at ${show.depth(intake)}.`,
      barelyCovered: covered,
    },
    fixes: {
      pumpLess: () => 'Pump less: a smaller pump, or a flow-limiting valve with a low-level cut-off.',
      lowerWithCutOff: ({ to, probe }) => `Lower to ${to}, with a cut-off at ${probe}`,
      asDeepAsAllowed: () => 'Hang the pump as deep as the rules allow, with a low-level cut-off above its intake.',
    },
  },
  'PR-03': {
    source:
      'common practice, no source; 35 Ill. Adm. Code 604.240 keeps the water level above the screen of public wells',
    why: 'A pump inside the screen pulls sand through the slots and gets no water past its motor.',
    messages: {
      above: ({ motor, screen }, show) =>
        `The motor ends at ${show.depth(motor)}, the screen begins at ${show.depth(screen)}.`,
      inScreen: ({ motor, screen, shroud }, show) =>
        `The motor ends at ${show.depth(motor)}, the screen begins at ${show.depth(screen)}${shroud ? '; a shroud helps, but not enough' : ''}.`,
    },
    fixes: {
      raiseOrShroud: () => 'Raise the pump above the screen; where that leaves too little water, fit a shroud.',
    },
  },
};

/** How much water covers the intake, and by what it is held there. */
function covered(
  { by, measured, usual }: { by: 'cutOff' | 'dryLevel' | 'level'; measured: Metres; usual: Metres },
  show: Show,
): string {
  const spoken =
    by === 'cutOff'
      ? `The cut-off stops the pump with ${gap(measured, show)} of water above the intake`
      : `The intake is ${gap(measured, show)} under the ${by === 'dryLevel' ? 'dry-season pumping level' : 'pumping level'}`;
  return `${spoken}; ${show.depth(usual)} is usual.`;
}
