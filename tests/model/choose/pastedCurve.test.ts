/** Two columns copied from a sheet become a pump's points, or one sentence that says what, where and how to mend. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { pastedCurve, MOST_POINTS } from '../../../src/model/choose/pastedCurve.ts';
import { pointsOf } from '../../../src/model/choose/candidates.ts';
import { pointsCurve } from '../../../src/model/formulas/pointsCurve.ts';
import { gpm, feet, show } from '../../../src/model/units.ts';
import { choose } from '../../../src/words/en/choose.ts';
import { sayPoints } from '../../../src/words/sayPoints.ts';

const US = { flow: 'gpm', head: 'ft' } as const;
const NONE = { flow: null, head: null } as const;

function pointsIn(text: string, units: Parameters<typeof pastedCurve>[1] = US) {
  const read = pastedCurve(text, units);
  if (!read.ok) throw new Error(choose.paste(read.fault));
  return read.points;
}
function refusal(text: string, units: Parameters<typeof pastedCurve>[1] = US): string {
  const read = pastedCurve(text, units);
  return read.ok ? '' : choose.paste(read.fault);
}

const WANTED = [
  ['0 gpm', '260 ft'],
  ['5 gpm', '240 ft'],
  ['10 gpm', '190 ft'],
];

test.each([
  ['tab', '0\t260\n5\t240\n10\t190'],
  ['semicolon', '0;260\n5;240\n10;190'],
  ['comma', '0,260\n5,240\n10,190'],
  ['comma and blank', '0, 260\n5, 240\n10, 190'],
  ['blanks', ' 0   260\n 5   240\n\n10   190 \n'],
  ['another line end', '0\t260\r\n5\t240\r\n10\t190\r\n'],
  ['any order', '10\t190\n0\t260\n5\t240'],
  ['heading', 'Flow (gpm)\tHead (ft)\n0\t260\n5\t240\n10\t190'],
  ['heading, columns turned', 'Head, ft; Flow, gpm\n260;0\n240;5\n190;10'],
  ['units in the cells', '0 gpm\t260 ft\n5 gpm\t240 ft\n10 gpm\t190 ft'],
  ['units in the cells, parted by blanks', '0 gpm 260 ft\n5 gpm 240 ft\n10 gpm 190 ft'],
])('%s', (_name, text) => {
  expect(pointsIn(text)).toEqual(WANTED);
});

test('a heading says the units, whatever was chosen', () => {
  expect(pointsIn('Q [L/min]\tH [m]\n20\t55,5\n40\t38,2', US)).toEqual([
    ['20 L/min', '55.5 m'],
    ['40 L/min', '38.2 m'],
  ]);
  expect(pointsIn('Flow m³/h;Head m\n1,5;55\n2,5;38', NONE)).toEqual([
    ['1.5 m3/h', '55 m'],
    ['2.5 m3/h', '38 m'],
  ]);
});

test('decimal commas between tabs, semicolons and blanks', () => {
  const wanted = [
    ['0.5 L/s', '62.4 m'],
    ['1.2 L/s', '41.9 m'],
  ];
  const units = { flow: 'L/s', head: 'm' } as const;
  for (const mark of ['\t', ';', '  ']) expect(pointsIn(`0,5${mark}62,4\n1,2${mark}41,9`, units)).toEqual(wanted);
});

/** 2.31 ft of cold water to the psi: handbooks of pump practice. */
test('pressure for head: 100 psi are 231 ft', () => {
  const head = pointsIn('5\t100\n10\t80', { flow: 'gpm', head: 'psi' })[0]?.[1] ?? '';
  expect(Number.parseFloat(head)).toBeCloseTo(231, 0);
});

test.each([
  ['', 'Nothing is there to read: paste two columns, flow and head.'],
  ['5\t240', 'There is one point: a curve needs two or more lines.'],
  ['5\t240\n10', 'Line 2, “10”, has one column: write a flow and a head, parted by a tab.'],
  ['5\t240\t3\n10\t200\t4', 'Line 1, “5\t240\t3”, has 3 columns: write a flow and a head, parted by a tab.'],
  [
    '5\t240\nten\t200',
    'Line 2: the flow “ten” is no number with a unit that is read here; write “10 gpm” or “40 L/min”.',
  ],
  ['5\t240\n10\thigh', 'Line 2: the head “high” is no number with a unit that is read here; write “200 ft” or “60 m”.'],
  ['0 1,400\n5 1,200', 'Line 1: “1,400” may be thousands or tenths; write it without a comma, “1400” or “1.4”.'],
  [
    '0\t1,400 ft\n5\t1,200 ft',
    'Line 1: “1,400 ft” may be thousands or tenths; write it without a comma, “1400” or “1.4”.',
  ],
  ['260\t0\n240\t5\n190\t10', 'No well pump lifts only 10 ft, with 260 gpm: are flow and head the wrong way round?'],
  ['5\t240\n-1\t250', 'Line 2: the flow “-1” is negative; take the line out.'],
  ['5\t240\n5\t230', 'Lines 1 and 2 have the same flow, 5 gpm: keep one of them.'],
  ['5\t240\n10\t250', 'Line 2: its head is not under that of line 1, though its flow is larger. Check both.'],
])('refused: %j', (text, said) => {
  expect(refusal(text)).toBe(said);
});

test('without units it asks for them, and too much is refused', () => {
  expect(refusal('5\t240\n10\t200', NONE)).toBe('The flow has no unit: choose it above, or name it in the first line.');
  const many = Array.from({ length: MOST_POINTS + 1 }, (_, i) => `${i}\t${900 - i}`).join('\n');
  expect(refusal(many)).toBe(`There are more than ${MOST_POINTS} points: leave some lines out.`);
  expect(refusal('x'.repeat(30_000))).toMatch(/^That is more than/);
});

test('whatever falls is read back as written, in every separator; anything at all is answered and never thrown', () => {
  const falling = fc
    .uniqueArray(fc.integer({ min: 0, max: 60 }), { minLength: 2, maxLength: 12 })
    .map((flows) => flows.toSorted((a, b) => a - b).map((flow, i) => ({ flow, head: 900 - 31 * i - flow })));
  fc.assert(
    fc.property(falling, fc.constantFrom('\t', ';', ', ', '   '), (points, mark) => {
      const text = points.map(({ flow, head }) => `${flow}${mark}${head}`).join('\n');
      const read = pointsOf(pointsIn(text));
      read.forEach(({ flow, head }, i) => {
        expect(flow).toBeCloseTo(gpm(points[i]?.flow ?? NaN), 12);
        expect(head).toBeCloseTo(feet(points[i]?.head ?? NaN), 9);
      });
    }),
  );
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(...'0159.,;\t -\ngpmftqhL/³'.split('')), maxLength: 80 }), (text) => {
      const read = pastedCurve(text, US);
      if (!read.ok) expect(choose.paste(read.fault)).toMatch(/^[A-Z].*\.$/s);
    }),
    { numRuns: 400 },
  );
});

test('what was read is told back, with what is taken at no flow', () => {
  const told = (text: string) => sayPoints(pastedCurve(text, US), choose, show('us'));
  expect(told('0\t260\n5\t240\n10\t190')).toBe('Read as 0 gpm, 260 ft; 5 gpm, 240 ft; 10 gpm, 190 ft.');
  // The parabola through 5 gpm and 240 ft with the slope there.
  const { shutOffHead } = pointsCurve(pointsOf(pointsIn('5\t240\n10\t190')));
  expect(told('5\t240\n10\t190')).toContain(
    `The head at no flow is not among them: ${show('us').head(shutOffHead)} is taken.`,
  );
});
