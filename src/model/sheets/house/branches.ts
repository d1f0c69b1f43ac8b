/** Further places that the line feeds: what their pipes lose, and the pressure that is left there. */
import type { Context } from '../../explain/context.ts';
import { pipeFriction } from '../../figures/head.ts';
import { velocityIn } from '../../formulas/friction.ts';
import { parseQuantity } from '../../units.ts';
import type { QuantityKind } from '../../units.ts';
import { findPipe } from '../../tables/pipes.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';

export function branchTable(context: Context): SheetTable | null {
  const { facts, solution, show, system, waterWeight } = context;
  const branches = solution.plan.house?.branches;
  if (branches === undefined || branches.length === 0) return null;
  return {
    key: 'branches',
    title: 'Branches, with the tank at cut-in',
    columns: columns(
      ['name', 'Place'],
      ['flow', 'Flow'],
      ['pipe', 'Pipe'],
      ['velocity', 'Velocity'],
      ['loss', 'Lost in the pipe'],
      ['pressure', 'Pressure there'],
    ),
    rows: branches.map(({ name, demand, distance, rise, line }, i) => {
      const flow = typed(demand, 'flow');
      const length = typed(distance, 'length');
      const height = typed(rise, 'length');
      const pipe =
        line === undefined
          ? facts.house.line
          : findPipe({
              material: line.material,
              size: line.size,
              standard: line.standard,
              ratio: line.ratio,
              resin: line.resin,
              rating: typed(line.rating, 'pressure'),
            });
      const speed = known([flow], (q) => (pipe === null ? null : velocityIn(q, pipe.insideDiameter)));
      const loss = known([flow, length], (q, l) => (pipe === null ? null : pipeFriction(pipe, q, l, system.water)));
      const pressure = known(
        [loss, height, facts.house.rise],
        (lost, up, tank) =>
          (facts.house.kind === 'open tank' ? 0 : facts.house.cutIn) - waterWeight * (up - tank + lost),
      );
      const label = pipe === null ? '–' : `${pipe.nominalSize} ${pipe.material}`;
      const mark = pressure !== null && pressure <= 0 ? 'does not do' : null;
      return row(
        mark,
        name ?? `branch ${i + 1}`,
        cell(flow, show.flow),
        label,
        cell(speed, show.velocity),
        cell(loss, show.head),
        cell(pressure, show.pressure),
      );
    }),
    source: 'Darcy-Weisbach with Colebrook-White; hydrostatics',
    note: 'Each branch is taken to leave at the tank and to draw alone; fittings are left out. Without a pipe of its own it has that of the line.',
  };
}

function typed(text: string | undefined, kind: QuantityKind): number | null {
  if (text === undefined) return null;
  const parsed = parseQuantity(text, kind);
  return parsed.ok ? parsed.si : null;
}
