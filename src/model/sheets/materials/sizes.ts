/** Which fittings go with which pipe. */
import type { Context } from '../../explain/context.ts';
import type { PipeFacts } from '../../facts.ts';
import { fittingGap, fittingMatch } from '../../formulas/fittingMatch.ts';
import { engagedLength } from '../../formulas/threads.ts';
import { isBarbed, pipesWith } from '../../tables/pipeMaterials.ts';
import { findPipe, sizeSystem } from '../../tables/pipes.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';

const SITS = {
  match: 'fits',
  loose: 'sits loose',
  forced: 'must be forced',
  'does not enter': 'does not go in',
} as const;
const JOINED: Readonly<Record<string, string>> = {
  'inside diameter': 'insert fittings with clamps',
  'IPS outside diameter': 'fusion, compression, or threads where the wall allows',
  'metric outside diameter': 'compression fittings for metric pipe, or fusion',
  'CTS outside diameter': 'compression or stab fittings for copper tube size',
};

/** Play of an insert fitting of the usual system in a pipe; null for pipe without barbs. */
export function barbGap(pipe: PipeFacts): number | null {
  if (!isBarbed(pipe)) return null;
  const made = findPipe({ material: 'PE', standard: 'ASTM D2239', size: pipe.nominalSize });
  return known([made?.insideDiameter ?? null], (madeFor) => fittingGap({ pipeBore: pipe.insideDiameter, madeFor }));
}

export function sizeSystemTable(context: Context): SheetTable {
  const { facts, show } = context;
  const pipes = [
    { name: 'drop pipe', pipe: facts.dropPipe },
    ...(facts.house.line === null ? [] : [{ name: 'line to the house', pipe: facts.house.line }]),
  ];
  const [one, other] = pipes;
  const mixed =
    one !== undefined &&
    other !== undefined &&
    one.pipe.material === other.pipe.material &&
    sizeSystem(one.pipe.standard) !== sizeSystem(other.pipe.standard);
  return {
    key: 'sizeSystems',
    title: 'Size systems and what mates with them',
    columns: columns(
      ['pipe', 'Pipe'],
      ['standard', 'Standard'],
      ['system', 'Measured by'],
      ['bore', 'Bore'],
      ['outside', 'Outside'],
      ['joined', 'Joined by'],
      ['play', 'Play of a usual barb'],
      ['thread', 'Thread engaged (NPT)'],
      ['verdict', 'Usual barb'],
    ),
    rows: pipes.map(({ name, pipe }) => {
      const system = sizeSystem(pipe.standard);
      const gap = barbGap(pipe);
      const made = findPipe({ material: 'PE', standard: 'ASTM D2239', size: pipe.nominalSize });
      const word =
        gap === null || made === null
          ? 'no barb'
          : SITS[fittingMatch({ pipeBore: pipe.insideDiameter, madeFor: made.insideDiameter })];
      return row(
        word !== 'fits' && word !== 'no barb' ? 'does not do' : null,
        `${name}, ${pipe.nominalSize} ${pipe.material}`,
        pipe.standard,
        system ?? 'not known',
        cell(pipe.insideDiameter, show.bore),
        cell(pipe.outsideDiameter, show.bore),
        system === null
          ? 'ask its maker'
          : isBarbed(pipe) || system !== 'IPS outside diameter'
            ? (JOINED[system] ?? '')
            : `threads, or solvent cement for ${pipesWith(({ buried }) => buried === 'socket')}`,
        cell(gap, show.bore),
        cell(threadOf(pipe.nominalSize), show.bore),
        word,
      );
    }),
    source: 'ASTM D2239, D3035, D2737, D1785; ASME B1.20.1 (threads); limits of the play: no source',
    note: mixed
      ? 'Drop pipe and line are of two systems: one box of fittings will not serve both.'
      : 'Pipes of one name share fittings only within one system. A usual barb is one for ASTM D2239 pipe.',
  };
}

const threadOf = (nominalSize: string) => known([0], () => engagedLength(nominalSize));
