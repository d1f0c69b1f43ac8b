/** Each step of the work is drawn where the thing that it is about is to be seen. */
import { describe, expect, test } from 'vitest';
import { draw } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { atStep } from '../../src/model/work/atStep.ts';
import { orderOfWork } from '../../src/model/work/orderOfWork.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';

const CASES = SAMPLES.flatMap((name) => (['new', 'replace'] as const).map((kind) => ({ name, kind })));

describe.each(CASES)('$name, $kind', ({ name, kind }) => {
  const solution = solve(planOf(sample(name)));
  const work = orderOfWork(solution, kind);
  if (work.kind === 'stop') throw new Error(`stopped: ${work.why}`);

  test.each(work.steps.map((step, i) => ({ key: step.key, step, i })))('$key', ({ step, i }) => {
    const { pieces, sought } = atStep(solution, work, i);
    const meant = [...Object.keys(pieces).filter((key) => pieces[key] === 'lit'), ...(sought === null ? [] : [sought])];
    if (meant.length === 0) return;
    const { shapes } = draw(solution, {
      sheet: step.view,
      // As small as on a phone.
      width: 390,
      height: 360,
      marks: false,
      pieces,
      ...(sought === null ? {} : { lit: sought }),
    });
    expect(shapes.filter(({ key }) => key.startsWith('lit/'))).not.toEqual([]);
  });
});
