/** Plans whose fields stand anywhere between their limits, ends included, or are unknown, or are left out. */
import fc from 'fast-check';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { fields } from '../../../src/model/plan/fields.ts';
import type { FieldInfo } from '../../../src/model/plan/fields.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import type { Plan } from '../../../src/model/plan/schema.ts';
import { parseQuantity, writeQuantity } from '../../../src/model/units.ts';
import { SAMPLES, sample } from './sample.ts';

/** A share of 0 is the least that a field may hold, 1 the most; between them small values are as likely as large ones. */
function valueOf(field: FieldInfo, share: number, pick: number): unknown {
  if (pick % 7 === 0) return undefined;
  if (pick % 7 === 1 && field.unknownAllowed) return 'unknown';
  const { kind, options, from, to } = field;
  if (kind === 'choice') return options?.[pick % options.length];
  if (kind === 'flag' || (field.orFlag && pick % 7 === 2)) return pick % 2 === 0;
  if (kind === 'count') return Number(from) + Math.round(share ** 3 * (Number(to) - Number(from)));
  if (kind === 'text') return undefined;
  if (options && pick % 7 === 2) return options[0];
  const least = parseQuantity(String(from), kind);
  const most = parseQuantity(String(to), kind);
  if (!least.ok || !most.ok) throw new Error(`${field.path} has no limits`);
  return writeQuantity(least.si + share ** 3 * (most.si - least.si), kind, most.unit);
}

/** Every plan reads: a change that would make it unreadable is passed over. */
export const edgePlan: fc.Arbitrary<Plan> = fc
  .tuple(
    fc.constantFrom(...SAMPLES),
    fc.array(
      fc.tuple(
        fc.constantFrom(...fields),
        fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })),
        fc.nat(),
      ),
      { maxLength: 12 },
    ),
  )
  .map(([name, changes]) =>
    changes.reduce((plan, [field, share, pick]) => {
      const changed = withValue(plan, field.path.replace('*', '0'), valueOf(field, share, pick));
      return readPlan(changed).ok ? changed : plan;
    }, sample(name)),
  );
