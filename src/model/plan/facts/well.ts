/** The well of a plan in SI, from the ground. */
import type { CasingFacts, ScreenFacts, WellFacts } from '../../facts.ts';
import type { Metres } from '../../si.ts';
import { findCasing } from '../../tables/casings.ts';
import { inchNumber, millimetreNumber } from '../../tables/nominalSize.ts';
import { inches } from '../../units.ts';
import type { Plan } from '../schema.ts';
import type { Take } from '../take.ts';

type WellPlan = Plan['well'];
type CasingPlan = NonNullable<WellPlan['casing']>;

/** Wall of a casing that no table has, of which only the bore was measured. Common practice, no source. */
const UNLISTED_WALL = inches(0.28);

/** The casings, outermost first, each with the path it was typed at. */
export function casingPlans(well: WellPlan): readonly { path: string; casing: CasingPlan }[] {
  if (well.casing) return [{ path: 'well.casing', casing: well.casing }];
  return (well.casings ?? []).map((casing, index) => ({ path: `well.casings.${index}`, casing }));
}

/**
 * @param pumped  flow of a pumping test, as typed: what the well gave even where nobody wrote down how far its water fell,
 *   and so its yield where no other is said
 */
export function wellFacts(well: WellPlan, casingHeight: Metres, pumped: string | undefined, take: Take): WellFacts {
  const depth = take.depth(well.depth) ?? 0;
  const soundedDepth = take.depth(well.soundedDepth);
  const kind = intakeKind(well.intake);
  if (kind === null) take.unknown.push('well.intake.kind');
  const diameter = take.fact('well.intake.diameter', well.intake.diameter, 'length');
  const said = take.maybe(well.yield, 'flow');
  return {
    depth,
    soundedDepth,
    bottom: soundedDepth ?? depth,
    casings: casingPlans(well).map(({ path, casing }) => casingFacts(path, casing, casingHeight, take)),
    casingHeight,
    groutBottom: take.depthFact('well.grout.bottom', well.grout?.bottom),
    intake: { kind, diameter, screens: screenFacts(well, take) },
    inflows: inflowFacts(well, take),
    yield: said ?? take.fact('well.yield', pumped, 'flow'),
    yieldFrom: well.yieldFrom ?? (said === null && pumped !== undefined ? 'pump' : null),
    layers: layerFacts(well, take),
    flowControl: well.flowControl ?? null,
    inPit: take.flag('well.inPit', well.inPit),
    tested: well.tested ?? null,
  };
}

function casingFacts(path: string, casing: CasingPlan, casingHeight: Metres, take: Take): CasingFacts {
  const { material, size, schedule } = casing;
  const measured = take.maybe(casing.insideDiameter, 'length');
  const listed = size === undefined || material === undefined ? null : findCasing({ material, size, schedule });
  if (material === undefined) take.unknown.push(`${path}.material`);
  const insideKnown = measured !== null || listed !== null;
  if (!insideKnown && size === undefined) take.unknown.push(`${path}.size`);
  else if (!insideKnown) take.unknown.push(`${path}.insideDiameter`);
  if (listed && schedule === undefined && measured === null) take.assume(`${path}.schedule`, listed.schedule);
  const insideDiameter = measured ?? listed?.insideDiameter ?? drawnDiameter(size);
  const height = take.maybe(casing.height, 'length') ?? casingHeight;
  return {
    material: material ?? 'other',
    materialKnown: material !== undefined,
    nominalSize: size ?? '',
    schedule: schedule ?? listed?.schedule ?? '',
    insideDiameter,
    insideKnown,
    // A bore measured wider than the table's outside says that it is another pipe than its name.
    outsideDiameter: Math.max(listed?.outsideDiameter ?? 0, insideDiameter + UNLISTED_WALL),
    top: take.depth(casing.top) ?? -height,
    bottom: take.depthFact(`${path}.bottom`, casing.bottom),
  };
}

/** Something to draw where nobody knows the bore: what the size is called, else the width of most wells. No figure rests on it. */
function drawnDiameter(size: string | undefined): Metres {
  const millimetres = size === undefined ? null : millimetreNumber(size);
  if (millimetres !== null) return millimetres / 1000;
  return inches((size === undefined ? null : inchNumber(size, true)) ?? 6);
}

/** Who gives a screen's depth has said that there is one. */
function intakeKind({ kind, screens = [], top, bottom }: WellPlan['intake']): WellFacts['intake']['kind'] {
  const hasScreen = screens.length > 0 || top !== undefined || bottom !== undefined;
  return kind ?? (hasScreen ? 'screen' : null);
}

function screenFacts({ intake }: WellPlan, take: Take): ScreenFacts[] {
  const kind = intakeKind(intake);
  if (kind === null || kind === 'open hole' || kind === 'dug') return [];
  const typed = intake.screens ?? [];
  if (typed.length > 0) {
    return typed.flatMap((screen, i) => {
      const top = take.depthFact(`well.intake.screens.${i}.top`, screen.top);
      const bottom = take.depthFact(`well.intake.screens.${i}.bottom`, screen.bottom);
      const slot = take.maybe(screen.slot, 'length');
      const openArea = take.fact(`well.intake.screens.${i}.openArea`, screen.openArea, 'ratio');
      return top === null || bottom === null ? [] : [{ top, bottom, slot, openArea }];
    });
  }
  const top = take.depthFact('well.intake.top', intake.top);
  const bottom = take.depthFact('well.intake.bottom', intake.bottom);
  if (top === null || bottom === null) return [];
  take.unknown.push('well.intake.screens.0.openArea');
  return [{ top, bottom, slot: null, openArea: null }];
}

function inflowFacts({ inflows }: WellPlan, take: Take): WellFacts['inflows'] {
  if (inflows === undefined) {
    take.unknown.push('well.inflows');
    return null;
  }
  return inflows
    .flatMap((inflow, i) => {
      const depth = take.depthFact(`well.inflows.${i}.depth`, inflow.depth);
      return depth === null ? [] : [{ depth, share: take.maybe(inflow.share, 'ratio') }];
    })
    .sort((one, other) => one.depth - other.depth);
}

function layerFacts({ layers }: WellPlan, take: Take): WellFacts['layers'] {
  if (layers === undefined) take.unknown.push('well.layers');
  let top = 0;
  return (layers ?? []).map((layer) => {
    const bottom = take.depth(layer.bottom) ?? top;
    const fact = { material: layer.material, top, bottom };
    top = bottom;
    return fact;
  });
}
