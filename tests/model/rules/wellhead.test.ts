import { expect, test } from 'vitest';
import { show } from '../../../src/model/units.ts';
import { en } from '../../../src/words/en/index.ts';
import { sayFinding, sayHolding } from '../../../src/words/sayJudgement.ts';
import { findingOf, judged } from './fixture.ts';

test('distances that nobody told were said to be kept', () => {
  const changes = { 'site.drainField.distance': undefined, 'site.building.distance': undefined };
  const held = judged(changes).holding.find(({ rule }) => rule === 'PR-40')!;
  const said = sayHolding(held, en, show('us'));
  expect(said.title).toBe('The well keeps its distance to septic tank');
  expect(said.message).toContain('nobody told of drain field and building');
});

test('a seal where only the climate is told may freeze, and says which field decides', () => {
  const finding = findingOf('PR-43', {
    top: { kind: 'seal' },
    'site.frostDepth': undefined,
    'site.freezing': { station: 'Escalante' },
  });
  expect([finding.severity, finding.turn?.field]).toEqual(['warning', 'site.frostDepth']);
  expect(sayFinding(finding, en, show('metric')).message).not.toMatch(/\d in\b/);
});

test('a casing height that nobody said is not held against a height that nobody asked for', () => {
  const { verdicts, holding } = judged({ 'well.casing.height': undefined });
  expect(verdicts['PR-23']).toBe('not judged');
  expect(holding.some(({ rule }) => rule === 'PR-23')).toBe(false);
});
