/** Whether the water comes straight out of rock: an open hole, or a perforated liner that only keeps pieces of it back. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { meets } from './grace.ts';
import { isFirmRock } from './ground.ts';

/** Where nobody said how the water comes in (`intakeKind`), that is to be asked first. */
export function intakeUnsaid({ well }: Pick<Facts, 'well'>): boolean {
  return well.intake.kind === null;
}

/** True also for screens of which the layers say that they stand in firm rock: no sand comes through them. */
export function isOpenRock({ well }: Pick<Facts, 'well'>): boolean {
  const { kind, screens } = well.intake;
  if (kind === 'open hole') return true;
  return (
    kind === 'screen' && screens.length > 0 && screens.every(({ top, bottom }) => inRock(well.layers, top, bottom))
  );
}

function inRock(layers: Facts['well']['layers'], top: Metres, bottom: Metres): boolean {
  const rock = layers
    .filter((layer) => isFirmRock(layer) === true)
    .reduce((sum, layer) => sum + Math.max(Math.min(layer.bottom, bottom) - Math.max(layer.top, top), 0), 0);
  return bottom > top && meets(rock - (bottom - top), 'length');
}
