/** What may be mutated in one go, by name: the files changed and the tests that must notice. */
import { existsSync, readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const testsIn = (folder, except = []) =>
  readdirSync(`${root}${folder}`)
    .filter((name) => name.endsWith('.test.ts') && !except.includes(name))
    .map((name) => `${folder}/${name}`);

const FOLDERS = {
  formulas: 'src/model/formulas',
  rules: 'src/model/rules',
  fixes: 'src/model/fixes/rules',
  draw: 'src/draw',
};

/** Published figures. The three left out ask another program or read the page of checks, which takes seconds. */
const published = () => testsIn('tests/reference', ['epanet.test.ts', 'networkSolver.test.ts', 'table.test.ts']);

/**
 * Of the tests of the rules those of the file's own name, those of all rules together, and what else speaks of it: a
 * mutant that lives meets every one of them.
 */
const ALSO = {
  adapterCover: ['pitless', 'adapterRoom'],
  bothEnds: ['worstEnd', 'wellhead', 'blownYield'],
  buriedLine: ['pipe'],
  addCutOff: ['drawnDown', 'cutOff'],
  checkValve: ['cutOff'],
  cutOff: ['pumpDepth'],
  delivery: ['openTank'],
  fix: ['metricFixes', 'pipe', 'materials'],
  freePlaces: ['cable'],
  joints: ['pipe', 'materials'],
  materials: ['metricFixes'],
  metalPairs: ['materials'],
  openFacts: ['blownYield', 'wellhead'],
  otherPipe: ['pipe', 'metricFixes', 'materials'],
  pipe: ['metricFixes', 'lifting'],
  pipeNeeds: ['pipe'],
  pipeRating: ['pipe'],
  pumpDepth: ['cutOff', 'openRock', 'screen'],
  ranges: ['openBand', 'clearance', 'openRock'],
  shortage: ['openTank', 'blownYield', 'yieldTest'],
  tank: ['openTank', 'tankCycle'],
  tankCycle: ['openTank'],
  together: ['atWork'],
  turnsOnCurve: ['tankCycle', 'openTank'],
  yield: ['blownYield', 'yieldTest', 'cutOff'],
};
const TOGETHER = ['fixes', 'bands', 'drawnDown', 'pumpedAt', 'standing'];

/** Take minutes for every mutant that they let live: laws over every choice of every plan, and the words of every case. */
const TOO_LONG = ['rules', 'restsOn', 'unknownFacts', 'metricWords', 'worstEnd', 'knowing', 'said'];

function rulesTests(file) {
  if (file === '')
    return testsIn(
      'tests/model/rules',
      TOO_LONG.map((name) => `${name}.test.ts`),
    );
  const wanted = new Set([file, ...(ALSO[file] ?? []), ...TOGETHER].map((name) => `tests/model/rules/${name}.test.ts`));
  return testsIn('tests/model/rules').filter((test) => wanted.has(test));
}

/** First the tests that have the name of the file: the sooner one fails, the sooner the next mutant is tried. */
const namedFirst = (tests, name) => {
  const isNamed = (test) => test.endsWith(`/${name}.test.ts`);
  return [...tests.filter(isNamed), ...tests.filter((test) => !isNamed(test))];
};

const TESTS = {
  formulas: (file) => namedFirst([...testsIn('tests/model/formulas'), ...published()], file),
  rules: (file) => [
    'tests/mutants/cases.ts',
    ...namedFirst(rulesTests(file), file),
    'tests/wells/judged.test.ts',
    'tests/words/judgingPage.test.ts',
  ],
  // Under the names of the rules that they mend.
  fixes: (file) => TESTS.rules(file),
  draw: () =>
    readdirSync(`${root}tests/draw`, { recursive: true })
      .filter((name) => name.endsWith('.test.ts'))
      .map((name) => `tests/draw/${name.replaceAll('\\', '/')}`),
};

/** "rules", "rules/tank", "rules/pump*", "draw/parts": null for a name that stands for nothing. */
export function partOf(name) {
  const [family, ...path] = name.split('/');
  const folder = FOLDERS[family];
  if (folder === undefined) return null;
  const at = [folder, ...path].join('/');
  const file = `${at}.ts`;
  const isFile = path.length > 0 && existsSync(`${root}${file}`);
  const isPattern = name.includes('*');
  if (!isFile && !isPattern && !existsSync(`${root}${at}`)) return null;
  return {
    name,
    family,
    mutate: isFile || isPattern ? [file] : [`${at}/**/*.ts`],
    files: isFile ? [file] : isPattern ? [] : filesOf(family).filter((each) => each.startsWith(`${at}/`)),
    // The file whose own cases are tried alone.
    own: isFile ? file : null,
    tests: TESTS[family](path.at(-1) ?? ''),
  };
}

/** Every file of a family, so that the page can say which were never tried. */
export function filesOf(family) {
  const folder = FOLDERS[family];
  return readdirSync(`${root}${folder}`, { recursive: true })
    .map((name) => name.replaceAll('\\', '/'))
    .filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts'))
    .map((name) => `${folder}/${name}`)
    .sort();
}

export const FAMILIES = Object.keys(FOLDERS);
