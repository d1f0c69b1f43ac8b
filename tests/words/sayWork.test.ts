/** The order of the work, told to people without a trade: short, plain, in their units, and nothing made up. */
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../src/model/index.ts';
import { orderOfWork } from '../../src/model/work/orderOfWork.ts';
import type { Caution, Kind, Phase, Step, StepId } from '../../src/model/work/step.ts';
import { show } from '../../src/model/units.ts';
import { work } from '../../src/words/en/work.ts';
import { sayStep, sayStop, type SaidStep } from '../../src/words/sayWork.ts';
import { inUnits } from '../plans/inUnits.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { sentencesOf, gradeOf } from './reading.ts';

type Units = 'us' | 'metric';
const KINDS: readonly Kind[] = ['new', 'replace'];
const UNITS: readonly Units[] = ['us', 'metric'];

const stepsOf = (plan: Plan, kind?: Kind): readonly Step[] => {
  const done = orderOfWork(solve(plan), kind);
  if (done.kind === 'stop') throw new Error(`stopped: ${done.why}`);
  return done.steps;
};
const told = (plan: Plan, kind?: Kind, units: Units = 'us'): readonly SaidStep[] =>
  stepsOf(plan, kind).map((each) => sayStep(each, work, show(units)));
const textsOf = ({ phase, title, does, why, check, mistake, onTheHook, cautions }: SaidStep): readonly string[] => [
  phase,
  title,
  ...does,
  why,
  ...check,
  mistake,
  ...onTheHook,
  ...cautions,
];

const STEEL = { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' };
const ROPE = { material: 'polypropylene', diameter: '1/4 in' };
const SEALED = { top: { kind: 'seal' }, rope: { ...ROPE, tied: 'casing hook' } };
/** What no sample has: an open tank, three phases, a drive, a valve up the pipe, and nothing said of weight or water. */
const OTHERS: readonly (readonly [string, Plan])[] = [
  ['open tank', rockWell({ house: { ...rockWell().house, kind: 'open tank' } })],
  ['three phases', rockWell({ pump: { ...rockWell().pump, phase: 3, wires: 3, flowLimiter: '6 gpm' } })],
  ['steel with valves', rockWell({ dropPipe: STEEL, string: { checkValves: ['0 ft', '63 ft'], splices: ['60 ft'] } })],
  [
    'two valves, arrow down',
    rockWell({ string: { checkValves: ['0 ft', '50 ft'], arrow: 'down', clampsPerJoint: 1 } }),
  ],
  ['seal with PE', rockWell(SEALED)],
  ['rope through the cap', rockWell({ rope: { ...ROPE, tied: 'through cap' }, string: { splices: [] } })],
  ['drive', rockWell({ house: { ...rockWell().house, control: 'variable speed', reliefValve: false } })],
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
  KINDS.flatMap((kind) => UNITS.map((units) => ({ name, kind, units, plan: planOf(inUnits(plan, units)) }))),
);

describe.each(EVERY)('$name, $kind, $units', ({ plan, kind, units }) => {
  const steps = told(plan, kind, units);
  const texts = steps.flatMap(textsOf);

  test('no sentence is longer than twenty words', () => {
    const long = texts.flatMap(sentencesOf).filter((sentence) => sentence.split(/\s+/).length > 20);
    expect([...new Set(long)]).toEqual([]);
  });
  test('of each step one thing after the other is told, and not too many', () => {
    for (const { key, title, does, why, check, mistake } of steps) {
      const words = title.split(' ').length;
      expect([words >= 2, words <= 6], `${key}: ${title}`).toEqual([true, true]);
      expect(does.length, key).toBeGreaterThan(0);
      expect(does.length, key).toBeLessThanOrEqual(6);
      expect(check.length, key).toBeGreaterThan(0);
      for (const one of [...does, why, ...check, mistake]) expect(sentencesOf(one), key).toHaveLength(1);
    }
  });
  test('nothing is promised, left open or made up', () => {
    const wrong =
      /\bsafe(?:ly|ty)?\b|\bwill not\b|\bwon[’']t\b|undefined|NaN|null|Infinity|\bunknown\b|\s[–—-]\s|—|\(\)/i;
    expect(texts.filter((text) => wrong.test(text))).toEqual([]);
    expect(texts.filter((text) => !/[.?!]$/.test(text) && text.split(' ').length > 6)).toEqual([]);
    expect(texts.filter((text) => /\s{2}|\s[.,:;]|^\s|''/.test(text))).toEqual([]);
  });
  test('in the reader’s units', () => {
    // Threads and pipe are called by inches everywhere, and wire by its gauge.
    const bare = texts.map((text) =>
      text.replace(/\b(?:(?:\d+-)?\d+\/\d+|\d+(?:\.\d+)?) in\b(?= outlet| threads| to |:|\.)/g, ''),
    );
    const foreign =
      units === 'metric'
        ? /\d[ -]?(?:ft|in|lb|psi|gal|fl oz|gpm|hp|°F)\b|\b(?:foot|feet|inch|inches|pounds?|gallons?)\b/
        : /\d[ -]?(?:m|cm|bar|kg|kPa|L|mL|kW|°C)\b|\bmet(?:er|re)s?\b/;
    const size = /\d mm² wire|\(\d+(?:\.\d)? mm²\)/g;
    expect(bare.map((text) => text.replace(size, '')).filter((text) => foreign.test(text))).toEqual([]);
  });
  test('read at the eighth grade or under', () => {
    const hard = steps.map((each) => [each.key, gradeOf(textsOf(each))] as const).filter(([, grade]) => grade > 8);
    expect(hard).toEqual([]);
  });
});

test('every step, phase and caution is reached by a plan of these', () => {
  const reached = WELLS.flatMap(([, plan]) => KINDS.flatMap((kind) => stepsOf(plan, kind)));
  expect([...new Set(reached.map(({ id }) => id))].sort()).toEqual((Object.keys(work.steps) as StepId[]).sort());
  expect([...new Set(reached.map(({ phase }) => phase))].sort()).toEqual((Object.keys(work.phases) as Phase[]).sort());
  expect([...new Set(reached.flatMap(({ cautions }) => cautions))].sort()).toEqual(
    (Object.keys(work.cautions) as Caution[]).sort(),
  );
});

const one = (plan: Plan, key: string, kind?: Kind, units?: Units): SaidStep => {
  const found = told(plan, kind, units).find((each) => each.key === key);
  if (found === undefined) throw new Error(`no step ${key}`);
  return found;
};

describe('what hangs on the hook', () => {
  const tamarack = planOf(sample('tamarack-ridge'));
  test('at the start and at the end, as the rule of the hanging load judges it', () => {
    expect(one(tamarack, 'lower').onTheHook).toEqual([
      '38 lb on the hook, and 30 lb more at the end.',
      'Hanging in the water with a full pipe, the whole string comes to 87 lb.',
      'That is too much for two people: use a pipe wheel or a hoist, rated as the parts list says.',
    ]);
    const judged = solve(tamarack).findings.find(({ rule }) => rule === 'PR-51');
    expect(judged?.variant).toBe('needsWheel');
    expect(one(tamarack, 'lift').onTheHook[1]).toMatch(
      /^Hanging in the water with a full pipe, the whole string comes to \d+ lb/,
    );
  });
  test('pulling counts a full pipe and half as much again', () => {
    const pulled = (status: object) =>
      one(planOf({ ...sample('tamarack-ridge'), status }), 'pull', 'replace').onTheHook[0];
    expect(pulled({ dropPipe: 'installed' })).toMatch(/^Count on up to 253 lb on the hook/);
    // The plan's own string says nothing of one that nobody described.
    expect(pulled({})).toMatch(/^Nobody said what hangs there/);
  });
  test('threaded pipe takes a hoist', () => {
    expect(one(planOf(sample('palo-amargo')), 'sections', 'new', 'metric').onTheHook.at(-1)).toBe(
      'Threaded pipe takes a hoist and two pipe holders, however light it is.',
    );
  });
  test('a length of steel that stands over the casing hangs too', () => {
    const [bare] = one(rockWell(), 'lift').onTheHook;
    const [standing] = one(rockWell({ dropPipe: STEEL }), 'lift').onTheHook;
    expect(bare).toBe('38 lb on the hook.');
    // 21 ft of 1-1/4 in schedule 40 steel at 2.27 lb/ft (ASME B36.10).
    expect(Number.parseFloat(standing!)).toBeGreaterThan(38 + 45);
  });
  test('a pump of which nobody said the weight takes a hoist', () => {
    const pump = { setting: '140 ft', curve: { kind: 'generic', flow: '10 gpm' } };
    expect(one(rockWell({ pump }), 'lower').onTheHook).toEqual(['Nobody said what the pump weighs: take a hoist.']);
  });
});

test('a sentence that is hard to read would be found', () => {
  expect(
    gradeOf([
      'Installation necessitates verification of electrical insulation resistance prior to submersible operation.',
    ]),
  ).toBeGreaterThan(14);
  expect(gradeOf(['Let the pump down by the pipe. Hold it with the clamp.'])).toBeLessThan(2);
});

test('what is cut, drilled and marked is told to the inch or the centimetre', () => {
  const heron = planOf(sample('heron-flats'));
  expect(one(heron, 'hole', 'new', 'metric').does[0]).toMatch(/^Measure 1\.8 m down/);
  expect(one(heron, 'layOut', 'new', 'metric').does.join(' ')).toContain('cut 21.81 m');
});

test('a valve that the plan has upside down is not told as right', () => {
  const down = rockWell({ string: { checkValves: ['0 ft'], arrow: 'down' } });
  expect(one(down, 'lowValve').does.join(' ')).toContain('turn it to point up');
});

test('of what nobody knows one hears just that', () => {
  const bare = OTHERS.at(-1)![1];
  expect(one(bare, 'measure').does.join(' ')).toContain('Nobody said where the water stands');
  expect(one(bare, 'readings').does.join(' ')).toContain('Nobody knows how far the water falls');
  expect(one(bare, 'line').does.join(' ')).toContain('Nobody said how long the way to the house is');
});

test('a flowing well and one in a pit are told to stop, and by whom they are seen to', () => {
  for (const why of ['flowing', 'inPit'] as const)
    expect(sayStop({ kind: 'stop', why }, work).join(' ')).toMatch(/no steps are told\. .*licensed contractor/);
});
