/** Rating of a plastic pipe by wall ratio, resin and temperature. */
import type { Context } from '../../explain/context.ts';
import {
  bornePressure,
  deratingSources,
  isPlastic,
  isThreaded,
  isTooThinForThreads,
  shareLeft,
} from '../../rules/pipeRating.ts';
import { PIPE_MATERIALS, pipesWith } from '../../tables/pipeMaterials.ts';
import { classesOfSize, findPipe, isMetricPipe } from '../../tables/pipes.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { wallOf } from './strength.ts';
import type { PipeAtWork } from './strength.ts';
import { either } from '../../units.ts';

const RESINS = ['PE3608', 'PE4710'] as const;
const METRIC_RESINS = ['PE 80', 'PE 100'] as const;

/** Null for metal pipe, which bears no printed rating. */
export function ratingTable(
  context: Context,
  { key, place, name, pipe, pressure }: Pick<PipeAtWork, 'key' | 'place' | 'name' | 'pipe' | 'pressure'>,
): SheetTable | null {
  const { material, standard, nominalSize } = pipe;
  if (!isPlastic(pipe)) return null;
  const { compound } = PIPE_MATERIALS[material];
  const { show, facts } = context;
  const temperature = facts.site.waterTemperature;
  const factor = shareLeft(pipe, temperature);
  const metric = isMetricPipe(pipe);
  const threaded = isThreaded(pipe, place);
  const resins = compound === null ? (metric ? METRIC_RESINS : RESINS) : [null];
  const rows = classesOfSize(standard, nominalSize).flatMap((ratio) =>
    resins.map((resin) => {
      const found = findPipe({ material, standard, size: nominalSize, ratio, resin });
      const borne = found === null ? null : bornePressure(found, place, facts);
      const own = ratio === pipe.wallClass && resin === pipe.resin;
      const thin = threaded && found !== null && isTooThinForThreads(found);
      const weak = borne !== null && pressure !== null && borne < pressure;
      return row(
        own ? 'this plan' : thin || weak ? 'does not do' : null,
        ratio,
        resin ?? (metric ? compound?.metricName : compound?.name) ?? '–',
        cell(found === null ? null : wallOf(found), show.bore),
        cell(found?.rating ?? null, show.pressure),
        cell(borne, show.pressure),
        thin ? 'too thin for threads' : pressure === null || borne === null ? '–' : weak ? 'too weak' : 'does',
      );
    }),
  );
  return {
    key: `${key}Ratings`,
    title: `Ratings of ${nominalSize} ${material} for the ${name}, ${standard}`,
    columns: columns(
      ['ratio', 'Wall'],
      ['resin', 'Resin'],
      ['wall', 'Thickness'],
      ['cold', `Rating at ${metric ? '20 °C' : either(context.units, '73 °F', '23 °C')}`],
      ['warm', `Rating at ${show.temperature(temperature)}${threaded ? ', threaded' : ''}`],
      ['verdict', 'Does it do?'],
    ),
    rows,
    source: metric
      ? `${standard}: PN by series; temperature: ${deratingSources('metric')}`
      : `${standard}, appendix: 2 HDS/(DR − 1) or 2 HDS/(SIDR + 1); temperature: ${deratingSources('inch')}`,
    note:
      factor === null
        ? 'No rating is printed for plastic this warm.'
        : 'A pressure without wall and resin names no pipe: ask for both. Threaded ' +
          pipesWith(({ threadsWeaken }) => threadsWeaken) +
          ' bears half of its rating.',
  };
}
