/** What the fields of the record are called: short beside their input, in full for those who only hear them. */
import type { FieldInfo } from '../../model/plan/fields.ts';
import { capital } from '../../words/en/phrases.ts';

export interface FieldName {
  /** Under a heading that says of what: "Bottom". */
  readonly shown: string;
  /** By itself: "Bottom of layer 2". */
  readonly heard: string;
}

/** An item of a list: "layer", "a layer". */
export interface ItemName {
  readonly one: string;
  readonly another: string;
}

export const ITEMS: Readonly<Record<string, ItemName>> = {
  'well.casings': { one: 'casing', another: 'a casing' },
  'well.intake.screens': { one: 'screen', another: 'a screen' },
  'well.inflows': { one: 'inflow', another: 'an inflow' },
  'well.layers': { one: 'layer', another: 'a layer' },
  'water.pumping.steps': { one: 'step', another: 'a step of the test' },
  'pump.curve.points': { one: 'point', another: 'a point of the curve' },
  'string.checkValves': { one: 'check valve', another: 'a check valve' },
  'string.splices': { one: 'splice', another: 'a splice' },
};

/** Parts that have the same fields. */
const PIPES: readonly (readonly [start: string, of: string])[] = [
  ['dropPipe.', 'the drop pipe'],
  ['house.line.', 'the line to the house'],
];

/** The list that a field belongs to ("well.layers" of "well.layers.*.bottom"), or null. */
export function listOf(path: string): string | null {
  const star = path.indexOf('.*');
  return star < 0 ? null : path.slice(0, star);
}

/** "layer 2" of several, "the layer" of one. */
export function itemOf(list: string, number: number, count: number): string {
  const one = ITEMS[list]?.one ?? 'item';
  return count > 1 ? `${one} ${number + 1}` : `the ${one}`;
}

/** Heading of an item: "Layer 2". */
export function headingOf(list: string, number: number, count: number): string {
  const one = capital(ITEMS[list]?.one ?? 'item');
  return count > 1 ? `${one} ${number + 1}` : one;
}

/**
 * @param path   the field's path with the number of its item
 * @param count  how many items its list has
 */
export function nameOfField({ path: model, label }: FieldInfo, path: string, count: number): FieldName {
  const list = listOf(model);
  if (list !== null) {
    const number = Number(path.slice(list.length + 1).split('.')[0]);
    return { shown: shortened(label), heard: named(label, itemOf(list, number, count)) };
  }
  const pipe = PIPES.find(([start]) => model.startsWith(start));
  return pipe === undefined
    ? { shown: label, heard: label }
    : { shown: shortened(label), heard: named(label, pipe[1]) };
}

/** "Bottom of the layer" as what it is of: "Bottom of the new layer". */
export function named(label: string, of: string): string {
  const short = shortened(label);
  // "Pumped for" and "Height above ground" have a preposition already.
  return /\b(?:of|for|above)\b/.test(short) ? `${short}, ${of}` : `${short} of ${of}`;
}

/** Whose it is goes without saying under its heading; the top of a liner is not that of a casing. */
function shortened(label: string): string {
  return label === 'Top of the liner' ? label : label.replace(/ of the [a-z ]+$/, '');
}
