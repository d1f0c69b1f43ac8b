import { feet } from '../../../model/units.ts';
import type { casingDepthRules } from '../../../model/rules/casingDepth.ts';
import type { Metres } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { gap, level, toSpare } from '../phrases.ts';

export const long: LongWords<typeof casingDepthRules> = {
  'PR-35': {
    holds: 'Casing and seal reach deep enough',
    held: {
      deepEnough: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      casingOnly: ({ margin }, show) => ({
        title: 'The casing reaches deep enough, its seal not known',
        amount: toSpare(margin, show),
      }),
    },
    asks: ({ usual, least }, show) =>
      `Casing, and grout where it is told, reach down ${show.depth(usual)} or more; some codes ask for ${show.depth(least)}.`,
    source: (show) =>
      `${show.depth(feet(20))}: 77 Ill. Adm. Code 920, 15A N.C. Admin. Code 02C .0107; ${show.depth(feet(19))}: 10 N.Y. Codes R. & Regs. App. 5-B; the local code decides`,
    why: 'Water near the surface is the dirtiest; casing and grout keep it out of the well.',
    messages: {
      deepEnough: ({ by, measured, usual }, show) =>
        `${sealedBy(by)} reaches ${show.depth(measured)}; ${show.depth(usual)} is usual.`,
      casingOnly: ({ measured, usual }, show) =>
        `Casing reaches ${show.depth(measured)}; ${show.depth(usual)} is usual. Nobody said how deep its grout goes.`,
      shallow: ({ by, measured, least, usual }, show) =>
        `${sealedBy(by)} reaches ${show.depth(measured)}; codes ask for ${show.depth(least)} to ${show.depth(usual)} at least, some for more.`,
    },
    fixes: {
      askLocalCode: () => 'Ask the local code, and have the water tested; deeper casing is a driller’s work.',
    },
  },
  'PR-36': {
    holds: 'The casing’s foot stands where it should',
    held: {
      seated: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      belowLevel: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
      belowFloor: ({ margin }, show) => ({ amount: toSpare(margin, show) }),
    },
    asks: ({ beyond }, show) =>
      `The casing ends ${show.depth(beyond)} or more into firm rock, or below the lowest pumping level where the ground is loose.`,
    source: (show) =>
      `US Army TI 814-01 and 10 N.Y. Codes R. & Regs. App. 5-B, Table 2: ${show.depth(feet(5))}; the local code decides`,
    why: 'Shallow water and loose ground enter a well at the foot of its casing.',
    messages: {
      seated: ({ measured, material, usual }, show) =>
        `The casing stands ${gap(measured, show)} in ${material}; ${show.depth(usual)} is usual.`,
      barelySeated: ({ measured, material, usual }, show) =>
        `The casing stands ${gap(measured, show)} in ${material}; ${show.depth(usual)} into it is usual.`,
      notInRock: ({ material, usual }, show) =>
        `The casing ends in ${material}, not in firm rock; ${show.depth(usual)} into it is usual.`,
      belowLevel,
      nearLevel: belowLevel,
      aboveLevel: ({ measured, usual }, show) =>
        `The casing ends ${gap(measured, show)} above the pumping level; ${show.depth(usual)} below it is usual.`,
      belowFloor: ({ foot, floor, usual }, show) =>
        `Pumping cannot draw the water below ${level(floor, show)}; the casing ends at ${show.depth(foot)}, ${show.depth(usual)} below it is usual.`,
      nearRest: ({ foot, rest, usual }, show) =>
        `At rest water is at ${level(rest, show)}; the casing ends at ${show.depth(foot)}, ${show.depth(usual)} below water is usual.`,
      dependsOnLevel: ({ turn, foot, usual }, show) =>
        `The casing ends ${show.depth(usual)} under water, at ${show.depth(foot)}, only while pumping leaves that above ${level(turn, show)}.`,
    },
    fixes: {
      askDriller: () => 'Ask the driller how the casing was seated; a liner with grout can close the gap.',
      pumpLess: () => 'Pump less: the casing itself cannot be changed.',
    },
  },
};

function sealedBy(by: 'grout' | 'casing'): string {
  return by === 'grout' ? 'Grout' : 'Casing';
}

function belowLevel({ measured, usual }: { measured: Metres; usual: Metres }, show: Show): string {
  return `The casing ends ${gap(measured, show)} below the pumping level; ${show.depth(usual)} below it is usual.`;
}
