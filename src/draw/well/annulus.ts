/** What fills the ring round the casing: grout, what was put back under it, gravel round a screen. */
import { ANNULUS } from '../../model/annulus.ts';
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { drawBackfill, drawGravelPack, drawGrout, PACK_OVER_SCREEN } from '../parts/grout.ts';
import type { Shape } from '../scene.ts';
import { place, within, type Stage } from './stage.ts';

/** Outer edge of what is drilled, casing and annulus together, at a depth. */
export function drilledRadius({ facts, bore }: Solution, depth: Metres): Metres {
  const outer = facts.well.casings[0];
  // Round a driven casing the ground was never opened.
  const annulus = facts.well.intake.kind === 'driven point' ? 0 : ANNULUS;
  if (outer !== undefined && (outer.bottom === null || depth < outer.bottom))
    return outer.outsideDiameter / 2 + annulus;
  const stretch = bore.find((each) => each.bottom >= depth) ?? bore[bore.length - 1];
  const radius = stretch?.outsideRadius ?? 0.08;
  return stretch?.kind === 'openHole' ? radius : radius + annulus;
}

export function drawAnnulus(stage: Stage): Shape[] {
  const {
    solution: { facts, bore },
    pen,
  } = stage;
  const { casings, groutBottom, intake, bottom } = facts.well;
  const outer = casings[0];
  if (outer === undefined || intake.kind === 'driven point') return [];
  const shapes: Shape[] = [];
  const insideRadius = outer.outsideDiameter / 2;
  const ring = { insideRadius, outsideRadius: insideRadius + ANNULUS };
  const foot = outer.bottom ?? intake.screens[0]?.top ?? bottom;
  const grouted = Math.min(groutBottom ?? foot, foot);
  if (within(stage, 0, grouted)) {
    shapes.push(drawGrout('grout', pen, { ...ring, top: 0, bottom: grouted }, groutBottom !== null));
    place(
      stage,
      { key: 'grout', kind: 'grout', top: 0, bottom: grouted },
      { left: pen.x(insideRadius), right: pen.x(ring.outsideRadius) },
    );
  }
  const screen = intake.kind === 'screen' ? bore.find(({ kind }) => kind === 'screen') : undefined;
  const packTop = screen === undefined ? Infinity : Math.max(screen.top - PACK_OVER_SCREEN, groutBottom ?? -Infinity);
  const filled = Math.min(foot, packTop);
  if (groutBottom !== null && grouted < filled && within(stage, grouted, filled))
    shapes.push(drawBackfill('annulus', pen, { ...ring, top: grouted, bottom: filled }));
  if (screen !== undefined && within(stage, packTop, bottom)) {
    const pack = { ...ring, insideRadius: screen.outsideRadius, top: packTop, bottom };
    shapes.push(drawGravelPack('gravelPack', pen, pack));
  }
  return shapes;
}

/** Outer edge of the gravel round a screen; of the screen itself where it was driven. */
export function packRadius({ facts }: Solution, screen: { readonly outsideRadius: Metres }): Metres {
  const casing = facts.well.casings[0];
  if (facts.well.intake.kind !== 'screen' || casing === undefined) return screen.outsideRadius;
  return casing.outsideDiameter / 2 + ANNULUS;
}
