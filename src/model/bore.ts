/** What lines the hole, from the casing top to the bottom: casing, screen or open rock, stretch by stretch. */
import type { CasingFacts, Facts } from './facts.ts';
import type { Metres } from './si.ts';
import type { BoreStretch } from './solution.ts';

/** Stretches without gaps, top down. The innermost casing counts where several stand in one another. */
export function boreOf({ well }: Facts): BoreStretch[] {
  const { casings, intake, bottom, casingHeight } = well;
  const casingTop = -casingHeight;
  const screens = intake.screens;
  const screened = intake.kind === 'screen' || intake.kind === 'driven point';
  const first = casings[0];
  const last = casings[casings.length - 1];
  const cuts = new Set<Metres>([casingTop, bottom]);
  const ends = casings.map((casing) => casing.bottom ?? screens[0]?.top ?? bottom);
  casings.forEach((casing, i) => cuts.add(casing.top).add(ends[i] ?? bottom));
  for (const screen of screens) cuts.add(screen.top).add(screen.bottom);
  const depths = [...cuts].filter((depth) => depth >= casingTop && depth <= bottom).sort((a, b) => a - b);

  const stretchAt = (top: Metres, end: Metres): BoreStretch => {
    const middle = (top + end) / 2;
    const screen = screens.find((each) => each.top <= middle && middle <= each.bottom);
    const pipe = innermost(casings, ends, middle);
    const wall = last ? (last.outsideDiameter - last.insideDiameter) / 2 : 0;
    const holeRadius = (intake.diameter ?? last?.insideDiameter ?? first?.insideDiameter ?? 0.1) / 2;
    const known = intake.diameter !== null;
    if (screen)
      return { kind: 'screen', top, bottom: end, insideRadius: holeRadius, outsideRadius: holeRadius + wall, known };
    if (pipe) {
      const casing = casings[pipe.index];
      return {
        kind: 'casing',
        top,
        bottom: end,
        insideRadius: pipe.casing.insideDiameter / 2,
        outsideRadius: pipe.casing.outsideDiameter / 2,
        casing: pipe.index,
        known: casing?.bottom !== null && pipe.casing.insideKnown,
      };
    }
    // Between casing and screen, and below a screen, stands blank pipe of the screen's bore: the riser and the sump.
    if (screened)
      return { kind: 'casing', top, bottom: end, insideRadius: holeRadius, outsideRadius: holeRadius + wall, known };
    // A width of which nobody said whether it is the hole's or a screen's is not known to be either's.
    const open = known && intake.kind !== null;
    return { kind: 'openHole', top, bottom: end, insideRadius: holeRadius, outsideRadius: holeRadius, known: open };
  };

  const stretches: BoreStretch[] = [];
  for (let i = 0; i + 1 < depths.length; i++) {
    const top = depths[i] as Metres;
    const end = depths[i + 1] as Metres;
    if (end > top) stretches.push(stretchAt(top, end));
  }
  return stretches;
}

function innermost(casings: readonly CasingFacts[], ends: readonly Metres[], depth: Metres) {
  for (let index = casings.length - 1; index >= 0; index--) {
    const casing = casings[index];
    if (casing && casing.top <= depth && depth <= (ends[index] ?? depth)) return { casing, index };
  }
  return null;
}

/** Inside radius at a depth; the nearest stretch answers above the casing top and below the bottom. */
export function boreRadiusAt(bore: readonly BoreStretch[], depth: Metres): Metres {
  for (const stretch of bore) if (depth <= stretch.bottom) return stretch.insideRadius;
  return bore[bore.length - 1]?.insideRadius ?? 0;
}

/** Largest inside radius between two depths: where the water passes slowest. */
export function widestBetween(bore: readonly BoreStretch[], top: Metres, bottom: Metres): Metres {
  let widest = 0;
  for (const stretch of bore) {
    if (stretch.bottom > top && stretch.top < bottom) widest = Math.max(widest, stretch.insideRadius);
  }
  return widest || boreRadiusAt(bore, top);
}
