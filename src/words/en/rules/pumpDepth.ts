import { feet } from '../../../model/units.ts';
import type { pumpDepthRules } from '../../../model/rules/pumpDepth.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { capital, evenAtRest, gap, toSpare } from '../phrases.ts';

export const long: LongWords<typeof pumpDepthRules> = {
  'PR-01': {
    holds: 'The motor hangs clear of the bottom',
    held: {
      clear: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ least }, show) => `The motor ends ${show.depth(least)} or more above the bottom.`,
    source: (show) =>
      `common practice, no source; inspectors’ training in North Carolina asks for ${show.depth(feet(20))} where possible`,
    why: 'Sediment gathers at the bottom; a pump near it draws sand, and a buried motor overheats.',
    messages: {
      clear: ({ measured, usual }, show) =>
        `The motor ends ${show.depth(measured)} above the bottom; ${show.depth(usual)} is usual.`,
      belowBottom: ({ measured }, show) => `The motor would end ${gap(measured, show)} below the bottom of the well.`,
      tooLow: ({ measured, usual }, show) =>
        `The motor ends ${gap(measured, show)} above the bottom; common practice keeps ${show.depth(usual)}.`,
    },
    fixes: {
      leaveIt: () => 'Leave it: above the screen the sump below does not matter much.',
      raiseOrCleanOut: () => 'Raise the pump, or have the well cleaned out by a contractor.',
    },
  },
  'PR-02': {
    holds: 'The intake stays under water',
    held: {
      covered: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ least, underCutOff }, show) =>
      `At the lowest pumping level ${show.depth(least)} or more of water covers the intake, or ${show.depth(underCutOff)} where dry-run protection holds it.`,
    source: 'common practice, no source; the pump’s own instructions overrule it',
    why: 'A pump that draws air loses its flow and the water that cools it.',
    messages: {
      covered: (numbers, show) => (numbers.today ? coveredToday(numbers, show) : covered(numbers, show)),
      runsDry: ({ intake }, show) =>
        `While pumping, the water falls to the intake at ${show.depth(intake)}, and the pump draws air.`,
      mayRunDry: ({ intake }, show) =>
        `A strong pump of that rating draws the water down to its intake at ${show.depth(intake)}, and then air.`,
      barelyCovered: covered,
      aboveWater: ({ rest, dry, intake }, show) =>
        `${capital(evenAtRest(dry))} the water stands at ${show.depth(rest)}, below the intake at ${show.depth(intake)}.`,
      neverStarts: ({ probe, rest, dry }, show) =>
        `It acts at ${show.depth(probe)}; ${evenAtRest(dry)} the water stands at ${show.depth(rest)}.`,
      wellDry: ({ rest, bottom }, show) =>
        `The water stands at ${show.depth(rest)} at rest, and the well ends at ${show.depth(bottom)}.`,
      dependsOnLevel: ({ turn, intake }, show) =>
        `Enough water covers the intake at ${show.depth(intake)} only while it stands above ${show.depth(turn)} as the pump runs.`,
      dependsOnCutOff: ({ turn }, show) =>
        `Dry-run protection keeps the intake covered only if it acts above ${show.depth(turn)}; nobody said where it does.`,
    },
    fixes: {
      lowerProbe: ({ depth }, show) => `Hang the probe at ${show.depth(depth)}`,
      lowerProbeOrPump: () =>
        'Hang the probe between the water at rest and the intake; lower the pump where it has no room.',
      pumpLess: () => 'Pump less: a smaller pump, or a flow-limiting valve with dry-run protection.',
      anotherKind: () =>
        'Hang it deeper; where the well has no room for that, ask a licensed contractor for another kind of pump.',
      limitFlow: () => 'Draw less at a time: a flow-limiting valve, with dry-run protection.',
      hangWithCutOff: ({ intake, probe }, show) =>
        `Hang it at ${show.depth(intake)}, with dry-run protection: a probe at ${show.depth(probe)}`,
      asDeepAsAllowed: () => 'Hang the pump as deep as the rules allow, with dry-run protection above its intake.',
      notWithThisWell: () => 'Stop: measure the water level again, and ask the driller before anything is bought.',
    },
  },
  'PR-03': {
    holds: 'The pump hangs above the screen',
    held: {
      above: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: () => 'The motor ends above the screen; a perforated liner that stands within rock counts as open hole.',
    source:
      'common practice, no source; 35 Ill. Adm. Code 604.240 keeps the water level above the screen of public wells',
    why: 'A pump inside the screen pulls sand through the slots and gets no water past its motor.',
    messages: {
      above: ({ motor, screen }, show) =>
        `The motor ends at ${show.depth(motor)}, the screen begins at ${show.depth(screen)}.`,
      inScreen: ({ motor, screen, shroud }, show) =>
        `The motor ends at ${show.depth(motor)}, the screen begins at ${show.depth(screen)}${shroud ? '; a flow sleeve helps, but not enough' : ''}.`,
    },
    fixes: {
      raiseOrShroud: () => 'Raise the pump above the screen; where that leaves too little water, fit a flow sleeve.',
    },
  },
};

/** How much water covers the intake, and by what it is held there. */
/** Of the lowest level nobody spoke: what holds today says no more. */
function coveredToday({ measured }: { readonly measured: Metres }, show: Show): string {
  return `${capital(gap(measured, show))} of water covers it today; how low it stands in a dry season is not known.`;
}

function covered(
  { by, measured, usual }: { by: 'cutOff' | 'dryLevel' | 'level' | 'rest'; measured: Metres; usual: Metres },
  show: Show,
): string {
  const spoken =
    by === 'cutOff'
      ? `Dry-run protection stops the pump with ${gap(measured, show)} of water above the intake`
      : `The intake is ${gap(measured, show)} under the ${LEVEL_WORDS[by]}`;
  return `${spoken}; ${show.depth(usual)} is usual.`;
}

const LEVEL_WORDS = {
  dryLevel: 'dry-season pumping level',
  level: 'lowest pumping level',
  rest: 'water at rest',
} as const;
