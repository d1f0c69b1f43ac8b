/**
 * Runs the unit tests of one part against one mutant after the other, in one process. The tests are read as one file and
 * that file is run anew for every mutant, so that limits (constants of a file) are tried like everything else and
 * nothing that one mutant left behind reaches the next. Vitest would start a thread for each: ten times the time.
 *
 * `expect` is vitest's own; `test` and `describe` are the few of its forms that the unit tests of the model use.
 */
import { readFileSync } from 'node:fs';
import { INSTRUMENTER_CONSTANTS } from '@stryker-mutator/api/core';
import { commonTokens, declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import {
  determineHitLimitReached,
  DryRunStatus,
  TestStatus,
  toMutantRunResult,
} from '@stryker-mutator/api/test-runner';
import { expect } from 'vitest';
import { bundle, evaluated, testsOf } from './bundle.mjs';

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
    this.file = await bundle(this.part);
    this.evaluate = evaluated(readFileSync(this.file, 'utf8'), this.file);
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
    return testsOf(this.evaluate, this.file, expect);
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

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'part', PartRunner)];
