/** A well in which every rule that can be judged holds, and ways to break one thing of it at a time. */
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { candidatesFor } from '../../../src/model/fixes/candidatesFor.ts';
import { givenBy, judge } from '../../../src/model/rules/index.ts';
import type { Judgement } from '../../../src/model/rules/index.ts';
import type { Fix } from '../../../src/model/rules/rule.ts';
import type { Change, Finding, Solved, Values, Verdict } from '../../../src/model/solution.ts';
import { solveFacts } from '../../../src/model/solve.ts';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFinding, sayFix } from '../../../src/words/sayJudgement.ts';
import type { SaidFinding } from '../../../src/words/sayJudgement.ts';

/** Paths and what to write there; undefined takes a field out. */
export type Changes = Readonly<Record<string, unknown>>;

const SOUND = {
  format: 'wellcut-plan/1',
  title: 'Quiet Hollow',
  units: 'us',
  site: {
    frostDepth: '42 in',
    floodHeight: '-20 ft',
    septicTank: { distance: '80 ft' },
    drainField: { distance: '150 ft' },
    building: { distance: '40 ft' },
  },
  well: {
    depth: '200 ft',
    casing: { material: 'PVC', size: '5 in', bottom: '60 ft', height: '12 in' },
    intake: { kind: 'open hole', diameter: '5 in' },
    inflows: [
      { depth: '130 ft', share: '30 %' },
      { depth: '175 ft', share: '70 %' },
    ],
    yield: '15 gpm',
    yieldFrom: 'pump',
    inPit: false,
  },
  water: {
    staticLevel: '40 ft',
    pumping: { kind: 'level', level: '82 ft', flow: '10 gpm' },
    pH: '7.5',
    conductivity: '300 uS/cm',
  },
  house: {
    demand: '10 gpm',
    tank: '44 gal',
    reliefValve: true,
    distance: '60 ft',
    rise: '5 ft',
    line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '60 in', protrusion: '0.5 in' },
  pump: {
    setting: '140 ft',
    power: '1 hp',
    curve: { kind: 'generic', flow: '10 gpm' },
    diameter: '3.9 in',
    shroudDiameter: '4 in',
    shroudWall: '0.1 in',
    lowLevelCutOff: true,
  },
  dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
  string: { guards: '40 ft', splices: ['4 ft'] },
  wire: { size: '10 AWG' },
};

export const soundPlan: Plan = planOf(SOUND);

export function planOf(json: unknown): Plan {
  const read = readPlan(json);
  if (!read.ok) throw new Error(read.problems.map(({ path, problem }) => `${path}: ${problem}`).join('\n'));
  return read.plan;
}

/** The sound plan with changes, read again so that a change that no plan may hold is told. */
export function changed(changes: Changes, plan: Plan = soundPlan): Plan {
  const next = Object.entries(changes).reduce((made, [path, value]) => withValue(made, path, value), plan);
  return planOf(JSON.parse(JSON.stringify(next)));
}

export function solvedPlan(plan: Plan, values: Partial<Values> = {}): Solved {
  const solved = solveFacts(plan, readFacts(plan));
  return { ...solved, values: { ...solved.values, ...values } };
}

/** What the rules say of the sound plan with changes; figures may be set outright where a test is about the rule alone. */
export function judged(changes: Changes, values: Partial<Values> = {}): Judgement {
  return judge(solvedPlan(changed(changes), values));
}

export function verdictOf(rule: string, changes: Changes, values: Partial<Values> = {}): Verdict | undefined {
  return judged(changes, values).verdicts[rule];
}

export function findingOf(rule: string, changes: Changes, values: Partial<Values> = {}): Finding {
  const finding = judged(changes, values).findings.find((each) => each.rule === rule);
  if (!finding) throw new Error(`${rule} finds nothing wrong`);
  return finding;
}

/** The same finding in English, in the plan's units. */
export function saidOf(rule: string, changes: Changes, values: Partial<Values> = {}): SaidFinding {
  return sayFinding(findingOf(rule, changes, values), en, show(readFacts(changed(changes)).facts.units));
}

/** What the rule offers first against what it finds wrong: its changes, null where there is no button, and its words. */
export function fixOf(
  rule: string,
  changes: Changes,
  values: Partial<Values> = {},
): { readonly changes: readonly Change[] | null; readonly words: string } {
  const solved = solvedPlan(changed(changes), values);
  const [first] = fixesFor(findingOf(rule, changes, values), solved);
  if (!first) throw new Error(`${rule} offers nothing`);
  return { changes: first.changes, words: sayFix(rule, first, en, show(solved.facts.units)) };
}

export function fixesFor(finding: Finding, solved: Solved): readonly Fix[] {
  return candidatesFor(finding, givenBy(solved));
}
