/** Friction in a pipe by both methods, for a hundred feet (or metres), and its fittings one by one. */
import type { PipeFacts } from '../../facts.ts';
import type { Context } from '../../explain/context.ts';
import { gravityTerm } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { pipeFriction, pipeFrictionHazenWilliams } from '../../figures/head.ts';
import {
  darcyFactor,
  fittingHead,
  HAZEN_WILLIAMS,
  insertFittingLoss,
  reynoldsNumber,
  velocityIn,
} from '../../formulas/friction.ts';
import { INSERT_BORE_RATIO } from '../../string/lengths.ts';
import { FITTING_LOSS } from '../../tables/fittingLosses.ts';
import { MOST_VELOCITY } from '../../rules/pipeNeeds.ts';
import { either, feet, toFeet } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure, SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { isBarbed, isBuriedOnBarbs } from '../../tables/pipeMaterials.ts';

export function frictionFigures(context: Context, key: string, name: string, pipe: PipeFacts): SheetFigure[] {
  const { facts, units, system } = context;
  const { demand } = facts.house;
  const hundred = units === 'us' ? feet(100) : 100;
  const per = units === 'us' ? '100 ft' : '100 m';
  const { kinematicViscosity } = system.water;
  const bore = pipe.insideDiameter;
  const velocity = known([demand], (flow) => velocityIn(flow, bore));
  const reynolds = known([demand], (flow) => reynoldsNumber({ flow, insideDiameter: bore, kinematicViscosity }));
  const factor = known([reynolds], (number) => darcyFactor(number, pipe.roughness / bore));
  const darcy = known([demand], (flow) => pipeFriction(pipe, flow, hundred, system.water));
  const hazen = known([demand], (flow) => pipeFrictionHazenWilliams(pipe, flow, hundred));
  const missing = [noDemand(context)];
  return [
    figure(
      context,
      {
        key: `${key}Velocity`,
        title: `Velocity in the ${name}`,
        symbol: 'v',
        value: velocity,
        as: 'velocity',
        missing,
      },
      () => ({
        terms: [term('Q', 'peak flow needed', demand, 'flow'), term('d', 'bore', bore, 'bore')],
        steps: [step('v', '4 × Q / (π × d²)', velocity, 'velocity')],
        range: within(
          `up to ${either(units, '5.6 ft/s, which is about 15 gpm', '1.7 m/s, which is about 57 L/min')} in 1 in and ${either(units, '25 gpm', '95 L/min')} in 1-1/4 in pipe`,
          velocity === null ? null : velocity <= MOST_VELOCITY,
        ),
        source: 'continuity; limit: common practice, no source',
      }),
    ),
    figure(
      context,
      {
        key: `${key}FrictionDarcy`,
        title: `Friction in ${per} of the ${name}, Darcy-Weisbach`,
        symbol: 'h',
        value: darcy,
        as: 'length',
        missing,
      },
      () => ({
        terms: [
          term(
            'f',
            `friction factor at Reynolds number ${reynolds === null ? 'not known' : Math.round(reynolds)}`,
            factor,
            'number',
          ),
          term('L', per, hundred, 'length'),
          term('d', 'bore', bore, 'bore'),
          term('v', 'velocity', velocity, 'velocity'),
          gravityTerm,
        ],
        steps: [step('h', 'f × L / d × v² / (2 × g)', darcy, 'length')],
        range: within(
          'water at its temperature, pipe as new',
          reynolds === null ? null : reynolds < 2000 || reynolds > 4000,
        ),
        source:
          'Darcy-Weisbach with Colebrook-White (1939), J. Inst. Civil Eng. 11, 133; EPANET 2.2 User Manual, ch. 3',
      }),
    ),
    figure(
      context,
      {
        key: `${key}FrictionHazenWilliams`,
        title: `Friction in ${per} of the ${name}, Hazen-Williams`,
        symbol: 'h',
        value: hazen,
        as: 'length',
        missing,
      },
      () => ({
        terms: [
          term('k', 'constant of the method', HAZEN_WILLIAMS, 'hazenWilliams'),
          term('L', per, hundred, 'length'),
          term('Q', 'peak flow needed', demand, 'flow'),
          term('C', 'coefficient of the pipe', pipe.hazenWilliams, 'number'),
          term('d', 'bore', bore, 'bore'),
        ],
        steps: [step('h', 'k × L × (Q / C)^1.852 / d^4.871', hazen, 'length')],
        range: within(
          'turbulent flow; it knows no temperature and reads low in small pipe with cold water',
          reynolds === null ? null : reynolds > 4000,
        ),
        source: 'EPANET 2.2 User Manual, ch. 3',
      }),
    ),
  ];
}

export interface FittingLine {
  readonly what: string;
  readonly count: number;
  readonly loss: number;
  readonly pipe: PipeFacts;
  readonly at: string;
}

/** Every fitting that the friction of fittings counts, each on the velocity of its own pipe. */
export function fittingLines({ facts }: Context): readonly FittingLine[] {
  const { dropPipe, house, string, top } = facts;
  const insert = insertFittingLoss(INSERT_BORE_RATIO);
  const lines: FittingLine[] = [];
  const add = (what: string, count: number, loss: number, pipe: PipeFacts, at: string) => {
    if (count > 0) lines.push({ what, count, loss, pipe, at });
  };
  add('check valve', string.checkValves.length, FITTING_LOSS.checkValve, dropPipe, 'drop pipe');
  add('insert fitting', isBarbed(dropPipe) ? 2 : 0, insert, dropPipe, 'drop pipe');
  if (top.kind === 'pitless') add('pitless adapter', 1, FITTING_LOSS.pitlessAdapter, dropPipe, 'drop pipe');
  else {
    add('tee, through its branch', 1, FITTING_LOSS.teeThroughBranch, dropPipe, 'drop pipe');
    add('elbow', 1, FITTING_LOSS.elbow, dropPipe, 'drop pipe');
  }
  if (house.line === null) return lines;
  add('insert fitting', isBuriedOnBarbs(house.line) ? 2 : 0, insert, house.line, 'line');
  add('check valve', string.valveBetweenTopAndTank ? 1 : 0, FITTING_LOSS.checkValve, house.line, 'line');
  return lines;
}

export function fittingTable(context: Context): SheetTable {
  const { facts, show } = context;
  const { demand } = facts.house;
  return {
    key: 'fittings',
    title: 'Lost in each fitting, at the peak flow',
    columns: columns(
      ['fitting', 'Fitting'],
      ['where', 'Where'],
      ['count', 'Count'],
      ['k', 'K'],
      ['velocity', 'Velocity'],
      ['head', 'Head lost'],
    ),
    rows: fittingLines(context).map(({ what, count, loss, pipe, at }) => {
      const velocity = known([demand], (flow) => velocityIn(flow, pipe.insideDiameter));
      const head = known([velocity], (speed) => count * fittingHead(loss, speed));
      return row(
        null,
        what,
        at,
        cell(count, String),
        cell(loss, (k) => k.toFixed(2)),
        cell(velocity, show.velocity),
        cell(head, (h) => fine(h, show.units)),
      );
    }),
    source:
      'EPANET 2.2 User Manual, ch. 3, minor loss coefficients; insert fitting: contraction and expansion at a bore of 0.80; pitless adapter: estimate, no source',
    note:
      facts.house.line === null
        ? 'The line is not known: its fittings are not counted.'
        : 'Head lost is K v²/(2 g) for all of the count.',
  };
}

/** Heads of a hand's width: the hundredths count. */
const fine = (head: number, units: 'us' | 'metric') =>
  units === 'us' ? `${toFeet(head).toFixed(2)} ft` : `${head.toFixed(3)} m`;
