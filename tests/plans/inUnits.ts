/** A plan retyped in one kind of unit: every quantity in it as a reader of that kind would have written it. */
import { fieldAt } from '../../src/model/plan/fields.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { UNITS, isForeign, parseQuantity, writeQuantity, type QuantityKind } from '../../src/model/units.ts';

/** Lists of heights stand in no field of their own. */
const HEIGHTS = /^string\.(?:checkValves|splices)\.\d+$/;
/** Units of the other kind that stand for one that both have. */
const TWINS: Readonly<Record<'us' | 'metric', Readonly<Record<string, string>>>> = {
  us: { mm: 'in', cm: 'in', bar: 'psi', kgf: 'lbf', kN: 'lbf' },
  metric: { in: 'mm', 'ft in': 'm', psi: 'bar' },
};
const NEUTRAL = new Set<QuantityKind>([
  'time',
  'voltage',
  'current',
  'gauge',
  'ratio',
  'concentration',
  'conductivity',
]);

export function inUnits(plan: Plan, units: 'us' | 'metric'): Plan {
  return { ...(retyped(plan, '', units) as Plan), units };
}

function retyped(value: unknown, path: string, units: 'us' | 'metric'): unknown {
  if (typeof value === 'string') return retypedText(value, path, units);
  const under = (key: string) => (path === '' ? key : `${path}.${key}`);
  if (Array.isArray(value)) return value.map((each, i) => retyped(each, under(String(i)), units));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, retyped(each, under(key), units)]));
}

function retypedText(text: string, path: string, units: 'us' | 'metric'): string {
  const kind = HEIGHTS.test(path) ? 'length' : fieldAt(path)?.kind;
  if (kind === undefined || !(kind in UNITS) || NEUTRAL.has(kind as QuantityKind)) return text;
  const quantity = kind as QuantityKind;
  const read = parseQuantity(text, quantity);
  if (!read.ok || !isForeign(read.unit, units)) return text;
  const [customary, metric] = UNITS[quantity];
  const unit = TWINS[units][read.unit] ?? (units === 'us' ? customary : metric)?.name ?? read.unit;
  return writeQuantity(read.si, quantity, unit, stepOf(unit));
}

/** What one would type: no more figures than the unit is read in. SI; undefined keeps them all. */
function stepOf(unit: string): number | undefined {
  if (unit === 'm') return 0.01;
  if (unit === 'mm') return 1e-5;
  if (unit === 'bar') return 1000;
  return unit === 'L/min' ? 0.1 / 60000 : undefined;
}
