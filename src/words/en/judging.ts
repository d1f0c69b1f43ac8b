/** How Wellcut judges, told to whoever relies on it. Fetched with the page that shows it, so kept apart from the rest. */
import type { Judging } from '../../model/judging.ts';
import type { Show } from '../../model/units.ts';
import type { JudgingItem, JudgingWords } from '../judgingPage.ts';
import {
  DIGGING_CAUTION,
  ELECTRIC_CAUTION,
  FLOWING_CAUTION,
  GAS_CAUTION,
  LIFTING_CAUTION,
  PIT_CAUTION,
  PRESSURE_CAUTION,
} from './cautions.ts';
import { motorSize } from './motorSizes.ts';
import { sayAssumedValue } from './plan/assumed.ts';
import { nameOfPath } from './plan/paths.ts';

export const judging: JudgingWords = {
  title: 'How Wellcut judges',
  opening: [
    'Wellcut works out levels, flows, pressures and weights from what you say, and holds them against the rules on this page. What each rule asks is told with the very limits that it judges by.',
    'It is a planning aid. The local code, the maker’s instructions and the people licensed for this work decide.',
  ],
  knowing: {
    title: 'Said, assumed, not known',
    paragraphs: () => [
      'Every value that a figure or a rule rests on is one of three things.',
      'Said: you typed it, from the driller’s report, a measurement, the maker’s sheet or your own choice.',
      'Assumed: nobody chose, so a usual value stands in. It is marked as assumed wherever it shows, and a rule that holds only with it stands under “OK if what is assumed is right”. A rule that would hold one assumed value against another says nothing. There too stands what holds with the water as far down as the house’s demand draws it, where nobody can tell what the pump takes, and what holds only if the well gives far more than was ever pumped from it.',
      'Not known: nobody said. It is drawn dashed, the figures that need it stay empty, and “Could not check” names the field that would decide.',
      'Wellcut never assumes a water level, a yield, a frost depth, or how deep the casing or a screen reaches.',
    ],
  },
  assumed: {
    title: 'What is assumed where you say nothing',
    paragraphs: () => [
      'You can change each of these in the record. Those about a line to the house, a rope or a kind of test are assumed only where you say that there is one.',
    ],
    items: ({ assumable }, { units }) =>
      assumable.map((each) => ({
        name: nameOfPath(each.path),
        text:
          each.value === null
            ? 'follows from what else you say'
            : sayAssumedValue({ ...each, value: each.value }, units),
      })),
  },
  unknowns: {
    title: 'What is not known is judged at its worst end',
    paragraphs: () => [
      'What is not known is not taken to be harmless. Where a fact can only lie between two ends, a rule is judged at both. If both agree, that is the answer. If they differ, it depends: you read at which value the answer turns, and what to measure.',
      'Rules that wait for the same measurement are told together, as one finding.',
      'Only the facts below are judged so. What has no ends, such as a flood or the distance to a septic tank, is left unchecked and listed.',
      'The pumping level that counts is the lowest that your record allows: from today’s level at rest or the dry season’s, whichever is deeper, drawn down by what the house wants or by what the pump can take, whichever is more, but no deeper than the intake or a probe above it. Water at rest below the intake is a danger, whatever else is not known.',
    ],
    items: ({ ends }, show) => openFacts(ends, show),
  },
  band: {
    title: 'A pump without its curve is a band',
    paragraphs: ({ band }, show) => [
      'Pumps of the same flow and power differ. Until you type in points from the maker’s sheet, Wellcut reckons with two: the weakest and the strongest that the name usually stands for.',
      `A motor may carry its rated power times its service factor without end. The weaker pump has the head that ${show.percent(band.least)} of that gives, and is not counted on past ${band.end} times its rated flow. The stronger has the head that ${show.percent(band.most)} gives.`,
      'Whether enough water and pressure arrive is judged on the weaker. What the pressure can burst, and whether the pump takes more than the well gives, is judged on the stronger.',
      'The pump’s own points make one curve of the band. Type them in wherever the answer hangs on it.',
      'The factors below are those of usual motors on 60 Hz, from memory: common practice, no source. On 50 Hz the factor is 1. A motor named in kilowatts may run on either, so both stay open until you say which.',
    ],
    items: ({ band }, show) =>
      band.serviceFactors.map(({ power, factor }) => ({ name: motorSize(power, show), text: String(factor) })),
  },
  shortage: {
    title: 'A well that cannot keep up',
    paragraphs: () => [
      'Where a pump takes more than flows in, the water settles nowhere. It falls until it meets the intake, or the dry-run protection above it. Wellcut follows that fall, with the water stored in the bore and what flows in meanwhile, and tells how long it takes where the bore is known. It names no water level below the intake.',
      'Stored water counts only as far down as the pump still lifts it into the tank.',
      'Whether the house gets along is then a matter of its peak and of its day: what the store gives for the one, and what the well gives for the other.',
    ],
  },
  severities: {
    title: 'Danger, warning, note',
    paragraphs: () => [
      'A finding that depends on something not known is a warning. It is a note where your build already answers the bad end, or where little hangs on it.',
      'A rule that holds says how much is to spare.',
    ],
    items: () => [
      {
        name: 'Danger',
        text: 'Do not build it so: it can hurt somebody, foul the water, or cost the pump or the well.',
      },
      { name: 'Warning', text: 'It will hardly do its job for long, or nobody knows. Settle it before you buy.' },
      { name: 'Note', text: 'Good to know before the work. Nothing has to change.' },
    ],
  },
  fixes: {
    title: 'A fix is tried before it is offered',
    paragraphs: () => [
      'Before you see a button, the well is worked out with that change. It is offered only if the finding gets better, no other finding just drops out of sight, and no other warning or danger appears or grows. Otherwise you read what to do.',
      'A fix changes choices of the build, never the well, its water or its place. What you marked as reported, measured or installed is not moved.',
    ],
  },
  rules: {
    title: 'What each rule asks',
    paragraphs: () => [
      'The most important first. “Common practice, no source” means what it says: the trade does it so, and no publication stands behind it. “From memory” marks a publication that nobody had in hand.',
    ],
  },
  advice: {
    title: 'Advice that no drawing can check',
    paragraphs: () => ['No plan says whether these are done, so look.'],
  },
  notJudged: {
    title: 'What Wellcut does not judge',
    paragraphs: () => [
      'Wiring inside a panel or box, breakers and grounding; hoists and shoring; how a flowing well is held; well pits; how a stuck pump is freed; treatment, and whether the water is fit to drink; seals and grout that nobody can see; whether a permit is needed.',
      'For these ask the local code, the health department, and the licensed well contractor, pump installer or electrician. Where they or the maker’s instructions ask for more than a rule here, theirs counts.',
    ],
    items: () => [
      { name: 'Electricity', text: ELECTRIC_CAUTION },
      { name: 'Lifting', text: LIFTING_CAUTION },
      { name: 'Digging', text: DIGGING_CAUTION },
      { name: 'Pressure', text: PRESSURE_CAUTION },
      { name: 'Flowing wells', text: FLOWING_CAUTION },
      { name: 'Pits', text: PIT_CAUTION },
      { name: 'Gas', text: GAS_CAUTION },
    ],
  },
};

function openFacts(ends: Judging['ends'], show: Show): readonly JudgingItem[] {
  const [least, most] = ends.reaches;
  return [
    {
      name: 'The pumping level',
      text: 'from the water at rest, at its lowest, down to the intake or to a probe above it',
    },
    {
      name: 'The yield of a well that was blown with air or bailed, or tested nobody said how',
      text: `from ${show.percent(ends.blownShare)} of what came out to all of it; from less in proportion where the pump draws the water down by less than ${show.percent(ends.drawnPart)} of what stands in the hole`,
    },
    {
      name: 'The frost depth of a place whose winters are known',
      text: `from none to ${show.percent(ends.frostShare)} of the estimate`,
    },
    {
      name: 'How far an adapter reaches into the casing',
      text: `from ${show.bore(least)} to ${show.bore(most)}`,
    },
    {
      name: 'Where dry-run protection acts',
      text: `from ${show.depth(ends.cutOffAbove)} above the intake down to the intake`,
    },
  ];
}
