/**
 * Readers of metric units read metric units, and readers of feet read feet: in every sentence on page and paper and from
 * the command line, in what a fix writes, in every drawing. What a standard itself is called by stands as it is called.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sayReport } from '../../src/cli/checkCommand.ts';
import { draw, type View } from '../../src/draw/index.ts';
import { explainAll } from '../../src/model/explain/explain.ts';
import { fixesOf } from '../../src/model/fixes/fixesOf.ts';
import { readPlan, sayProblem, solve, withValue, type Plan, type Solution } from '../../src/model/index.ts';
import { ADVICE_NUMBERS } from '../../src/model/rules/advice.ts';
import { fields } from '../../src/model/plan/fields.ts';
import { candidatesFor } from '../../src/model/fixes/candidatesFor.ts';
import { givenBy } from '../../src/model/rules/index.ts';
import { lackingIn } from '../../src/model/rules/lacking.ts';
import { sheetsOf } from '../../src/model/sheets/index.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { sayAdvice, sayFinding, sayFix, sayHolding, sayLacking, sayTurning } from '../../src/words/sayJudgement.ts';
import { helpOf } from '../../src/words/en/plan/help.ts';
import { flat, SHEET } from '../draw/pictures.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { inUnits } from '../plans/inUnits.ts';
import { sample, SAMPLES } from '../model/plan/sample.ts';
import { BAD } from '../wells/bad.ts';
import { SOUND } from '../wells/sound.ts';
import { pageNow } from './judgingNow.ts';

type Units = 'us' | 'metric';

const CUSTOMARY =
  /\d[ -]?(?:in|ft|ft\/s|ft²|ft³|in²|psi|gal|gpm|lb|lbs|lbf|hp|oz|°F|degF)(?![A-Za-z])|\b(?:feet|inch|inches|gallons?|pounds?|psi|gpm|degF|ft|lbf?)\b/;
const METRIC =
  /\d[ -]?(?:m|cm|mm|m\/s|m²|m³|kPa|MPa|bar|L|L\/min|kg|kN|N|kW|°C|degC)(?![A-Za-z./·²])|\b(?:metres?|centimetres?|litres?|kilograms?|kPa|bar|degC|cm|mm)\b(?!\/)/;

/** Sizes that pipe, casing, thread and wire are called by everywhere; wire with its copper beside it. */
const CALLED: Readonly<Record<Units, RegExp>> = {
  metric:
    /\b(?:(?:\d+-)?\d+\/\d+|\d+(?:\.\d+)?) in\b(?! (?:of|deep|above|below|too|short|wide))|\d+(?:\/0)? AWG \(\d+(?:\.\d)? mm²\)/g,
  // The manuals of frost and the conductor tables count in degrees Celsius whoever reads them.
  // Metric pipe, casing and wire keep their names too.
  us: /\b(?:60|75|30|20) °C\b|\b\d+(?:\.\d+)?\smm²|\b\d+(?:\.\d+)?\smm(?=\s(?:PE|PVC|steel|galvanized|stainless|pipe|wall))|^\d+(?:\.\d+)?\smm$/g,
};

function foreign(text: string, units: Units): boolean {
  const rest = text.replace(CALLED[units], '');
  return (units === 'metric' ? CUSTOMARY : METRIC).test(rest) || (units === 'metric' && /\bAWG\b/.test(rest));
}

function saidOf(solution: Solution): string[] {
  const { units } = solution.facts;
  const words = show(units);
  const offered = fixesOf(solution.plan, solution);
  const given = givenBy(solution);
  return [
    ...sayReport(solution).split('\n'),
    ...[...solution.findings, ...solution.atWork].flatMap((finding) => {
      const { title, amount, message, why, source, caution } = sayFinding(finding, en, words);
      return [
        title,
        amount,
        message,
        why,
        source,
        caution,
        ...finding.together.map((each) => sayTurning(each, en, words)),
      ];
    }),
    ...solution.holding.flatMap((held) => Object.values(sayHolding(held, en, words))),
    ...solution.findings.flatMap((finding) =>
      candidatesFor(finding, given).flatMap((fix) => [
        sayFix(finding.rule, fix, en, words),
        // The plan's own name of a wire.
        ...(fix.changes ?? []).filter(({ path }) => path !== 'wire.size').map(({ to }) => String(to)),
      ]),
    ),
    ...offered.flatMap(({ button, words: instead }, i) =>
      [button, instead].flatMap((fix) => (fix === null ? [] : [sayFix(solution.findings[i]!.rule, fix, en, words)])),
    ),
    ...lackingIn(solution).flatMap((lacking) => Object.values(sayLacking(lacking, en, words))),
  ];
}

/** An account tells its numbers, units and reasons each by itself. */
function accountsOf(solution: Solution): string[] {
  const texts = (value: unknown): string[] =>
    typeof value === 'string'
      ? [value]
      : typeof value === 'object' && value !== null
        ? Object.values(value).flatMap(texts)
        : [];
  return [
    ...explainAll(solution),
    ...sheetsOf(solution).map((sheet) => ({
      ...sheet,
      figures: sheet.figures.map(({ explanation, ...figure }) => ({ ...figure, explanation: explanation() })),
    })),
  ].flatMap(texts);
}

const VIEWS: readonly Partial<View>[] = [
  { caption: true },
  { sheet: 'section', width: 390, height: 800 },
  { sheet: 'pump', width: 400, height: 600 },
  { sheet: { at: 2 }, width: 700, height: 500, caption: true },
];

function drawnOf(solution: Solution): string[] {
  const nameless = solve(withValue(solution.plan, 'title', ''));
  return VIEWS.flatMap((view) => {
    const scene = draw(nameless, { ...SHEET, ...view, units: solution.facts.units });
    const shown = flat(scene.shapes).flatMap(({ shape: { text = '', attrs } }) => [
      text,
      String(attrs['aria-label'] ?? ''),
    ]);
    return [scene.title, scene.describe(), ...shown];
  });
}

function solvedIn(plan: unknown, units: Units): Solution {
  const read = readPlan(inUnits(plan as Plan, units));
  if (!read.ok) throw new Error(read.problems.map(sayProblem).join(' '));
  return solve(read.plan);
}

const WELLS: readonly (readonly [string, unknown])[] = [
  ...SAMPLES.map((name) => [name, sample(name)] as const),
  ...SOUND.map(({ name, plan }) => [name, plan] as const),
  ...BAD.map(({ name, fault, plan }) => [`${name}: ${fault}`, plan] as const),
];
const ORDINARY = WELLS.filter((_, i) => i < SAMPLES.length || i % 4 === 0);

describe.each(['us', 'metric'] as const)('in %s', (units) => {
  const faults = (texts: readonly string[]) => [...new Set(texts.filter((text) => foreign(text, units)))];

  test.each(WELLS)('%s is judged in the reader’s units', (_, plan) => {
    expect(faults(saidOf(solvedIn(plan, units)))).toEqual([]);
  });

  test.each(ORDINARY)('%s is drawn in the reader’s units', (_, plan) => {
    expect(faults(drawnOf(solvedIn(plan, units)))).toEqual([]);
  });

  test.each(ORDINARY)('%s is accounted for in the reader’s units', (_, plan) => {
    const solution = solvedIn(plan, units);
    expect(faults(accountsOf(solution)).filter((text) => !ofManuals(text))).toEqual([]);
  });

  // A report also tells how far each may go, and solves the well some two hundred times for it.
  test('so is whatever anyone types', { timeout: 300_000 }, () => {
    fc.assert(
      fc.property(anyPlan, (plan) => {
        expect(faults(saidOf(solvedIn(plan, units)))).toEqual([]);
      }),
      { seed: 47, numRuns: 150 },
    );
  });

  test('advice, and how the rules judge', () => {
    const { opening, sections } = pageNow(units);
    expect(
      faults([
        ...ADVICE_NUMBERS.flatMap((rule) => Object.values(sayAdvice({ rule }, en, show(units)))),
        ...opening,
        ...sections.flatMap(({ paragraphs, items, rules }) => [
          ...paragraphs,
          ...items.flatMap(({ name, text }) => [name, text]),
          ...rules.flatMap(({ title, asks, why, source }) => [title, asks, why, source]),
        ]),
      ]),
    ).toEqual([]);
  });

  test('the help of every field of the record', () => {
    expect(faults(fields.filter(({ path }) => path !== 'units').map((field) => helpOf(field, units)))).toEqual([]);
  });

  test('what a field takes at the most, where it is refused', () => {
    const unit = units === 'us' ? 'ft' : 'm';
    const plan = {
      ...inUnits(sample(), units),
      pump: { setting: `90000 ${unit}` },
      site: { frostDepth: `-1 ${unit}` },
    };
    const read = readPlan(plan);
    if (read.ok) throw new Error('this should not read');
    expect(faults(read.problems.map(sayProblem))).toEqual([]);
  });
});

/** Formulas that hold in one kind of unit alone, whoever reads them: their own symbols and constants. */
function ofManuals(text: string): boolean {
  return /W\/\(m·K\)|J\/m³|K·d|kelvin-days|µS\/cm/.test(text);
}

test('a wrong unit would be found', () => {
  expect(foreign('about 15 gpm', 'metric')).toBe(true);
  expect(foreign('150 and 300 lb', 'metric')).toBe(true);
  expect(foreign('12 ft of digging', 'metric')).toBe(true);
  expect(foreign('12 in of cover', 'metric')).toBe(true);
  expect(foreign('Use 10 AWG', 'metric')).toBe(true);
  expect(foreign('a pressure of 13.8 bar', 'us')).toBe(true);
  expect(foreign('1-1/4 in PE pipe', 'metric')).toBe(false);
});
