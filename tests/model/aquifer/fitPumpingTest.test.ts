import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPumpingTest, type FittedTest, type PumpingTest } from '../../../src/model/aquifer/index.ts';
import { boreStorageDrawdown } from '../../../src/model/formulas/boreStorage.ts';
import { residualDrawdown } from '../../../src/model/formulas/recovery.ts';
import { theisArgument, theisDrawdown } from '../../../src/model/formulas/theis.ts';
import { between, SEED } from '../laws.ts';
import { noiseFrom } from './noise.ts';
import { publishedAnswer, publishedTest } from './published.ts';

const DAY = 86400;

function fitted(pumpingTest: PumpingTest): FittedTest {
  const fit = fitPumpingTest(pumpingTest);
  if ('reason' in fit) throw new Error(fit.reason);
  return fit;
}

const apart = (computed: number, published: number) => Math.abs(computed / published - 1);

describe('Oude Korendijk, piezometer at 30 m (Kruseman & de Ridder 1994, Table 3.2)', () => {
  const fit = fitted(publishedTest('oude_korendijk_30m'));
  test('least squares on all 34 readings gives 480.47 m²/d, 1.1251e-4 and 0.0317 m', () => {
    const answer = publishedAnswer('oude_korendijk_30m', 'least_squares_all');
    expect(apart(fit.theis.transmissivity.value * DAY, answer.T_m2_per_d!)).toBeLessThan(1e-4);
    expect(apart(fit.theis.storativity.value, answer.S!)).toBeLessThan(1e-3);
    expect(apart(fit.theis.rootMeanSquare, answer.rms_m!)).toBeLessThan(1e-3);
  });
  test('the straight line through 1 to 10 min gives 385 m²/d and 1.7e-4', () => {
    const { straightLine } = fitted({ ...publishedTest('oude_korendijk_30m'), lineThrough: { from: 60, to: 600 } });
    expect(straightLine!.transmissivity.value * DAY).toBeCloseTo(385, 0);
    expect(straightLine!.storativity).toBeCloseTo(1.7e-4, 5);
    expect(straightLine!.used).toBe(12);
  });
  test('the readings lean one way, as the early part and the whole disagree', () => {
    expect(fit.doubts.join(' ')).toContain('not what the formula takes it for');
  });
});

test('Gridley well (Fetter 2001, Table 5.1): 1.425e-3 m²/s, 2.12e-5 and 0.028 m', () => {
  const fit = fitted(publishedTest('gridley'));
  const answer = publishedAnswer('gridley', 'least_squares_all');
  expect(apart(fit.theis.transmissivity.value, answer.T_m2_per_s!)).toBeLessThan(0.001);
  expect(apart(fit.theis.storativity.value, answer.S!)).toBeLessThan(0.003);
  expect(fit.theis.rootMeanSquare).toBeCloseTo(answer.rms_m!, 3);
});

describe('recovery after 240 min at 2,500 m³/d (Todd 1980; Batu 1998)', () => {
  const fit = fitted(publishedTest('recovery'));
  test('the line gives the slope of 0.4 m and the 1,140 m²/d that were read by eye, within 5 %', () => {
    const answer = publishedAnswer('recovery', 'recovery_line');
    expect(apart(fit.recoveryLine!.slopePerCycle, answer.slope_m_per_cycle!)).toBeLessThan(0.05);
    expect(apart(fit.recoveryLine!.transmissivity.value * DAY, answer.T_m2_per_d!)).toBeLessThan(0.05);
  });
  test('Theis gives 1.3e-2 m²/s within its last digit, and the readings within 0.03 m', () => {
    expect(fit.theis.transmissivity.value).toBeCloseTo(publishedAnswer('recovery', 'theis').T_m2_per_s!, 3);
    for (const { difference } of fit.theis.residuals) expect(Math.abs(difference)).toBeLessThan(0.03);
  });
});

const TIMES = [1, 2, 3, 5, 7, 10, 15, 20, 30, 45, 60, 90, 120, 180, 240, 360].map((minutes) => minutes * 60);

test('law: readings that follow Theis, recovery and all, give the aquifer back from anywhere', () => {
  fc.assert(
    fc.property(between(-5.5, -2), between(-5.5, -1), between(2, 100), (logT, logS, radius) => {
      const aquifer = { flow: 2e-3, transmissivity: 10 ** logT, storativity: 10 ** logS, radius };
      fc.pre(theisArgument({ ...aquifer, time: 3600 }) < 1);
      const readings = TIMES.map((time) => ({ time, drawdown: theisDrawdown({ ...aquifer, time }) }));
      const pumpedFor = 21600;
      const recovery = TIMES.map((sinceStop) => ({
        sinceStop,
        drawdown: residualDrawdown({ ...aquifer, pumped: pumpedFor, sinceStop }),
      }));
      const { theis } = fitted({ flow: 2e-3, measuredIn: 'observation well', radius, readings, pumpedFor, recovery });
      expect(apart(theis.transmissivity.value, aquifer.transmissivity)).toBeLessThan(1e-6);
      expect(apart(theis.storativity.value, aquifer.storativity)).toBeLessThan(1e-6);
    }),
    SEED,
  );
});

test('the intervals hold the truth about 95 times in a hundred when readings scatter by 1 cm', () => {
  const aquifer = { flow: 2e-3, transmissivity: 1e-3, storativity: 2e-4, radius: 20 };
  const noise = noiseFrom(20_240_601);
  const tries = 1000;
  let [heldT, heldS] = [0, 0];
  for (let i = 0; i < tries; i++) {
    const readings = TIMES.map((time) => ({ time, drawdown: theisDrawdown({ ...aquifer, time }) + 0.01 * noise() }));
    const { transmissivity, storativity } = fitted({ ...aquifer, measuredIn: 'observation well', readings }).theis;
    if (transmissivity.low < 1e-3 && 1e-3 < transmissivity.high) heldT++;
    if (storativity.low < 2e-4 && 2e-4 < storativity.high) heldS++;
  }
  // Three standard deviations of a thousand draws at 0.95 are 0.021.
  expect(Math.abs(heldT / tries - 0.95)).toBeLessThan(0.021);
  expect(Math.abs(heldS / tries - 0.95)).toBeLessThan(0.021);
});

test('more scatter, wider intervals', () => {
  const aquifer = { flow: 2e-3, transmissivity: 1e-3, storativity: 2e-4, radius: 20 };
  const width = (scatter: number) => {
    const noise = noiseFrom(7);
    const readings = TIMES.map((time) => ({ time, drawdown: theisDrawdown({ ...aquifer, time }) + scatter * noise() }));
    const { low, high } = fitted({ ...aquifer, measuredIn: 'observation well', readings }).theis.transmissivity;
    return high / low;
  };
  expect(width(0.02)).toBeGreaterThan(width(0.005));
});

test('in the pumped well readings that tell of the bore are left out, and transmissivity comes out within a tenth', () => {
  const bore = { flow: 6e-4, transmissivity: 1e-4, storativity: 1e-4, wellRadius: 0.08, casingRadius: 0.08 };
  const readings = TIMES.map((time) => ({ time, drawdown: boreStorageDrawdown({ ...bore, time }) }));
  const { flow } = bore;
  const told = fitted({ flow, measuredIn: 'pumped well', radius: 0.08, casingRadius: 0.08, readings });
  const untold = fitted({ flow, measuredIn: 'pumped well', radius: 0.08, readings });
  expect(apart(told.theis.transmissivity.value, 1e-4)).toBeLessThan(0.1);
  expect(apart(untold.theis.transmissivity.value, 1e-4)).toBeGreaterThan(0.3);
  const leftOut = told.theis.residuals.filter((residual) => residual.leftOut);
  // 25 rc²/T is 1,600 s: the first eight readings, to 20 min.
  expect(leftOut.map(({ time }) => time)).toEqual(TIMES.slice(0, 8));
});

describe('what cannot be fitted is refused with words', () => {
  const good: PumpingTest = publishedTest('gridley');
  const reason = (change: Partial<PumpingTest>) => {
    const answer = fitPumpingTest({ ...good, ...change });
    return 'reason' in answer ? answer.reason : 'fitted';
  };
  test.each<[string, Partial<PumpingTest>, string]>([
    ['no flow', { flow: 0 }, 'flow'],
    ['no distance', { radius: NaN }, 'distance'],
    ['two readings', { readings: good.readings.slice(0, 2) }, 'too few'],
    ['a reading at the start', { readings: [{ time: 0, drawdown: 0 }, ...good.readings] }, 'Reading 1'],
    [
      'a level that rises',
      { readings: good.readings.map(({ time, drawdown }) => ({ time, drawdown: 5 - drawdown })) },
      'does not grow',
    ],
    ['no drawdown at all', { readings: good.readings.map(({ time }) => ({ time, drawdown: 0 })) }, 'No reading'],
    ['recovery without the time pumped', { recovery: [{ sinceStop: 60, drawdown: 1 }] }, 'time that was pumped'],
    ['a drawdown after the stop', { pumpedFor: 600 }, 'later than the time'],
    [
      'a bore that counts for longer than the test',
      { measuredIn: 'pumped well', radius: 0.1, casingRadius: 50 },
      'measure longer',
    ],
  ])('%s', (_, change, words) => expect(reason(change)).toContain(words));
});

test('law: any readings are fitted with finite figures or refused with words', () => {
  const reading = fc.record({ time: between(1, 1e6), drawdown: between(-1, 50) });
  fc.assert(
    fc.property(
      fc.array(reading, { maxLength: 12 }),
      between(1e-6, 0.1),
      between(0.05, 300),
      (readings, flow, radius) => {
        const fit = fitPumpingTest({ flow, measuredIn: 'observation well', radius, readings });
        if ('reason' in fit) expect(fit.reason.length).toBeGreaterThan(10);
        else {
          const { transmissivity: t, storativity: s, rootMeanSquare, correlation } = fit.theis;
          for (const value of [t.value, s.value, rootMeanSquare, correlation])
            expect(Number.isFinite(value)).toBe(true);
        }
      },
    ),
    SEED,
  );
});
