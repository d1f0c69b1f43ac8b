/** Which nominal sizes would do in place of a pipe. */
import type { Context } from '../../explain/context.ts';
import { pipeFriction, pipeFrictionHazenWilliams } from '../../figures/head.ts';
import { velocityIn } from '../../formulas/friction.ts';
import { findPipe, pipeSizes } from '../../tables/pipes.ts';
import { MOST_VELOCITY } from '../../rules/pipeNeeds.ts';
import { bornePressure, isThreaded, isTooThinForThreads } from '../../rules/pipeRating.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import type { PipeAtWork } from './strength.ts';
import { either } from '../../units.ts';

export function sizeTable(context: Context, { key, place, name, pipe, length, pressure }: PipeAtWork): SheetTable {
  const { facts, show, system } = context;
  const { demand } = facts.house;
  const threaded = isThreaded(pipe, place);
  const rows = pipeSizes(pipe.standard).map((size) => {
    const { material, standard, wallClass, resin } = pipe;
    const other =
      findPipe({ material, standard, size, ratio: wallClass, resin }) ?? findPipe({ material, standard, size, resin });
    const velocity = known([demand], (flow) => (other === null ? null : velocityIn(flow, other.insideDiameter)));
    const darcy = known([demand, length], (flow, l) =>
      other === null ? null : pipeFriction(other, flow, l, system.water),
    );
    const hazen = known([demand, length], (flow, l) =>
      other === null ? null : pipeFrictionHazenWilliams(other, flow, l),
    );
    const rating = other === null ? null : bornePressure(other, place, facts);
    const fast = velocity !== null && velocity > MOST_VELOCITY;
    const thin = threaded && other !== null && isTooThinForThreads(other);
    const weak = rating !== null && pressure !== null && rating < pressure;
    const word = fast
      ? 'too fast'
      : thin
        ? 'too thin for threads'
        : weak
          ? 'too weak'
          : velocity === null
            ? 'flow not known'
            : 'does';
    const mark = size === pipe.nominalSize ? 'this plan' : fast || thin || weak ? 'does not do' : null;
    return row(
      mark,
      size,
      cell(other?.insideDiameter ?? null, show.bore),
      cell(velocity, show.velocity),
      cell(darcy, show.head),
      cell(hazen, show.head),
      cell(rating, show.pressure),
      word,
    );
  });
  return {
    key: `${key}Sizes`,
    title: `Sizes for the ${name}, ${pipe.standard}${pipe.wallClass === null ? '' : ` ${pipe.wallClass}`}`,
    columns: columns(
      ['size', 'Size'],
      ['bore', 'Bore'],
      ['velocity', 'Velocity'],
      ['darcy', 'Friction, Darcy-Weisbach'],
      ['hazen', 'Friction, Hazen-Williams'],
      ['rating', threaded ? 'Rating, threaded' : 'Rating'],
      ['verdict', 'Does it do?'],
    ),
    rows,
    source: `${pipe.standard}; most velocity ${either(context.units, '5.6 ft/s', '1.7 m/s')}: common practice, no source`,
    note:
      length === null
        ? 'The length is not known, and with it the friction.'
        : `Over ${show.length(length)}, at the peak flow.`,
  };
}
