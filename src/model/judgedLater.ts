/** A plan that is solved and not judged yet. */
import { judgeAsAsked, type Judgement } from './rules/index.ts';
import type { Solution, Solved } from './solution.ts';

/** The same as a solution, its judgement and its parts made when they are first asked for. Not to be spread. */
export class JudgedLater implements Solution {
  readonly plan: Solved['plan'];
  readonly facts: Solved['facts'];
  readonly assumed: Solved['assumed'];
  readonly unknown: Solved['unknown'];
  readonly notUsed: Solved['notUsed'];
  readonly values: Solved['values'];
  readonly levels: Solved['levels'];
  readonly bore: Solved['bore'];
  readonly cone: Solved['cone'];
  readonly curves: Solved['curves'];
  readonly lowest: Solved['lowest'];
  readonly #solved: Solved;
  #judgement: Judgement | null = null;

  constructor(solved: Solved) {
    this.plan = solved.plan;
    this.facts = solved.facts;
    this.assumed = solved.assumed;
    this.unknown = solved.unknown;
    this.notUsed = solved.notUsed;
    this.values = solved.values;
    this.levels = solved.levels;
    this.bore = solved.bore;
    this.cone = solved.cone;
    this.curves = solved.curves;
    this.lowest = solved.lowest;
    this.#solved = solved;
  }

  get parts(): Solved['parts'] {
    return this.#solved.parts;
  }

  get #judged(): Judgement {
    this.#judgement ??= judgeAsAsked(this.#solved);
    return this.#judgement;
  }

  get findings(): Judgement['findings'] {
    return this.#judged.findings;
  }

  get atWork(): Judgement['atWork'] {
    return this.#judged.atWork;
  }

  get holding(): Judgement['holding'] {
    return this.#judged.holding;
  }

  get verdicts(): Judgement['verdicts'] {
    return this.#judged.verdicts;
  }

  get notJudged(): Judgement['notJudged'] {
    return this.#judged.notJudged;
  }

  get bands(): Judgement['bands'] {
    return this.#judged.bands;
  }

  get advice(): Judgement['advice'] {
    return this.#judged.advice;
  }
}
