/** What is the matter, told to people without a trade: short, plain, in their units, and nothing made up or promised. */
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../src/model/index.ts';
import type { Cause } from '../../src/model/matter/cause.ts';
import { SYMPTOMS } from '../../src/model/matter/symptom.ts';
import { troubleOf } from '../../src/model/matter/trouble.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { matter } from '../../src/words/en/matter.ts';
import { sayCause, sayTrouble, type SaidCause } from '../../src/words/sayMatter.ts';
import { troubleText } from '../../src/words/troubleText.ts';
import { inUnits } from '../plans/inUnits.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { BAD } from '../wells/bad.ts';
import { gradeOf, sentencesOf } from './reading.ts';

type Units = 'us' | 'metric';
const UNITS: readonly Units[] = ['us', 'metric'];

/** What no sample has, so that each sentence is reached. */
const OTHERS: readonly (readonly [string, Plan])[] = [
  ['open tank', rockWell({ house: { ...rockWell().house, kind: 'open tank' }, water: { staticLevel: '150 ft' } })],
  [
    'three phases, drive',
    rockWell({
      house: { ...rockWell().house, control: 'variable speed', cutOut: '60 psi' },
      pump: { ...rockWell().pump, phase: 3, wires: 3, voltage: '460 V', current: '3 A', lowLevelCutOff: true },
    }),
  ],
  [
    'all said',
    rockWell({
      site: { frostDepth: '0 in' },
      water: { ...rockWell().water, gas: true, sand: true, pH: '6.1' },
      house: { ...rockWell().house, cutIn: '40 psi', cutOut: '50 psi', precharge: '45 psi' },
      pump: { ...rockWell().pump, lowLevelCutOff: false, voltage: '230 V' },
      string: { checkValves: [], splices: [], torqueArrestor: 'none', valveBetweenTopAndTank: false },
    }),
  ],
  [
    'weak pump, air said',
    rockWell({
      water: { staticLevel: '40 ft', gas: false, sand: false, pumping: { kind: 'yield only' } },
      house: { ...rockWell().house, cutIn: '40 psi', cutOut: '60 psi', precharge: '38 psi' },
      pump: { setting: '250 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '10 gpm' } },
      well: { ...rockWell().well, depth: '400 ft', yield: '2 gpm' },
      string: { checkValves: ['0 ft', '60 ft'], splices: ['4 ft', '40 ft'], torqueArrestor: '2 ft' },
    }),
  ],
  ['seal in frost', rockWell({ top: { kind: 'seal' }, pump: { ...rockWell().pump, setting: '210 ft' } })],
  [
    'little known',
    planOf({
      format: 'wellcut-plan/1',
      well: { depth: '200 ft', casing: { size: '6 in' }, intake: { kind: 'open hole' } },
      water: { staticLevel: 'unknown' },
    }),
  ],
];
const WELLS: readonly (readonly [string, Plan])[] = [
  ...SAMPLES.map((name) => [name, planOf(sample(name))] as const),
  ...OTHERS,
];
const EVERY = WELLS.flatMap(([name, plan]) =>
  UNITS.map((units) => ({ name, units, plan: planOf(inUnits(plan, units)) })),
);

const told = (plan: Plan, units: Units = plan.units ?? 'us') =>
  SYMPTOMS.map((symptom) => sayTrouble(troubleOf(solve(plan), symptom, units), matter, en, show(units)));
/** Titles of rules are read elsewhere. */
const titlesAside = (text: string): boolean =>
  !text.startsWith(matter.heads.found('').slice(0, -1)) && !text.startsWith(matter.heads.against('').slice(0, -1));
const textsOf = ({ title, likelihood, look, tells, then, own, cautions }: SaidCause): readonly string[] => [
  title,
  likelihood,
  ...look,
  ...tells,
  ...then,
  ...own.filter(titlesAside),
  ...cautions,
];

describe.each(EVERY)('$name, $units', ({ plan, units }) => {
  const lists = told(plan, units);
  const causes = lists.flatMap((each) => each.causes);
  const texts = [
    ...lists.flatMap(({ title, shows, first, wellCautions }) => [title, shows, ...first, ...wellCautions]),
    ...causes.flatMap(textsOf),
  ];

  test('no sentence is longer than twenty words', () => {
    const long = texts.flatMap(sentencesOf).filter((sentence) => sentence.split(/\s+/).length > 20);
    expect([...new Set(long)]).toEqual([]);
  });
  test('nothing is promised, left open or made up', () => {
    const wrong =
      /\bsafe(?:ly|ty)?\b|\bwill not\b|\bwon[’']t\b|undefined|NaN|null|Infinity|\bunknown\b|\s[–—-]\s|—|\(\)|\[object/i;
    const own = causes.flatMap(({ own: each, deciding, assumed }) => [...each, deciding, assumed]);
    expect([...texts, ...own].filter((text) => wrong.test(text))).toEqual([]);
    expect([...texts, ...own].filter((text) => /\s{2}|\s[.,:;]|^\s|''|\.\./.test(text))).toEqual([]);
    expect([...new Set(own.filter((text) => text !== '' && !/[.?]$/.test(text)))]).toEqual([]);
  });
  test('in the reader’s units', () => {
    const foreign =
      units === 'metric'
        ? /\d[ -]?(?:ft|in|lb|psi|gal|fl oz|gpm|hp|°F)\b|\b(?:foot|feet|inch|inches|pounds?|gallons?)\b/
        : /\d[ -]?(?:m|cm|bar|kg|kPa|L|mL|kW|°C)\b|\bmet(?:er|re)s?\b/;
    // The one that counts what the pump draws is called so everywhere.
    const measured = texts.map((text) => text.replace(/\b(?:electric|the) meter\b/gi, ''));
    expect(measured.filter((text) => foreign.test(text))).toEqual([]);
  });
  test('read at the eighth grade or under', () => {
    const hard = causes.map((each) => [each.title, gradeOf(textsOf(each))] as const).filter(([, grade]) => grade > 8);
    expect(hard).toEqual([]);
    for (const { title, shows, first } of lists)
      expect(gradeOf([title, shows, ...first]), title).toBeLessThanOrEqual(8);
  });
});

test('every symptom, cause and sentence is reached by a plan of these', () => {
  const reached = WELLS.flatMap(([, plan]) => SYMPTOMS.flatMap((symptom) => troubleOf(solve(plan), symptom).causes));
  expect([...new Set(reached.map(({ id }) => id))].sort()).toEqual(Object.keys(matter.causes).sort());
  const own = new Set(reached.flatMap(({ says }) => says.map(({ id }) => id)));
  expect(Object.keys(matter.own).filter((id) => !own.has(id as never))).toEqual([]);
  const hurts = new Set(reached.flatMap(({ cautions }) => cautions));
  expect([...hurts].sort()).toEqual(Object.keys(matter.cautions).sort());
});

test('what is opened, pulled or measured live is for licensed people, and the caution stands by it', () => {
  const causes = SYMPTOMS.flatMap((symptom) => troubleOf(solve(rockWell()), symptom).causes);
  const says = (each: Cause) => sayCause(each, matter, en, show('us'));
  for (const each of causes) {
    const { look, then, cautions } = says(each);
    const text = [...look, ...then].join(' ');
    if (/electrician|\bamps\b|\bvolts\b/.test(text) && !each.cautions.includes('pulling'))
      expect([each.id, cautions.some((caution) => caution.includes('can kill'))]).toEqual([each.id, true]);
    if (/string is pulled|pump is pulled|pump and motor are pulled/i.test(text))
      expect([each.id, cautions.some((caution) => caution.startsWith('Nobody pulls'))]).toEqual([each.id, true]);
    for (const sentence of [...look, ...then].flatMap(sentencesOf))
      if (/\b(?:amps|ohms|volts)\b/.test(sentence))
        expect(sentence).toMatch(/electrician|contractor|papers|at the same time/);
  }
});

test('the words of the case: how much lower, how long, and by how much', () => {
  const tamarack = planOf(sample('tamarack-ridge'));
  const of = (plan: Plan, symptom: number, title: string) =>
    told(plan)[symptom]!.causes.find((each) => each.title === title)!;
  const stops = of(tamarack, SYMPTOMS.indexOf('never-stops'), 'The water in the well has fallen');
  expect(stops.own[0]).toMatch(/^Solved: with the water \d+ ft lower, /);
  const tank = of(tamarack, SYMPTOMS.indexOf('short-cycles'), 'The tank has lost its air');
  expect(tank.own).toEqual([
    'As planned, the tank gives 11 gal a start, so that the pump runs 68 s.',
    'Solved with its air let out: 3.2 gal and 19 s; full of water, a few seconds.',
  ]);
  expect(tank.assumed).toContain('Pre-charge');
  const all = OTHERS.find(([name]) => name === 'all said')![1];
  expect(of(all, SYMPTOMS.indexOf('short-cycles'), 'The tank’s air is set wrong').own.join(' ')).toContain(
    'the air is 5 psi over the cut-in of 40 psi: this alone does it',
  );
  expect(of(all, SYMPTOMS.indexOf('meter-runs'), 'The check valve leaks or is missing').own.join(' ')).toContain(
    'nothing holds the water back',
  );
});

test('as text it is what is said, each sentence on its line, with what was ticked', () => {
  const said = told(planOf(sample('tamarack-ridge')))[0]!;
  const text = troubleText(
    { title: 'A well', said, looked: said.causes.map((_, i) => (i === 1 ? 'fine' : null)) },
    matter,
  );
  const lines = text.split('\n').map((line) => line.trim());
  for (const each of said.causes)
    for (const sentence of [
      ...each.look,
      ...each.tells,
      ...each.then,
      ...each.own,
      ...each.cautions.map((c) => `! ${c}`),
    ])
      expect(lines).toContain(sentence);
  expect(text).toContain('\n2. A shut valve or a full filter [fine]\n');
});

test('of every well with one thing wrong the list can be told', () => {
  for (const { plan } of BAD) for (const list of told(planOf(plan))) expect(list.causes.length).toBeGreaterThan(1);
});
