/** What cannot be true of a hole and what lines it. */
import type { Defaults } from '../defaults.ts';
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import { GRACE, casingsOf, length, list, number, record, value, wellDepth } from './raw.ts';
import type { Fields } from './raw.ts';

/** A casing that is told to end below the well contradicts the record, which is no reason not to read it: a rule tells. */
export function casings(well: Fields, usual: Defaults): Problem[] {
  return casingsOf(well).flatMap(({ path, fields }, index) => {
    const problems: Problem[] = [];
    const bottom = length(fields['bottom']);
    const height = length(fields['height'] ?? usual.casingHeight) ?? 0;
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
    return problems;
  });
}

export function screens(well: Fields): Problem[] {
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

/** The screens with the path each was typed at. */
function screensOf(intake: Fields): { path: string; fields: Fields }[] {
  if (intake['screens'] !== undefined) {
    return list(intake['screens']).map((fields, index) => ({ path: `well.intake.screens.${index}`, fields }));
  }
  return [{ path: 'well.intake', fields: intake }];
}

export function inflows(well: Fields): Problem[] {
  const shares = list(well['inflows']).map((inflow) => inflow['share']);
  const sum = shares.reduce<number>((total, share) => total + (number(share, 'ratio') ?? 0), 0);
  return sum > 1 + 1e-9
    ? [value('well.inflows', shares, 'shares that add up to more than 100 %', 'shares of at most 100 % together')]
    : [];
}

export function layers(well: Fields): Problem[] {
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

function describe(typed: unknown, otherwise: string): string {
  return typed === undefined ? otherwise : shortJson(typed);
}
