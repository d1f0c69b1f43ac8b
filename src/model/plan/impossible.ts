/**
 * What cannot be true of any well, whatever its numbers are alone: a casing that ends above its top, shares over 100 %.
 *
 * It reads the raw plan, so that these faults are told together with those of single fields, and passes over whatever is
 * missing or unreadable. What is only odd or bad (a pump below the bottom, water above ground) is left to the rules.
 */
import { parseQuantity } from '../units.ts';
import type { QuantityKind } from '../units.ts';
import { DEFAULTS } from './defaults.ts';
import { shortJson } from './problem.ts';
import type { Problem } from './problem.ts';
import { isRecord } from './shape.ts';

/** Typed in different units, equal lengths differ in the last bits; nothing in a well is set finer than this [m]. */
const GRACE = 1e-4;

export function impossible(plan: Record<string, unknown>): Problem[] {
  const well = record(plan['well']);
  const water = record(plan['water']);
  const house = record(plan['house']);
  return [
    ...eitherOr(well, water),
    ...casings(well),
    ...screens(well),
    ...inflows(well),
    ...layers(well),
    ...pressures(house),
    ...pumpingLevel(water),
    ...steps(water),
    ...pumpCurve(record(plan['pump'])),
    ...stringLength(plan, well),
    ...demand(plan['house']),
  ];
}

function eitherOr(well: Fields, water: Fields): Problem[] {
  const problems: Problem[] = [];
  const both = (path: string, value: unknown, other: string) =>
    problems.push({ path, read: shortJson(value), problem: `beside ${other}`, write: 'one of the two', kind: 'value' });
  if (well['casing'] !== undefined && well['casings'] !== undefined)
    both('well.casing', well['casing'], 'well.casings');
  if (isRecord(well) && Object.keys(well).length > 0 && well['casing'] === undefined && well['casings'] === undefined) {
    problems.push({
      path: 'well.casing',
      read: '',
      problem: 'missing',
      write: '{ "material": "steel", "size": "6 in", "bottom": "90 ft" }',
      kind: 'missing',
    });
  }
  const intake = record(well['intake']);
  if (intake['screens'] !== undefined && (intake['top'] !== undefined || intake['bottom'] !== undefined)) {
    both('well.intake.screens', intake['screens'], 'well.intake.top and bottom');
  }
  for (const [one, other] of [
    ['top', 'bottom'],
    ['bottom', 'top'],
  ] as const) {
    if (
      intake[one] !== undefined &&
      intake[one] !== 'unknown' &&
      intake[other] === undefined &&
      intake['screens'] === undefined
    ) {
      problems.push({
        path: `well.intake.${other}`,
        read: '',
        problem: 'missing',
        write: 'a depth, or "unknown"',
        kind: 'missing',
      });
    }
  }
  if (water['staticLowest'] !== undefined && water['dryFall'] !== undefined) {
    both('water.dryFall', water['dryFall'], 'water.staticLowest');
  }
  return problems;
}

function casings(well: Fields): Problem[] {
  const depth = wellDepth(well);
  return casingsOf(well).flatMap(({ path, fields }, index) => {
    const problems: Problem[] = [];
    const bottom = length(fields['bottom']);
    const height = length(fields['height'] ?? DEFAULTS.casingHeight) ?? 0;
    const fromCasingTop = well['depthsFrom'] === 'casing top';
    const top = length(fields['top']) ?? (index === 0 && !fromCasingTop ? -height : 0);
    if (bottom !== null && bottom <= top) {
      problems.push(
        value(
          `${path}.bottom`,
          fields['bottom'],
          `not below its top (${describe(fields['top'], 'the top of the casing')})`,
          'a greater depth',
        ),
      );
    }
    if (bottom !== null && depth !== null && bottom > depth + GRACE) {
      problems.push(
        value(
          `${path}.bottom`,
          fields['bottom'],
          `below the bottom of the well (well.depth is ${shortJson(well['depth'])})`,
          'a depth within the well',
        ),
      );
    }
    if (fields['size'] === undefined && fields['insideDiameter'] === undefined) {
      problems.push({
        path: `${path}.size`,
        read: '',
        problem: 'missing',
        write: '"6 in", or the inside diameter if that is what you know',
        kind: 'missing',
      });
    }
    return problems;
  });
}

function screens(well: Fields): Problem[] {
  const depth = wellDepth(well);
  let above: number | null = null;
  return screensOf(record(well['intake'])).flatMap(({ path, fields }) => {
    const problems: Problem[] = [];
    const top = length(fields['top']);
    const bottom = length(fields['bottom']);
    if (top !== null && bottom !== null && bottom <= top) {
      problems.push(
        value(`${path}.bottom`, fields['bottom'], `not below its top (${shortJson(fields['top'])})`, 'a greater depth'),
      );
    }
    if (bottom !== null && depth !== null && bottom > depth + GRACE) {
      problems.push(
        value(
          `${path}.bottom`,
          fields['bottom'],
          `below the bottom of the well (well.depth is ${shortJson(well['depth'])})`,
          'a depth within the well',
        ),
      );
    }
    if (top !== null && above !== null && top < above - GRACE) {
      problems.push(
        value(
          `${path}.top`,
          fields['top'],
          'above the bottom of the screen before it',
          'the screens from the top down, without overlap',
        ),
      );
    }
    above = bottom ?? above;
    return problems;
  });
}

function inflows(well: Fields): Problem[] {
  const problems: Problem[] = [];
  const depth = wellDepth(well);
  let sum = 0;
  list(well['inflows']).forEach((inflow, index) => {
    sum += number(inflow['share'], 'ratio') ?? 0;
    const at = length(inflow['depth']);
    if (at !== null && depth !== null && at > depth + GRACE) {
      problems.push(
        value(
          `well.inflows.${index}.depth`,
          inflow['depth'],
          `below the bottom of the well (well.depth is ${shortJson(well['depth'])})`,
          'a depth within the well',
        ),
      );
    }
  });
  if (sum > 1 + 1e-9) {
    problems.push(
      value(
        'well.inflows',
        list(well['inflows']).map((inflow) => inflow['share']),
        'shares that add up to more than 100 %',
        'shares of at most 100 % together',
      ),
    );
  }
  return problems;
}

function layers(well: Fields): Problem[] {
  let above: { bottom: number; typed: unknown } | null = null;
  return list(well['layers']).flatMap((layer, index) => {
    const bottom = length(layer['bottom']);
    if (bottom === null) return [];
    const before = above;
    above = { bottom, typed: layer['bottom'] };
    return before !== null && bottom < before.bottom - GRACE
      ? [
          value(
            `well.layers.${index}.bottom`,
            layer['bottom'],
            `above the bottom of the layer before it (${shortJson(before.typed)})`,
            'the layers from the top down',
          ),
        ]
      : [];
  });
}

function pressures(house: Fields): Problem[] {
  const cutIn = number(house['cutIn'] ?? DEFAULTS.cutIn, 'pressure');
  const cutOut = number(house['cutOut'] ?? DEFAULTS.cutOut, 'pressure');
  if (cutIn === null || cutOut === null || cutOut > cutIn) return [];
  const path = house['cutOut'] === undefined ? 'house.cutIn' : 'house.cutOut';
  return path === 'house.cutOut'
    ? [
        value(
          path,
          house['cutOut'],
          `not above cut-in (${shortJson(house['cutIn'] ?? DEFAULTS.cutIn)})`,
          'a pressure above cut-in, usually by 20 psi',
        ),
      ]
    : [
        value(
          path,
          house['cutIn'],
          `not below cut-out ("${DEFAULTS.cutOut}", since house.cutOut is not said)`,
          'house.cutOut as well',
        ),
      ];
}

function pumpingLevel(water: Fields): Problem[] {
  const pumping = record(water['pumping']);
  const level = length(pumping['level']);
  const atRest = length(water['staticLevel']);
  if (pumping['kind'] !== 'level' || level === null || atRest === null || level >= atRest - GRACE) return [];
  return [
    value(
      'water.pumping.level',
      pumping['level'],
      `above the level at rest (water.staticLevel is ${shortJson(water['staticLevel'])})`,
      'a greater depth',
    ),
  ];
}

function steps(water: Fields): Problem[] {
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

function pumpCurve(pump: Fields): Problem[] {
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
function stringLength(plan: Record<string, unknown>, well: Fields): Problem[] {
  const pump = record(plan['pump']);
  const top = record(plan['top']);
  const setting = length(pump['setting']);
  const body = length(pump['intakeToDischarge'] ?? DEFAULTS.intakeToDischarge);
  const height = length(casingsOf(well)[0]?.fields['height'] ?? DEFAULTS.casingHeight);
  const outlet = top['kind'] === 'pitless' ? length(top['depth']) : height === null ? null : -height;
  if (setting === null || body === null || height === null || outlet === null) return [];
  const fromGround = well['depthsFrom'] === 'casing top' ? setting - height : setting;
  if (fromGround - body > outlet) return [];
  const where = top['kind'] === 'pitless' ? `top.depth (${shortJson(top['depth'])})` : 'the top of the casing';
  return [
    value(
      'pump.setting',
      pump['setting'],
      `so high that the pump’s discharge is not below ${where}: no drop pipe is left`,
      'a greater depth',
    ),
  ];
}

/** What the house wants may be said in several ways, but it must be said. */
function demand(house: unknown): Problem[] {
  if (!isRecord(house)) return [];
  if (['demand', 'fixtures', 'people', 'stock', 'irrigation'].some((name) => house[name] !== undefined)) return [];
  return [
    { path: 'house.demand', read: '', problem: 'missing', write: '"8 gpm", "30 L/min" or "unknown"', kind: 'missing' },
  ];
}

type Fields = Readonly<Record<string, unknown>>;

/** The casings with the path each was typed at. */
export function casingsOf(well: Fields): { path: string; fields: Fields }[] {
  if (isRecord(well['casing'])) return [{ path: 'well.casing', fields: well['casing'] }];
  return list(well['casings']).map((fields, index) => ({ path: `well.casings.${index}`, fields }));
}

/** The screens with the path each was typed at. */
function screensOf(intake: Fields): { path: string; fields: Fields }[] {
  if (intake['screens'] !== undefined) {
    return list(intake['screens']).map((fields, index) => ({ path: `well.intake.screens.${index}`, fields }));
  }
  return [{ path: 'well.intake', fields: intake }];
}

function value(path: string, typed: unknown, problem: string, write: string): Problem {
  return { path, read: shortJson(typed), problem, write, kind: 'value' };
}

function describe(typed: unknown, otherwise: string): string {
  return typed === undefined ? otherwise : shortJson(typed);
}

function record(typed: unknown): Fields {
  return isRecord(typed) ? typed : {};
}

function list(typed: unknown): Fields[] {
  return Array.isArray(typed) ? typed.map(record) : [];
}

/** Null where it is not a depth: everything else would seem to lie below it. */
function wellDepth(well: Fields): number | null {
  const depth = length(well['depth']);
  return depth !== null && depth > 0 ? depth : null;
}

function length(typed: unknown): number | null {
  return number(typed, 'length');
}

function number(typed: unknown, kind: QuantityKind): number | null {
  if (typeof typed !== 'string') return null;
  const parsed = parseQuantity(typed, kind);
  return parsed.ok ? parsed.si : null;
}
