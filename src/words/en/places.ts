/** What "Place it for me" tells of what it changed, left and could not do. */
import type { Stands, WayOut } from '../../model/place/told.ts';
import { gap } from './phrases.ts';

export const places = {
  /** Why a field was set. */
  whys: {
    finding: (message: string, rule: string) => `${message.replace(/\.$/, '')} (${rule}).`,
    deepest: (end: string) => `The well gives less than the house asks, and the deepest place stores most: ${end}.`,
    leastToDig: (end: string) => `As shallow as the rules allow, since less is to dig: ${end}.`,
    leastToLift: (end: string) => `The shallowest that every rule allows, since less is to lift: ${end}.`,
    probeOverIntake: () =>
      'With the pump so deep, the cut-off hangs just over its intake, and the stored water can be used (PR-08).',
  },
  /** What ends a band, with the rule that ends it. */
  end: (end: string, rule: string | null) => (rule === null ? end : `${end} (${rule})`),
  stands: {
    reported: 'It stands as the driller reported it.',
    installed: 'It stands installed.',
  } satisfies Record<Stands, string>,
  standsAgainst: (stands: string, title: string, rule: string) => `${stands} ${title} (${rule}).`,
  nobodySaid: (missing: string) => `Nobody said ${missing}.`,
  /** By how much two ends miss each other. */
  apart: gap,
  clash: {
    'pump.setting': (from: string, to: string, apart: string) =>
      `No depth of the pump meets both: ${from}, and ${to}. They miss each other by ${apart}.`,
    'top.depth': (from: string, to: string, apart: string) =>
      `No depth of the pitless adapter meets both: ${from}, and ${to}. They miss each other by ${apart}.`,
  },
  waysOut: {
    adapterUnderWater: () =>
      'An adapter made to stand under water, insulation and heat over a shallower line, or a heated and housed seal on top.',
    deeperPump: () =>
      'A pump that hangs deeper, insulation and heat over a shallower line, or a heated and housed seal on top.',
    lessDrawdown: (apart: string) => `${lessDrawdown(apart)}.`,
    blankBelowScreen: (apart: string) =>
      `${lessDrawdown(apart)}; or a driller who sees whether blank casing below the screen takes a pump in a shroud.`,
    slimmerPump: (apart: string) => `${lessDrawdown(apart)}; or a slimmer pump that passes the narrow part.`,
    deeperWell: (apart: string) => `${lessDrawdown(apart)}; or a well that is ${apart} deeper.`,
  } satisfies Record<WayOut, (apart: string) => string>,
};

function lessDrawdown(apart: string): string {
  return `Water that falls ${apart} less while pumping: a smaller flow, or storage in the house for the peaks`;
}
