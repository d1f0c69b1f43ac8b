import { expect, test } from 'vitest';
import { offeredSizes } from '../../src/app/form/offeredSizes.ts';
import { lineSizes } from '../../src/app/start/reportPlan.ts';
import { planOf, sample } from '../plans/build.ts';

const us = planOf(sample('tamarack-ridge'));
const metric = planOf(sample('willow-dale'));

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
  expect(offeredSizes(planOf(sample('heron-flats')), 'wire.size')[0]).toBe('14 AWG');
});

test('a field that is no size is offered nothing', () => {
  expect(offeredSizes(us, 'pump.setting')).toEqual([]);
});

test('the report form lists the pipe of its own units first', () => {
  expect(lineSizes('metric')[0]).toBe('25 mm');
  expect(lineSizes('us')[0]).toBe('3/4 in');
});
