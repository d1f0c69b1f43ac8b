/** What cannot be true of a house, its water and its pump. */
import type { Defaults } from '../defaults.ts';
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { casingsOf, length, list, number, record, value } from './raw.ts';
import type { Fields } from './raw.ts';

export function pressures(house: Fields, usual: Defaults): Problem[] {
  const cutIn = number(house['cutIn'] ?? usual.cutIn, 'pressure');
  const cutOut = number(house['cutOut'] ?? usual.cutOut, 'pressure');
  if (cutIn === null || cutOut === null || cutOut > cutIn) return [];
  const path = house['cutOut'] === undefined ? 'house.cutIn' : 'house.cutOut';
  return path === 'house.cutOut'
    ? [
        value(
          path,
          house['cutOut'],
          `not above cut-in (${shortJson(house['cutIn'] ?? usual.cutIn)})`,
          'a pressure above cut-in, usually by 20 psi',
        ),
      ]
    : [
        value(
          path,
          house['cutIn'],
          `not below cut-out ("${usual.cutOut}", since house.cutOut is not said)`,
          'house.cutOut as well',
        ),
      ];
}

export function steps(water: Fields): Problem[] {
  let before = 0;
  return list(record(water['pumping'])['steps']).flatMap((step, index) => {
    const flow = number(step['flow'], 'flow');
    if (flow === null) return [];
    const risen = flow > before;
    before = flow;
    return risen
      ? []
      : [
          value(
            `water.pumping.steps.${index}.flow`,
            step['flow'],
            'not above the flow of the step before it',
            'the steps with the smallest flow first',
          ),
        ];
  });
}

export function pumpCurve(pump: Fields): Problem[] {
  const points = record(pump['curve'])['points'];
  if (!Array.isArray(points)) return [];
  let before: { flow: number; head: number } | null = null;
  return points.flatMap((point: unknown, index) => {
    if (!Array.isArray(point)) return [];
    const flow = number(point[0], 'flow');
    const head = length(point[1]);
    if (flow === null || head === null) return [];
    const last = before;
    before = { flow, head };
    const path = `pump.curve.points.${index}`;
    if (last === null) return [];
    if (flow <= last.flow)
      return [value(`${path}.0`, point[0], 'not above the flow of the point before it', 'the points with rising flow')];
    if (head >= last.head)
      return [
        value(
          `${path}.1`,
          point[1],
          'not below the head of the point before it',
          'points whose head falls as the flow rises',
        ),
      ];
    return [];
  });
}

/** The pump's discharge must hang below the place where the pipe leaves the well, or there is no drop pipe. */
export function stringLength(plan: Record<string, unknown>, well: Fields, usual: Defaults): Problem[] {
  const pump = record(plan['pump']);
  const top = record(plan['top']);
  const setting = length(pump['setting']);
  const body = length(pump['intakeToDischarge'] ?? usual.intakeToDischarge);
  const height = length(casingsOf(well)[0]?.fields['height'] ?? usual.casingHeight);
  const pitless = top['kind'] === 'pitless';
  const outlet = pitless ? length(top['depth'] ?? '0 ft') : height === null ? null : -height;
  if (setting === null || body === null || height === null || outlet === null) return [];
  const fromGround = well['depthsFrom'] === 'casing top' ? setting - height : setting;
  if (fromGround - body > outlet) return [];
  const where = !pitless
    ? 'the top of the casing'
    : top['depth'] === undefined
      ? 'the ground, as an adapter is'
      : `top.depth (${shortJson(top['depth'])})`;
  return [
    value(
      'pump.setting',
      pump['setting'],
      `so high that the pump’s discharge is not below ${where}: no drop pipe is left`,
      'a greater depth',
    ),
  ];
}
