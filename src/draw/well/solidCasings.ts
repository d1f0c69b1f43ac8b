/** Every solid wall in the hole: the casings, and the blank pipe that holds and follows a screen. */
import type { CasingFacts } from '../../model/facts.ts';
import type { Solution } from '../../model/solution.ts';
import type { CasingPlace } from '../parts/casing.ts';

export interface SolidCasing extends CasingPlace {
  readonly key: string;
  readonly material: CasingFacts['material'];
}

export function solidCasings({ facts, bore }: Solution): SolidCasing[] {
  const { casings } = facts.well;
  const last = casings[casings.length - 1];
  const solid = casings.map((casing, i): SolidCasing => ({
    key: i === 0 ? 'casing' : 'liner',
    material: casing.material,
    insideRadius: casing.insideDiameter / 2,
    outsideRadius: casing.outsideDiameter / 2,
    top: casing.top,
    bottom: casing.bottom,
    shoe: i === 0 && casing.material === 'steel' && facts.well.intake.kind !== 'dug',
  }));
  for (const stretch of bore) {
    if (stretch.kind !== 'casing' || stretch.casing !== undefined) continue;
    const sump = bore.some((each) => each.kind === 'screen' && each.bottom <= stretch.top + 1e-6);
    solid.push({
      key: sump ? 'sump' : 'riser',
      material: last?.material ?? 'steel',
      insideRadius: stretch.insideRadius,
      outsideRadius: stretch.outsideRadius,
      top: stretch.top,
      bottom: stretch.bottom,
      shoe: false,
    });
  }
  return solid;
}
