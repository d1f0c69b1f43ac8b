import { expect, test } from 'vitest';
import { berggrenLambda } from '../../src/model/formulas/berggren.ts';
import { frostSheet } from './sheets.ts';
import { testSheet } from './testSheet.ts';

testSheet(frostSheet);

// UFC 3-130-06 (TM 5-852-6) chart of lambda as Aldrich and Paynter printed it (CRREL Special Report 104, 1966, Figure 1);
// figures from Neumann's solution at three decimals, which agree with 95 points read off the chart within 0.010.
test.each([
  [0.2, [0.971, 0.954, 0.925, 0.9, 0.878, 0.858]],
  [0.6, [0.932, 0.897, 0.845, 0.804, 0.77, 0.74]],
  [0.8, [0.913, 0.871, 0.81, 0.763, 0.724, 0.692]],
  [1.5, [0.851, 0.787, 0.702, 0.643, 0.597, 0.561]],
  [3, [0.737, 0.645, 0.538, 0.473, 0.428, 0.393]],
  [5, [0.617, 0.511, 0.403, 0.344, 0.306, 0.278]],
])('lambda at a thermal ratio of %d follows the chart of Aldrich and Paynter', (thermalRatio, row) => {
  [0.05, 0.1, 0.2, 0.3, 0.4, 0.5].forEach((fusion, column) => {
    expect(Math.abs(berggrenLambda({ thermalRatio, fusion }) - row[column]!)).toBeLessThanOrEqual(0.0006);
  });
});
