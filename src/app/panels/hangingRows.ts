/** The lengths and loads that the panel of what hangs lists: how each is called, and whose figure it tells. */
import { wireName } from '../../model/units.ts';
import type { Solution, ValueName } from '../../model/solution.ts';

export interface HangingRow {
  readonly label: string;
  readonly more: string;
  readonly name: ValueName;
  /** Fields that `more` tells. */
  readonly of?: readonly string[];
}

export function lengthRows({ facts }: Pick<Solution, 'facts'>): readonly HangingRow[] {
  const { dropPipe, pump, rope, top, wire } = facts;
  return [
    {
      label: 'Drop pipe to cut',
      more: `${dropPipe.nominalSize} ${dropPipe.material}; measure your own fittings first`,
      name: 'dropPipeToCut',
      of: ['dropPipe.size', 'dropPipe.material'],
    },
    { label: 'Drop pipe, hanging length', more: 'with fittings and valves', name: 'dropPipeCutLength' },
    ...(top.kind === 'pitless'
      ? [{ label: 'Lift-out pipe', more: 'goes back out', name: 'liftPipeLength' } as const]
      : []),
    {
      label: 'Wire in the well',
      more: `${wireName(wire.gauge, facts.units)}, ${pump.wires} and ground`,
      name: 'wireLength',
      of: ['wire.size', 'pump.wires'],
    },
    ...(rope === null ? [] : [{ label: 'Rope', more: rope.material, name: 'ropeLength' } as const]),
  ];
}

export const LOAD_ROWS: readonly HangingRow[] = [
  { label: 'Going in', more: 'pipe open, water inside as outside', name: 'hangLoadLowering' },
  { label: 'Hanging full, pump off', more: '', name: 'hangLoadAtRest' },
  { label: 'Pumping', more: '', name: 'hangLoadPumping' },
  { label: 'Full, with no water round it', more: 'the most it can be', name: 'hangLoadDry' },
];
