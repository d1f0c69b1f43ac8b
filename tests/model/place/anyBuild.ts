/** Any well, any of its parts standing, any cut-off, a liner, depths from any datum. */
import fc from 'fast-check';
import { valueAt, withValue, type Plan } from '../../../src/model/index.ts';
import { readPlan } from '../../../src/model/plan/readPlan.ts';
import { anyPlan } from '../../plans/anyPlan.ts';

const STANDING = ['pump.setting', 'top.depth', 'string', 'string.checkValves', 'wire.size', 'dropPipe', 'pump'];

/** The same wells with water, pump and screen anywhere from top to bottom. */
const anyDepths: fc.Arbitrary<Plan> = fc
  .record({
    plan: anyPlan,
    rest: fc.integer({ min: 3, max: 85 }),
    hangs: fc.integer({ min: 5, max: 110 }),
    screen: fc.integer({ min: 40, max: 92 }),
    falls: fc.integer({ min: 1, max: 30 }),
  })
  .map(({ plan, rest, hangs, screen, falls }) => {
    const depth = Number.parseFloat(plan.well.depth);
    const at = (share: number) => `${Math.max(Math.round((depth * share) / 100), 1)} ft`;
    const screened = valueAt(plan, 'well.intake.top') !== undefined;
    const isLevel = plan.water.pumping?.kind === 'level';
    return (
      [
        ['water.staticLevel', plan.water.staticLevel === 'unknown' ? 'unknown' : at(rest)],
        ...(isLevel ? [['water.pumping.level', at(rest + falls)] as const] : []),
        ...(valueAt(plan, 'pump.setting') === undefined ? [] : [['pump.setting', at(hangs)] as const]),
        ...(screened
          ? ([
              ['well.casing.bottom', at(screen)],
              ['well.intake.top', at(screen)],
              ['well.intake.bottom', at(screen + 7)],
            ] as const)
          : []),
      ] as const
    ).reduce((made, [path, to]) => withValue(made, path, to), plan);
  });

export const anyBuild: fc.Arbitrary<Plan> = fc
  .record({
    plan: fc.oneof(anyPlan, { arbitrary: anyDepths, weight: 3 }),
    standing: fc.subarray(STANDING, { maxLength: 2 }),
    word: fc.constantFrom('installed' as const, 'reported' as const, 'measured' as const),
    cutOff: fc.constantFrom(undefined, true, '60 ft', '150 ft'),
    height: fc.constantFrom('ground' as const, 'casing top' as const),
    ties: fc.constantFrom(undefined, '2 ft', '30 ft'),
    clamps: fc.constantFrom(undefined, 1),
    arrow: fc.constantFrom('up' as const, 'down' as const),
    liner: fc.constantFrom(undefined, '3 ft', '30 ft'),
  })
  .map(({ plan, standing, word, cutOff, height, ties, clamps, arrow, liner }) => {
    const status = Object.fromEntries(standing.map((path) => [path, word]));
    return (
      [
        ['well.depthsFrom', height],
        ['pump.lowLevelCutOff', cutOff],
        ['string.ties', ties],
        ['string.clampsPerJoint', clamps],
        ['string.arrow', arrow],
        ['well', liner === undefined ? plan.well : lined(plan, liner)],
        ['status', standing.length === 0 ? undefined : status],
      ] as const
    ).reduce((made, [path, value]) => withValue(made, path, value), plan);
  })
  .filter((plan) => readPlan(JSON.parse(JSON.stringify(plan))).ok);

/** A rock well with a liner hung in its casing. */
function lined({ well }: Plan, top: string): Plan['well'] {
  const { casing, ...rest } = well;
  if (casing === undefined || well.intake.kind !== 'open hole') return well;
  return { ...rest, casings: [casing, { material: 'PVC', size: '4 in', top, bottom: well.depth }] } as Plan['well'];
}
