import type { checkValveRules } from '../../../model/rules/checkValve.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { ELECTRIC_CAUTION } from '../cautions.ts';
import { gap, level } from '../phrases.ts';

export const long: LongWords<typeof checkValveRules> = {
  'PR-09': {
    holds: 'A check valve holds the water up',
    held: {
      nearPump: ({ height }, show) => ({ amount: `${gap(height, show)} above the pump` }),
      atPump: () => ({ amount: 'at the pump' }),
    },
    asks: ({ within, aboveWater, stretch }, show) =>
      `A check valve is within ${show.depth(within)} of the pump, none over ${show.depth(aboveWater)} above the lowest water, none with over ${show.depth(stretch)} to hold.`,
    source:
      'N.H. Admin. Rules We 702.05(a) and W. Va. Code of State Rules 64-46-7.3 ask for two; distances: common practice, no source',
    why: 'Without a check valve the pipe drains, the pump spins backwards and the next start strikes it.',
    messages: {
      nearPump: () => 'A check valve near the pump keeps the drop pipe full; spring type, not swing.',
      atPump: () => 'A check valve at the pump keeps the drop pipe full; spring type, not swing.',
      none: () => 'No check valve is planned, in the pump or in the drop pipe.',
      lowestTooHigh: ({ height, within }, show) =>
        `The lowest check valve is ${gap(height, show)} above the pump; ${show.depth(within)} is the usual most.`,
      upperTooHigh: ({ above, most, thin }, show) =>
        `The upper valve is ${gap(above, show)} above the lowest pumping level; ${kept(most, thin, show)}.`,
      upperTooHighAtRest: ({ above, most, thin }, show) =>
        `Water at rest stands ${gap(above, show)} below the upper valve; ${kept(most, thin, show)}.`,
      dependsOnLevel: ({ turn, most }, show) =>
        `The upper valve is within ${gap(most, show)} of the water only while pumping leaves it above ${level(turn, show)}.`,
      longStretch: ({ stretch, most, usual }, show) =>
        `${show.depth(stretch)} of pipe stands on one valve; beyond ${show.depth(most)} one every ${show.depth(usual)} is usual.`,
    },
    fixes: {
      add: () => 'Add a check valve at the pump',
      putAtPump: () => 'Put the check valve at the pump',
      lowestToPump: () => 'Put the lowest check valve at the pump',
      leaveUpperOut: ({ removed }) =>
        removed === 1 ? 'Leave the upper valve out' : `Leave the upper ${removed} valves out`,
      oneAtPump: () => 'Have one check valve, at the pump',
      askForSecond: () => 'Ask whether the state wants a second valve; each is two more joints.',
    },
  },
  'PR-10': {
    holds: 'The line stays under tank pressure',
    held: {
      none: () => ({ amount: 'none in the line' }),
    },
    asks: () => 'No check valve stands between the well and the tank.',
    source: 'Wis. Adm. Code NR 812.42(6)(f); 77 Ill. Adm. Code 920.40(f) and 925.40(c)',
    why: 'Beyond that valve the line to the house loses its pressure and can draw in ground water.',
    messages: {
      none: () => 'No check valve between the well and the tank: the line is under pressure.',
      oneInLine: () => 'A valve between well and tank cuts the line off from the tank’s pressure.',
    },
    fixes: { leaveOut: () => 'Leave that valve out' },
  },
  'PR-11': {
    holds: 'The check valve’s arrow points up',
    held: {
      up: () => ({ amount: 'arrow up' }),
    },
    asks: () => 'The arrow on every check valve points up.',
    source: 'common practice, no source',
    why: 'A reversed valve lets no water up, and the pump works against a closed end.',
    caution: ELECTRIC_CAUTION,
    messages: {
      up: () => 'The arrow points up the drop pipe, the way the water goes.',
      down: () => 'The arrow points down, towards the pump; it must point up the drop pipe.',
    },
    fixes: { turn: () => 'Turn it: arrow up' },
  },
};

/** How near to the water practice keeps the highest valve: the air holds more, but not by much. */
function kept(most: Metres, thin: boolean, show: Show): string {
  return `${thin ? 'in thin air ' : ''}practice keeps it within ${gap(most, show)}`;
}
