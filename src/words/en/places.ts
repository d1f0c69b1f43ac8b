/** What "Set the depths for me" tells of what it changed, left and could not do. */
import type { Caveat } from '../../model/place/caveats.ts';
import type { AdapterEnd, Fall, Hung, HungFrom, Stands, ToldFinding, WayOut } from '../../model/place/told.ts';
import type { Metres } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import { capital, gap } from './phrases.ts';

export const places = {
  /** Why a field was set. */
  whys: {
    finding: (message: string) => message,
    /** @param end  the name of another limit, or what would be worse deeper, where the pump hangs by that */
    hung: (from: HungFrom, fall: Fall, hung: Hung, end: string, show: Show) =>
      `${capital(hangsBy(from, hung, end, show))}${wellSays(fall, from, hung, show)}.`,
    probeOverIntake: (above: Metres, show: Show) =>
      `${gap(above, show)} over the intake, so that the pump stops before it runs dry.`,
    protectedByCurrent: () => 'There is no room for a probe: by current the pump stops when it runs dry.',
    belowFrost: (below: Metres, frost: Metres, estimated: boolean, beyond: AdapterEnd | null, show: Show) =>
      `${show.small(below)} below the frost, which ${estimated ? 'by the estimate may reach' : 'reaches'} ${show.small(frost)}${deeper(beyond)}.`,
    covered: (cover: Metres, beyond: AdapterEnd | null, show: Show) =>
      `${show.small(cover)} of ground over it, where the frost asks for no more${deeper(beyond)}.`,
  },
  stands: {
    reported: 'It stands as the driller reported it.',
    measured: 'It stands as it was measured.',
    installed: 'It stands installed.',
  } satisfies Record<Stands, string>,
  standsAgainst: (stands: string, title: string) => `${stands} ${title}.`,
  nobodySaid: (missing: string) => `Nobody said ${missing}.`,
  flowing: () =>
    'The well flows by itself. Stop: a licensed contractor has to see it before anything is hung in it or its cap is opened.',
  dry: (rest: Metres, bottom: Metres, show: Show) =>
    `The water stands at ${show.depth(rest)} and the well ends at ${show.depth(bottom)}: there is nothing to pump. Measure again and ask the driller.`,
  hangsWell: (fall: Fall, hung: Hung, show: Show) =>
    `It hangs well and stays: ${clearances(hung, show)}${wellSays(fall, null, hung, show)}.`,
  underProbe: (probe: Metres, show: Show) =>
    `It stays: the dry-run protection that stands stops the pump while the water is still at ${show.depth(probe)}, over the intake.`,
  deepEnough: (below: Metres, frost: Metres, show: Show) =>
    frost > 0
      ? `It stays: it is ${show.small(below)} below the frost.`
      : 'It stays: there is no frost, and ground enough over it.',
  cannotLift: (from: Metres, lifts: Metres, show: Show) =>
    lifts > 0
      ? `The pump has to lift water from ${show.depth(from)} there, and this one lifts it from ${show.depth(lifts)} at the most: choose another pump first.`
      : 'This pump lifts no water into the tank from any depth: choose another pump first.',
  noRoomForPump: (least: Metres, atRest: boolean, deepest: Metres, end: string, wayOut: string, show: Show) =>
    `To hang far enough under the water ${atRest ? 'at rest' : 'while pumping'} it would have to go to ${show.depth(least)}, and ${show.depth(Math.max(deepest, 0))} is as deep as it may (${end}). What would have to change: ${lower(wayOut)}`,
  noRoomForAdapter: (least: Metres, by: AdapterEnd, show: Show) =>
    `It has to stand ${show.small(least)} deep or deeper, and ${noRoom[by]}`,
  worseThere: (to: Metres, title: string, hidden: boolean, show: Show) =>
    hidden
      ? `It would go to ${gap(to, show)}, but there nobody could tell any more whether this stays wrong: ${lower(title)}.`
      : `It would go to ${gap(to, show)}, but there something else would be worse: ${lower(title)}.`,
  /** What the depths rest on. */
  caveats: {
    pumpTooWeak: ({ stands, uses }, show) =>
      `The pump is too weak for this well: ${show.depth(stands)} of water stands in it, and this depth uses ${show.depth(uses)}. Choose a stronger pump first.`,
    shortTest: ({ measured }, show) =>
      `The test took ${show.time(measured)} and proves no more: pumped longer, the water may fall further.`,
    testOfUnknownLength: () =>
      'Nobody said how long the test took: pumped longer, the water may fall further than it did.',
    levelAtAssumedFlow: ({ flow }, show) =>
      `Nobody said at what flow the pumping level was read; ${show.flow(flow)} is assumed, and at less it proves less.`,
  } satisfies { [V in Caveat['variant']]: (numbers: Extract<Caveat, { variant: V }>['numbers'], show: Show) => string },
  gap,
  /** By how much two ends miss each other. */
  apart: (apart: Metres, show: Show) =>
    apart < JUST ? 'They only just miss each other' : `They miss each other by ${gap(apart, show)}`,
  clash: {
    'pump.setting': (from: string, to: string, apart: string) =>
      `No depth of the pump meets both: ${from}, and ${to}. ${apart}.`,
    'top.depth': (from: string, to: string, apart: string) =>
      `No depth of the pitless adapter meets both: ${from}, and ${to}. ${apart}.`,
  },
  waysOut: {
    adapterUnderWater: () =>
      'An adapter made to stand under water, insulation and heat over a shallower line, or a heated and housed seal on top.',
    adapterInLiner: () =>
      'A driller who sees whether the liner can be cut off lower, insulation and heat over a shallower line, or a heated and housed seal on top.',
    heatedTop: () => 'Insulation and heat over a shallower line, or a heated and housed seal on top.',
    deeperPump: () =>
      'A pump that hangs deeper, insulation and heat over a shallower line, or a heated and housed seal on top.',
    lessDrawdown: (apart: string) => `${lessDrawdown(apart)}.`,
    blankBelowScreen: (apart: string) =>
      `${lessDrawdown(apart)}; or a driller who sees whether blank casing below the screen takes a pump in a flow sleeve.`,
    slimmerPump: (apart: string) =>
      `A slimmer pump that passes the narrow part; or water that falls ${apart} less while pumping.`,
    strongerPump: (apart: string) =>
      `A pump that lifts from ${apart} deeper; or dry-run protection that stops it sooner.`,
    onlyStrongerPump: (apart: string) => `A pump that lifts from ${apart} deeper.`,
    deeperWell: (apart: string) => `${lessDrawdown(apart)}; or a well that is ${apart} deeper.`,
    onlyDeeperWell: (apart: string) => `A well that is ${apart} deeper.`,
  } satisfies Record<WayOut, (apart: string) => string>,
};

/** For the middle of a sentence; "PE" stays "PE". */
function lower(text: string): string {
  return text.replace(/^[A-Z](?=[a-z ])/, (first) => first.toLowerCase());
}

/** Half an inch: nobody hangs a pump to less. */
const JUST: Metres = 0.0127;

function lessDrawdown(apart: string): string {
  return `Water that falls ${apart} less while pumping: a smaller flow, or storage in the house for the peaks`;
}

/** Why a stronger pump would be worth its price in a well that lives on what stands in it. */
const A_STRONGER_PUMP = 'a stronger pump could hang deeper and use more of the well’s store';

/** The pump's own strength ends its way down, and nothing of the well. */
function isTooWeak({ rule }: ToldFinding): boolean {
  return rule === 'PR-46' || rule === 'PR-54';
}

/** "20 ft off the bottom". */
function hangsBy(from: HungFrom, hung: Hung, end: string, show: Show): string {
  switch (from.by) {
    case 'water':
      return hung.under === null
        ? `${show.depth(hung.underRest)} under the water at rest`
        : `${show.depth(hung.under)} under the lowest water while pumping`;
    case 'screen':
      return `the motor ends ${show.depth(hung.overScreen ?? hung.offBottom)} over the screen`;
    case 'bottom':
      return `the motor ends ${show.depth(hung.offBottom)} off the bottom`;
    case 'lift':
      return `no deeper than this pump still lifts from, which is water at ${show.depth(from.lifts)}: ${A_STRONGER_PUMP}`;
    case 'deepest':
      return 'as deep as this well and this pump let it';
    case 'probe':
      return `under the dry-run protection that stands, which stops the pump with the water at ${show.depth(from.probe)}`;
    case 'worse':
      return from.wrong.hidden
        ? `as deep as it goes; deeper, nobody could tell any more whether this stays wrong: ${lower(end)}`
        : `as deep as it goes; deeper, ${lower(end)}${isTooWeak(from.wrong.finding) ? `: ${A_STRONGER_PUMP}` : ''}`;
    case 'end':
      return end;
  }
}

/** What of the well's giving makes that the right depth; with how much water it leaves, where that was not said. */
function wellSays(fall: Fall, from: HungFrom | null, { under }: Hung, show: Show): string {
  switch (fall) {
    case 'known':
      return from === null || from.by === 'water' || under === null
        ? ''
        : `; that is ${show.depth(under)} under the lowest water while pumping`;
    case 'unknown':
      return '; nobody knows how far the water falls';
    case 'givesLess':
      return '; the well gives less than the house wants, and the water that stands in it helps out';
    case 'pumpTakesMore':
      return '; the pump takes more than flows in, and draws on the water that stands in the well';
  }
}

/** "42 ft under the lowest water while pumping, the motor 48 ft off the bottom". */
function clearances({ under, underRest, overScreen, offBottom }: Hung, show: Show): string {
  const water =
    under === null
      ? `${show.depth(underRest)} under the water at rest`
      : `${show.depth(under)} under the lowest water while pumping`;
  const end =
    overScreen === null
      ? `the motor ${show.depth(offBottom)} off the bottom`
      : `the motor ${show.depth(overScreen)} over the screen`;
  return `${water}, ${end}`;
}

const BEYOND: Readonly<Record<AdapterEnd, string>> = {
  digging: 'so deep as it stood nobody digs for an adapter',
  casing: 'deeper it would stand below the casing',
  liner: 'deeper its hole would go through the liner as well',
  pump: 'deeper it would stand on the pump',
  water: 'deeper it would stand under water',
};

function deeper(beyond: AdapterEnd | null): string {
  return beyond === null ? '' : `; ${BEYOND[beyond]}`;
}

const noRoom: Readonly<Record<AdapterEnd, string>> = {
  digging: 'nobody digs so deep for an adapter: insulate and heat the line, or a heated and housed seal on top.',
  casing: 'the casing ends before that: insulate and heat the line, or a heated and housed seal on top.',
  liner:
    'a liner stands in the casing there: a heated and housed seal on top, or a driller who sees whether the liner can be cut off lower.',
  pump: 'the pump hangs in its way: hang the pump deeper, or a heated and housed seal on top.',
  water: 'the water stands higher: an adapter made to stand under water, or a heated and housed seal on top.',
};
