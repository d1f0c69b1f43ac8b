import { expect, test } from 'vitest';
import { offeredSizes } from '../../src/app/form/offeredSizes.ts';
import { lineSizes } from '../../src/app/start/lineSizes.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import heron from '../../static/samples/heron-flats.json';
import tamarack from '../../static/samples/tamarack-ridge.json';
import willow from '../../static/samples/willow-dale.json';

function planOf(sample: unknown) {
  const reading = readPlan(sample);
  if (!reading.ok) throw new Error('the sample does not read');
  return reading.plan;
}

const us = planOf(tamarack);
const metric = planOf(willow);

test('the form offers wire, pipe and casing of both families, those that the plan uses first', () => {
  expect(offeredSizes(metric, 'wire.size').slice(0, 3)).toEqual(['1.5 mm2', '2.5 mm2', '4 mm2']);
  expect(offeredSizes(metric, 'wire.size')).toContain('12 AWG');
  expect(offeredSizes(us, 'wire.size')[0]).toBe('14 AWG');
  expect(offeredSizes(us, 'wire.size')).toContain('4 mm2');
  expect(offeredSizes(metric, 'dropPipe.size')[0]).toBe('20 mm');
  expect(offeredSizes(us, 'dropPipe.size')[0]).toBe('3/4 in');
  expect(offeredSizes(metric, 'well.casing.size')[0]).toBe('110 mm');
  expect(offeredSizes(us, 'well.casing.size')[0]).toMatch(/ in$/);
});

test('a metric plan that names its wire in AWG is offered AWG first', () => {
  expect(offeredSizes(planOf(heron), 'wire.size')[0]).toBe('14 AWG');
});

test('a field that is no size is offered nothing', () => {
  expect(offeredSizes(us, 'pump.setting')).toEqual([]);
});

test('the report form lists the pipe of its own units first', () => {
  expect(lineSizes('metric')[0]).toBe('25 mm');
  expect(lineSizes('us')[0]).toBe('3/4 in');
});
