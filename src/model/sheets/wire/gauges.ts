/** Gauges for this plan and how far each goes; currents of motors by power and voltage. */
import { wireName } from '../../units.ts';
import type { Context } from '../../explain/context.ts';
import { ampacity, longestRun, requiredAmpacity, voltageDrop } from '../../formulas/wire.ts';
import { DROP_NOTE, DROP_WARNING } from '../../rules/electrical.ts';
import { lockedRotorCurrent, motorCurrent, RATED_POWERS } from '../../tables/motors.ts';
import { familyOf, usualWires } from '../../tables/wireSizes.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import type { Circuit } from './circuit.ts';

export function gaugeTable(context: Context, { current, tabled, length }: Circuit): SheetTable {
  const { facts, show } = context;
  const { phase, voltage } = facts.pump;
  const asked = known([tabled ?? current], requiredAmpacity);
  const family = familyOf(facts.wire.gauge);
  return {
    key: 'gauges',
    title: family === 'AWG' ? 'How far each gauge goes with this motor' : 'How far each size goes with this motor',
    columns: columns(
      ['gauge', family === 'AWG' ? 'Gauge' : 'Size'],
      ['far3', 'To 3 %'],
      ['far5', 'To 5 %'],
      ['drop', 'Drop here'],
      ...(family === 'AWG'
        ? ([
            ['cold', 'Carries at 60 °C'],
            ['warm', 'Carries at 75 °C'],
          ] as const)
        : ([['cold', 'Carries']] as const)),
      ['verdict', 'Does it do?'],
    ),
    rows: usualWires(family).map((gauge) => {
      const far = (share: number) =>
        known([current], (amperes) => longestRun({ phase, voltage, current: amperes, gauge, share }));
      const drop = known(
        [current, length],
        (amperes, way) => voltageDrop({ phase, current: amperes, length: way, gauge }) / voltage,
      );
      const [cold, warm] = [ampacity(gauge, 60), ampacity(gauge, 75)];
      const word =
        asked === null
          ? 'current not known'
          : warm < asked
            ? 'too thin for the current'
            : drop !== null && drop > DROP_WARNING
              ? 'drops too much'
              : cold < asked
                ? 'only with 75 °C terminals'
                : drop === null
                  ? 'carries it; length not known'
                  : 'does';
      const bad = word === 'too thin for the current' || word === 'drops too much';
      return row(
        gauge === facts.wire.gauge ? 'this plan' : bad ? 'does not do' : null,
        wireName(gauge, context.units),
        cell(far(DROP_NOTE), show.depth),
        cell(far(DROP_WARNING), show.depth),
        cell(drop, show.percent),
        cell(cold, show.current),
        ...(family === 'AWG' ? [cell(warm, show.current)] : []),
        word,
      );
    }),
    source:
      family === 'AWG'
        ? 'NFPA 70 (NEC), Chapter 9, Table 8 (stranded copper, 75 °C), 430.22 and Table 310.16 (60 °C column from memory)'
        : 'IEC 60228 (2004), Table 3 (class 5, warmed to 75 °C); IEC 60364-5-52 (2009), Table B.52.4, method B2; NFPA 70 (NEC), 430.22',
    note: `One way, panel to motor along the wire${length === null ? '' : `; here ${show.length(length)}`}.`,
  };
}

const SUPPLIES = [
  { phase: 1, voltage: 115 },
  { phase: 1, voltage: 208 },
  { phase: 1, voltage: 230 },
  { phase: 3, voltage: 208 },
  { phase: 3, voltage: 230 },
  { phase: 3, voltage: 460 },
] as const;

/** Full load, and in brackets with the rotor locked; two numbers a cell would not be plain, so two columns a supply. */
export function currentTable(context: Context): SheetTable {
  const { facts, show } = context;
  const heads = SUPPLIES.flatMap(({ phase, voltage }): [string, string][] => [
    [`full${phase}${voltage}`, `${voltage} V, ${phase} phase`],
    [`locked${phase}${voltage}`, `${voltage} V, ${phase} phase, at start`],
  ]);
  return {
    key: 'currents',
    title: 'Motor currents by the code’s tables',
    columns: columns(['power', 'Power'], ...heads),
    rows: RATED_POWERS.map((power) =>
      row(
        facts.pump.power !== null && Math.abs(facts.pump.power / power - 1) < 0.02 ? 'this plan' : null,
        cell(power, show.power),
        ...SUPPLIES.flatMap((supply) => [
          cell(motorCurrent({ power, ...supply }), show.current),
          cell(lockedRotorCurrent({ power, ...supply }), show.current),
        ]),
      ),
    ),
    source:
      'NFPA 70 (NEC), Tables 430.248 and 430.250 (full load); 2008 edition, Table 430.251(A) and (B) (rotor locked)',
    note: 'Submersible motors often draw more at their service factor: the nameplate overrules the table for the drop.',
  };
}
