/** An assumed value in the reader's units and words. */
import type { Assumed } from '../../../model/facts.ts';
import { fieldAt } from '../../../model/plan/fields.ts';
import { isForeign, parseQuantity, show, type QuantityKind, type Show, wireName } from '../../../model/units.ts';
import { sayChoice } from './choices.ts';
import { nameOfPath } from './paths.ts';

/** "Splice heights above the pump: 4 ft" */
export function sayAssumed({ path, value }: Assumed, units: 'us' | 'metric'): string {
  return `${nameOfPath(path)}: ${sayAssumedValue({ path, value }, units)}`;
}

/** "4 ft", "no", "a pressure switch" */
export function sayAssumedValue({ path, value }: Assumed, units: 'us' | 'metric'): string {
  const field = fieldAt(path);
  const kind = field?.kind ?? (LISTS.has(path) ? 'length' : 'text');
  if (kind === 'choice') return sayChoice(path, value);
  if (kind === 'text' || kind === 'flag' || kind === 'count') return value;
  const estimate = value.endsWith(ESTIMATE) ? ESTIMATE : '';
  const texts = value.slice(0, value.length - estimate.length).split(', ');
  return texts.map((text) => inUnits(text, kind, units)).join(', ') + estimate;
}

/** The same of what stands at a path of a plan: a text, a flag, a list, or nothing. */
export function sayValue(path: string, value: unknown, units: 'us' | 'metric'): string {
  if (value === undefined) return 'left out';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const text = Array.isArray(value) ? value.join(', ') || 'none' : String(value);
  return sayAssumedValue({ path, value: text }, units);
}

const LISTS = new Set(['string.checkValves', 'string.splices']);
const ESTIMATE = ' (estimate)';

/** As it stands where the unit is the reader's or everybody's; else turned into theirs. */
function inUnits(text: string, kind: QuantityKind, units: 'us' | 'metric'): string {
  const parsed = parseQuantity(text, kind);
  if (!parsed.ok) return text;
  if (kind === 'temperature') return show(units).temperature(parsed.si);
  if (kind === 'gauge') return parsed.unit === 'mm2' ? text.replace('mm2', 'mm²') : wireName(parsed.si, units);
  return isForeign(parsed.unit, units) ? (shown(parsed.si, parsed.unit, kind, show(units)) ?? text) : text;
}

function shown(si: number, unit: string, kind: QuantityKind, say: Show): string | null {
  switch (kind) {
    case 'length':
      return unit === 'mm' ? say.bore(si) : unit === 'in' || unit === 'cm' ? say.small(si) : say.length(si);
    case 'flow':
      return say.flow(si);
    case 'pressure':
      return say.pressure(si);
    case 'mass':
      return say.mass(si);
    case 'volume':
      return say.volume(si);
    case 'power':
      return say.power(si);
    case 'force':
      return say.hook(si);
    default:
      return null;
  }
}
