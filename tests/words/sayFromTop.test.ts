/** The well from top to bottom in words, and where the pump may hang. */
import { describe, expect, test } from 'vitest';
import { solve, type Plan } from '../../src/model/index.ts';
import { fromTop as listed } from '../../src/model/string/fromTop.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { fromTop } from '../../src/words/en/fromTop.ts';
import { headroom } from '../../src/words/en/headroom.ts';
import { sayMayHang, sayStanding } from '../../src/words/sayFromTop.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';

const words = { short: en.short, headroom, fromTop };

function told(plan: Plan): readonly string[] {
  const solution = solve(plan);
  const units = show(solution.facts.units);
  return listed(solution).map((each) => {
    const { name, where, says } = sayStanding(each, words, units);
    return [`${name}, ${where}.`, ...says].join(' ');
  });
}

const beginning = (plan: Plan, start: string) => told(plan).find((line) => line.startsWith(start));
const pumpMayHang = (plan: Plan) => sayMayHang('pump.setting', solve(plan), words, show('us')).join(' ');
const adapterMayStand = (plan: Plan) => sayMayHang('top.depth', solve(plan), words, show('us')).join(' ');

test('of each thing one reads what it is, how deep, what it meets and what of it is assumed', () => {
  const tamarack = planOf(sample('tamarack-ridge'));
  expect(beginning(tamarack, 'Pitless adapter')).toBe(
    'Pitless adapter, 6 ft. In the wall of the casing. The line to the house leaves here. ' +
      'Its body stays in the wall; its sliding half lifts out with the pipe. 24 in below the frost. ' +
      'Above it: the thread for the lift-out pipe. ' +
      'Below it: the drop pipe, on a stainless steel insert fitting with 2 clamps. Assumed: clamps on each joint.',
  );
  expect(beginning(tamarack, 'Nipple')).toBe(
    'Nipple, 178 ft 4 in to 178 ft 6 in, assumed. Above it: the check valve, by a thread. ' +
      'Below it: the pump, by its outlet’s thread, 1-1/4 in. Assumed: outlet of the pump.',
  );
  expect(beginning(tamarack, 'Pumping level')).toBe('Pumping level, 95 ft 7 in. The water while the pump runs.');
});

test('metric wells are read in metres, and heights over the ground as heights', () => {
  const palo = planOf(sample('palo-amargo'));
  expect(beginning(palo, 'Coupling on the seal')).toMatch(/^Coupling on the seal, 58 cm to 53 cm above the ground\./);
  expect(beginning(palo, 'Casing, 6 in PVC')).toBe(
    'Casing, 6 in PVC, 50 cm above the ground to 48 m. Grout round it to 15 m.',
  );
});

test('what stands on a line over a seal is heard of, and a rope’s eye', () => {
  const sealed = rockWell({ top: { kind: 'seal' }, rope: { material: 'polypropylene', tied: 'casing hook' } });
  const unasked = 'Drawn unasked: nobody said whether it is there.';
  expect(beginning(sealed, 'Union')).toContain(`Undo it and the seal lifts off. ${unasked}`);
  expect(beginning(sealed, 'Sample tap')).toContain(unasked);
  expect(beginning(sealed, 'Pipe support')).toContain(`Under the line, from the ground up. ${unasked}`);
  expect(beginning(sealed, 'Rope')).toContain('Tied to the eye under the seal.');
  expect(beginning(rockWell(), 'Splice under the cap')).toContain('the cable to the house: 4 joints.');
  const limited = rockWell({ pump: { ...rockWell().pump, flowLimiter: '6 gpm' } });
  expect(beginning(limited, 'Flow-limiting valve')).toContain('On the pump’s outlet. It holds 6 gpm.');
});

test('what nobody said is told as that, and not as something', () => {
  const slate = planOf(sample('slate-hollow'));
  expect(beginning(slate, 'Casing')).toContain('Nobody reported grout.');
  expect(beginning(slate, 'Pumping level')).toContain('depth not known. Nobody knows how far the water falls');
  expect(beginning(slate, 'Bond')).toContain('Drawn unasked: nobody said whether it is there.');
  const bare = planOf({
    format: 'wellcut-plan/1',
    well: { depth: '200 ft', casing: { size: '6 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: 'unknown' },
  });
  expect(beginning(bare, 'Casing')).toContain('Nobody said what it is made of.');
  expect(beginning(bare, 'Static level')).toBe('Static level, depth not known. The water at rest.');
  expect(beginning(bare, 'Pump intake')).toContain(', assumed.');
});

test.each(SAMPLES)('no sentence of %s is longer than twenty words, and none says nothing', (name) => {
  const solution = solve(planOf(sample(name)));
  const units = show(solution.facts.units);
  const lines = listed(solution).flatMap((each) => sayStanding(each, words, units).says);
  for (const line of lines) {
    expect(line).not.toMatch(/undefined|null|NaN|Infinity| [–-] /);
    for (const sentence of line.split(/[.:] /)) expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(20);
  }
});

describe('where the pump may hang', () => {
  test('from where to where, why, and where it hangs', () => {
    expect(pumpMayHang(planOf(sample('tamarack-ridge')))).toBe(
      'The rules for depth hold from 143 ft (10 ft under the dry level) to 208 ft (10 ft off the bottom). ' +
        'It hangs at 180 ft, within that.',
    );
  });
  test('off by how much, and which way', () => {
    const high = { setting: '50 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } };
    expect(pumpMayHang(rockWell({ pump: high }))).toMatch(/It hangs at 50 ft, [\d.]+ ft too high for that\.$/);
    expect(pumpMayHang(rockWell({ pump: { ...high, setting: '195 ft' } }))).toMatch(/too deep for that\.$/);
  });
  test('where nobody knows how far the water falls, no depth is called right', () => {
    const water = { staticLevel: '40 ft' };
    expect(pumpMayHang(rockWell({ water }))).toMatch(
      /^From .* nobody knows whether it is right\. It hangs at 140 ft, and nobody can call that right\.$/,
    );
    expect(pumpMayHang(rockWell({ water: { staticLevel: 'unknown' } }))).toBe(
      'Nobody can tell: the static level is not known.',
    );
  });
  test('where two rules exclude each other, both are named', () => {
    const water = { staticLevel: '40 ft', pumping: { kind: 'test', flow: '7 gpm', drawdown: '150 ft', after: '4 h' } };
    expect(pumpMayHang(rockWell({ water }))).toMatch(/^No depth meets both: .+, and .+\.$/);
  });
  test('in a well that flows by itself nowhere, before somebody has seen it', () => {
    const well = {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
      flowControl: true,
    };
    expect(pumpMayHang(rockWell({ well, water: { staticLevel: '-2 ft' } }))).toBe(
      'Nowhere yet. The well flows by itself: a licensed contractor has to see it first.',
    );
  });
  test('and the adapter may stand below the frost', () => {
    expect(adapterMayStand(rockWell())).toMatch(
      /^The rules for depth hold from 42 in \(6 in below frost\) to .*It stands at 60 in, within that\.$/,
    );
    expect(adapterMayStand(rockWell({ top: { kind: 'pitless', depth: '30 in' } }))).toMatch(
      /12 in too high for that\.$/,
    );
  });
});
