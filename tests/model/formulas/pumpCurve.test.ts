import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  efficiencyAt,
  genericCurve,
  genericDesignHead,
  operatingPoint,
  pointsCurve,
  pumpPointsFault,
} from '../../../src/model/formulas/pumpCurve.ts';
import { feet, gpm, horsepower, toFeet, toGpm } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

/** Falling points such as a maker prints: two to eight of them, the first at no flow or not. */
const makersPoints = fc
  .record({
    firstFlow: fc.oneof(fc.constant(0), between(1e-5, 5e-4)),
    lowest: between(0, 60),
    steps: fc.array(fc.record({ wider: between(2e-5, 5e-4), fall: between(0.01, 60) }), { minLength: 1, maxLength: 7 }),
  })
  .map(({ firstFlow, lowest, steps }) => {
    let [flow, head] = [firstFlow, lowest + steps.reduce((sum, { fall }) => sum + fall, 0)];
    const points = [{ flow, head }];
    for (const { wider, fall } of steps) {
      flow += wider;
      head = Math.max(head - fall, 0);
      points.push({ flow, head });
    }
    return points;
  })
  .filter((points) => pumpPointsFault(points) === null);

test('the curve runs through every point of the maker', () => {
  fc.assert(
    fc.property(makersPoints, (points) => {
      const curve = pointsCurve([...points].reverse());
      for (const { flow, head } of points) expect(curve.headAt(flow)).toBeCloseTo(head, 9);
    }),
    SEED,
  );
});

test('between two points the curve never leaves the heads of the two', () => {
  fc.assert(
    fc.property(makersPoints, fc.nat(), between(0, 1), (points, pick, share) => {
      const i = pick % (points.length - 1);
      const [left, right] = [points[i]!, points[i + 1]!];
      const head = pointsCurve(points).headAt(left.flow + share * (right.flow - left.flow));
      expect(head).toBeLessThanOrEqual(left.head + 1e-9);
      expect(head).toBeGreaterThanOrEqual(right.head - 1e-9);
    }),
    SEED,
  );
});

test('the curve falls from shut-off to run-out, where the head is gone', () => {
  fc.assert(
    fc.property(makersPoints, (points) => {
      const curve = pointsCurve(points);
      expect(curve.headAt(0)).toBeCloseTo(curve.shutOffHead, 9);
      expect(curve.headAt(curve.runOutFlow)).toBeCloseTo(0, 9);
      let before = curve.shutOffHead;
      for (let i = 1; i <= 50; i++) {
        const head = curve.headAt((i / 50) * curve.runOutFlow);
        expect(head).toBeLessThan(before + 1e-9);
        before = head;
      }
    }),
    SEED,
  );
});

test('points taken from a parabola give its heads back between them, and its shut-off head where it is not among them', () => {
  const parabola = genericCurve({ designFlow: gpm(10), designHead: feet(250) });
  const points = [4, 6, 8, 10, 12, 14, 16, 18].map((flow) => ({ flow: gpm(flow), head: parabola.headAt(gpm(flow)) }));
  const curve = pointsCurve(points);
  for (const flow of [5, 7, 9, 11, 13, 15, 17]) {
    expect(Math.abs(curve.headAt(gpm(flow)) / parabola.headAt(gpm(flow)) - 1)).toBeLessThan(0.002);
  }
  expect(Math.abs(curve.shutOffHead / parabola.shutOffHead - 1)).toBeLessThan(0.001);
});

test('points that are no pump curve are refused with the reason', () => {
  const [low, high] = [
    { flow: gpm(5), head: feet(200) },
    { flow: gpm(10), head: feet(150) },
  ];
  expect(pumpPointsFault([low, high])).toBeNull();
  expect(pumpPointsFault([low])).toBe('a curve needs two points or more');
  expect(pumpPointsFault([low, { ...high, head: feet(210) }])).toBe(
    'the head must fall from each point to the next larger flow',
  );
  expect(pumpPointsFault([low, { ...high, flow: low.flow }])).toBe('two points have the same flow');
  expect(pumpPointsFault([{ ...low, flow: NaN }, high])).toBe('a flow is negative or not a number');
  expect(() => pointsCurve([low])).toThrow('pointsCurve: a curve needs two points or more');
});

// From memory: the efficiencies of small multi-stage well pumps that the generic curve rests on.
test.each([
  [3, 0.4],
  [5, 0.4],
  [7.5, 0.45],
  [10, 0.5],
  [15, 0.55],
  [20, 0.6],
  [30, 0.6],
])('a pump designed for %d gpm has an efficiency of %d', (flow, efficiency) => {
  expect(efficiencyAt(gpm(flow))).toBeCloseTo(efficiency, 12);
});

test('water power at the design point is the efficient share of the shaft power', () => {
  const [power, flow, density] = [horsepower(1), gpm(10), 999.7];
  const head = genericDesignHead({ power, flow, density });
  expect(density * 9.80665 * flow * head).toBeCloseTo(0.5 * power, 9);
  // 3960 gpm ft of water are one horsepower (handbook constant, water of 62.4 lb/ft³, four digits).
  expect(Math.abs(toFeet(head) / ((0.5 * 3960) / 10) - 1)).toBeLessThan(0.002);
});

test('the operating point lies on the pump curve and on the system curve', () => {
  fc.assert(
    fc.property(
      between(2, 30),
      between(20, 200),
      between(0, 1.2),
      between(0, 4),
      between(0, 3),
      (flow, head, lift, linear, square) => {
        const curve = genericCurve({ designFlow: gpm(flow), designHead: head });
        const design = gpm(flow);
        const system = (q: number) => head * (lift + linear * (q / design) + square * (q / design) ** 1.852);
        const point = operatingPoint(curve, system);
        expect(point.flow).toBeGreaterThan(0);
        if (toGpm(point.flow) >= 2 * flow) expect(system(curve.runOutFlow)).toBeLessThanOrEqual(1e-9);
        else {
          expect(Math.abs(point.head - curve.headAt(point.flow))).toBeLessThan(1e-6);
          expect(Math.abs(point.head - system(point.flow))).toBeLessThan(1e-6);
        }
      },
    ),
    SEED,
  );
});

test('the search asks for the system head a dozen times at the most in an ordinary well', () => {
  let asked = 0;
  const curve = genericCurve({ designFlow: gpm(10), designHead: feet(250) });
  operatingPoint(curve, (flow) => {
    asked++;
    return feet(200) + feet(30) * (flow / gpm(10)) ** 1.8 + feet(20) * (flow / gpm(10));
  });
  expect(asked).toBeLessThanOrEqual(12);
});

test('a pump too weak for the lift gives no flow at its shut-off head', () => {
  const curve = genericCurve({ designFlow: gpm(10), designHead: feet(150) });
  expect(operatingPoint(curve, () => feet(201))).toEqual({ flow: 0, head: curve.shutOffHead });
});

test('a pump with nothing to lift against runs out to the end of its curve', () => {
  const curve = genericCurve({ designFlow: gpm(10), designHead: feet(150) });
  expect(operatingPoint(curve, () => -1)).toEqual({ flow: curve.runOutFlow, head: 0 });
});

describe('a curve through points at uneven flows', () => {
  const uneven = [
    { flow: 1e-4, head: 60 },
    { flow: 3e-4, head: 55 },
    { flow: 9e-4, head: 20 },
  ];
  const curve = pointsCurve(uneven);

  test('has at an inner point the weighted harmonic mean of the slopes beside it', () => {
    // Fritsch & Butland (1984): 3 (h1 + h2) / ((2 h2 + h1)/d1 + (h2 + 2 h1)/d2), here h 2e-4 and 6e-4, d -25000 and -58333.
    const wanted = (3 * 8e-4) / (14e-4 / -25_000 + 10e-4 / (-35 / 6e-4));
    const step = 1e-9;
    expect((curve.headAt(3e-4 + step) - curve.headAt(3e-4)) / step / wanted).toBeCloseTo(1, 3);
    expect((curve.headAt(3e-4) - curve.headAt(3e-4 - step)) / step / wanted).toBeCloseTo(1, 3);
  });

  test('begins flat at no flow and meets its first point with the slope there', () => {
    const step = 1e-9;
    const after = (curve.headAt(1e-4 + step) - curve.headAt(1e-4)) / step;
    expect((curve.headAt(1e-4) - curve.headAt(1e-4 - step)) / step / after).toBeCloseTo(1, 3);
    // A parabola from no flow: a quarter of its fall at half the flow.
    const fall = curve.shutOffHead - curve.headAt(1e-4);
    expect(curve.shutOffHead - curve.headAt(5e-5)).toBeCloseTo(fall / 4, 9);
    expect(curve.headAt(0)).toBe(curve.shutOffHead);
  });

  test('goes on in a straight line past its last point, at no less than the slope of the last two', () => {
    expect((20 - curve.headAt(1e-3)) / 1e-4).toBeGreaterThanOrEqual(35 / 6e-4 - 1e-6);
    expect(curve.headAt(curve.runOutFlow)).toBeCloseTo(0, 9);
  });
});

describe('a curve that ends before its head is gone', () => {
  const whole = pointsCurve([
    { flow: 0, head: 60 },
    { flow: 1e-3, head: 20 },
  ]);
  const ended = { ...whole, endFlow: 8e-4 };

  test('meets a system inside it where the whole curve does', () => {
    expect(operatingPoint(ended, () => 40).flow).toBeCloseTo(5e-4, 9);
    expect(operatingPoint(ended, () => 40).head).toBeCloseTo(40, 6);
  });

  test('stays at its last flow where the system asks for less than the head there', () => {
    expect(operatingPoint(ended, () => 27).flow).toBe(8e-4);
    expect(operatingPoint(ended, () => 27).head).toBeCloseTo(28, 9);
    expect(operatingPoint(ended, () => 29).flow).toBeCloseTo(7.75e-4, 9);
  });
});

test('points that go on without end are refused, by flow and by head', () => {
  const high = { flow: 1e-3, head: 90 };
  expect(pumpPointsFault([high, { flow: Infinity, head: 50 }])).toMatch(/^a flow/);
  expect(pumpPointsFault([{ flow: 0, head: Infinity }, high])).toMatch(/^a head/);
});
