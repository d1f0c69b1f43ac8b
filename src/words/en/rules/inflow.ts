import type { inflowRules } from '../../../model/rules/inflow.ts';
import type { Metres, Ratio } from '../../../model/si.ts';
import type { Show } from '../../../model/units.ts';
import type { LongWords } from '../../ruleWords.ts';
import { capital, evenAtRest, gap, level, toSpare } from '../phrases.ts';

export const long: LongWords<typeof inflowRules> = {
  'PR-04': {
    holds: 'Water covers the places where it comes in',
    held: {
      screenCovered: covered,
      floorAboveScreen: covered,
      inflowsCovered: covered,
      floorAboveInflow: covered,
      aboveFoot: covered,
    },
    asks: ({ aboveScreen }, show) =>
      `The lowest pumping level stays ${show.depth(aboveScreen)} or more above a screen, and above every depth where water enters rock.`,
    source:
      '35 Ill. Adm. Code 604.240(g)(4) for screens of public wells; margin and fractures: common practice, no source',
    why: 'Water that falls into the well carries air and sand and clogs the openings it came through.',
    messages: {
      screenCovered: aboveScreen,
      screenUncovered: ({ screen, measured }, show) =>
        `While pumping, water stands ${gap(measured, show)} below the top of the screen at ${show.depth(screen)}.`,
      screenAlmostUncovered: aboveScreen,
      floorAboveScreen: ({ floor, screen }, show) =>
        `Pumping cannot draw the water below ${level(floor, show)}; the screen begins at ${show.depth(screen)}.`,
      screenAtRest: ({ rest, dry, screen }, show) =>
        `${capital(evenAtRest(dry))} the water stands at ${level(rest, show)}; the screen begins at ${show.depth(screen)}.`,
      screenDepends: ({ turn, screen, least }, show) =>
        `Water covers the screen at ${show.depth(screen)} by ${show.depth(least)} only while pumping leaves it above ${level(turn, show)}.`,
      floorAboveInflow: ({ floor, inflow }, show) =>
        `Pumping cannot draw the water below ${level(floor, show)}; the first inflow is at ${show.depth(inflow)}.`,
      aboveFoot: ({ water, foot }, show) =>
        `While pumping, water stands at ${level(water, show)}; it comes in below the casing’s end at ${show.depth(foot)}.`,
      inflowAtRest: ({ rest, dry, inflow }, show) =>
        `${capital(evenAtRest(dry))} the water stands at ${level(rest, show)}, below the inflow at ${show.depth(inflow)}.`,
      inflowDepends: ({ turn }, show) =>
        `Water covers the inflow at ${show.depth(turn)} only while pumping leaves it above that depth.`,
      inflowsCovered: ({ water, inflow }, show) =>
        `While pumping, water stands at ${level(water, show)}; the first inflow is at ${show.depth(inflow)}.`,
      minorInflowUncovered: belowInflow,
      inflowUncovered: belowInflow,
    },
    fixes: {
      pumpLess: () => 'Pump less, or fit a flow-limiting valve: a deeper pump does not raise the water.',
      fromStore: () =>
        'A well of so little yield cannot avoid it. Short runs, a probe no deeper than needed and a sediment filter lessen the harm.',
      notByPumping: () => 'Pumping less does not cover it: ask the driller whether it should be closed off.',
    },
  },
};

function covered({ margin }: { margin: Metres }, show: Show) {
  return { amount: toSpare(margin, show) };
}

function aboveScreen({ screen, measured }: { screen: Metres; measured: Metres }, show: Show): string {
  return `While pumping, water stands ${gap(measured, show)} above the top of the screen at ${show.depth(screen)}.`;
}

function belowInflow(
  { water, inflow, share }: { water: Metres; inflow: Metres; share: Ratio | null },
  show: Show,
): string {
  const part = share === null ? '' : ` (${show.percent(share)})`;
  return `While pumping, water falls to ${level(water, show)}, below the inflow at ${show.depth(inflow)}${part}.`;
}
