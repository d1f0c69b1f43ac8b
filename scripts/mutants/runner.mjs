/**
 * Runs the unit tests of one part against one mutant after the other, in one process. The tests are read as one file and
 * that file is run anew for every mutant, so that limits (constants of a file) are tried like everything else and
 * nothing that one mutant left behind reaches the next. Vitest would start a thread for each: ten times the time.
 *
 * `expect` is vitest's own; `test` and `describe` are the few of its forms that the unit tests of the model use.
 */
import { createRequire } from 'node:module';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { commonTokens, declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { build } from 'vite';
import { expect } from 'vitest';
import { collector } from './collector.mjs';

/** Takes as long as all the others together: every case with every fix that it has. */
const TOO_LONG = /never changes the well, the water or the site$/;

class PartRunner {
  static inject = [commonTokens.options];

  constructor(options) {
    this.part = options.part;
    /** How often each test noticed a mutant of a file. */
    this.noticed = new Map();
    this.state = globalThis[INSTRUMENTER_CONSTANTS.NAMESPACE] = {};
  }

  capabilities() {
    return { reloadEnvironment: true };
  }

  async init() {
    const file = await bundle(this.part);
    const text = readFileSync(file, 'utf8');
    const script = new vm.Script(`(function (require, exports, module) {${text}\n})`, { filename: file });
    this.evaluate = script.runInThisContext();
    this.require = createRequire(file);
  }

  async dryRun() {
    Object.assign(this.state, {
      activeMutant: undefined,
      hitCount: undefined,
      mutantCoverage: { static: {}, perTest: {} },
    });
    const result = await this.run(this.collect(), { all: true });
    return { ...result, mutantCoverage: this.state.mutantCoverage };
  }

  async mutantRun({ activeMutant, testFilter, hitLimit, mutantActivation }) {
    const atStart = mutantActivation === 'static';
    Object.assign(this.state, { activeMutant: atStart ? activeMutant.id : undefined, hitCount: 0, hitLimit });
    let tests;
    try {
      tests = this.collect();
    } catch (error) {
      return toMutantRunResult(failedAtStart(testFilter, error));
    }
    this.state.activeMutant = activeMutant.id;
    const wanted = testFilter && new Set(testFilter);
    const asked = wanted ? tests.filter(({ id }) => wanted.has(id)) : tests;
    const result = await this.run(this.likeliestFirst(asked, activeMutant.fileName), { all: false });
    const last = result.tests.at(-1);
    if (last?.status === TestStatus.Failed) this.remember(activeMutant.fileName, last.id);
    return toMutantRunResult(determineHitLimitReached(this.state.hitCount, hitLimit) ?? result);
  }

  /** What noticed many mutants of a file is likely to notice the next: the sooner one test fails, the sooner it is done. */
  likeliestFirst(tests, file) {
    const times = this.noticed.get(file) ?? new Map();
    return [...tests].sort((one, other) => (times.get(other.id) ?? 0) - (times.get(one.id) ?? 0));
  }

  remember(file, id) {
    const times = this.noticed.get(file) ?? new Map();
    this.noticed.set(file, times.set(id, (times.get(id) ?? 0) + 1));
  }

  /** The tests, as the file of all of them lists them when it is run. */
  collect() {
    this.state.currentTestId = undefined;
    const { api, tests } = collector(expect);
    const module = { exports: {} };
    this.evaluate((name) => (name === 'vitest' ? api : this.require(name)), module.exports, module);
    return tests.filter(({ id }) => !TOO_LONG.test(id));
  }

  /** One after the other, up to the first that fails. */
  async run(tests, { all }) {
    const results = [];
    for (const { id, run } of tests) {
      this.state.currentTestId = id;
      const begun = performance.now();
      let failure = null;
      try {
        await run();
      } catch (error) {
        failure = String(error?.message ?? error);
      }
      this.state.currentTestId = undefined;
      const result = { id, name: id, timeSpentMs: performance.now() - begun };
      results.push(
        failure === null
          ? { ...result, status: TestStatus.Success }
          : { ...result, status: TestStatus.Failed, failureMessage: failure },
      );
      if (failure !== null && !all) break;
    }
    return { status: DryRunStatus.Complete, tests: results };
  }
}

/** A mutant that the files do not even start with is noticed by every test. */
function failedAtStart(testFilter, error) {
  const id = testFilter?.[0] ?? 'reading the files';
  const failureMessage = String(error?.message ?? error);
  const failed = { id, name: id, timeSpentMs: 0, status: TestStatus.Failed, failureMessage };
  return { status: DryRunStatus.Complete, tests: [failed] };
}

/** A test that reads a file beside it still does, read from the one file of all. */
const ownAddress = {
  name: 'own-address',
  transform: (text, id) =>
    id.includes('node_modules') || !text.includes('import.meta.url')
      ? null
      : { code: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)), map: null },
};

/** All tests of the part and all that they import, as one file beside them. */
export async function bundle({ tests, own }) {
  const root = process.cwd();
  const folder = `${root}/reports/mutants/part`;
  const file = `${folder}/built/part.cjs`;
  // A process that took over from one that ran without end finds it made.
  if (existsSync(file)) return file;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/entry.ts`, tests.map((test) => `import '../../../${test}';\n`).join(''));
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    publicDir: false,
    plugins: [ownAddress],
    resolve: {
      alias: [
        { find: /^fast-check$/, replacement: `${root}/tests/mutants/fewRuns.ts` },
        { find: 'own-family', replacement: `${root}/${own ?? 'tests/mutants/noFamily.ts'}` },
      ],
    },
    ssr: { noExternal: true, external: ['vitest', '@resvg/resvg-js', 'epanet-js', 'fontkit', 'pngjs', 'pixelmatch'] },
    build: {
      ssr: `${folder}/entry.ts`,
      outDir: `${folder}/built`,
      minify: false,
      rolldownOptions: {
        // The package says that only some of its files do anything when read; tests do.
        treeshake: false,
        output: { format: 'cjs', entryFileNames: 'part.cjs', codeSplitting: false },
      },
    },
  });
  return file;
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'part', PartRunner)];
