/** Wall and pressure rating of a pipe, and the surge it must stand. */
import type { PipeFacts } from '../../facts.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { step, term } from '../../explain/sum.ts';
import { WORKING_SHARE_WITHOUT_SURGE } from '../../formulas/pipeStrength.ts';
import { surgePressure, suddenWithin, waveSpeed } from '../../formulas/waterHammer.ts';
import type { PipePlace } from '../../rules/otherPipe.ts';
import { isMetricPipe } from '../../tables/pipes.ts';
import {
  bornePressure,
  deratingSources,
  isThreaded,
  isTooThinForThreads,
  shareLeft,
  THREADED_SHARE,
} from '../../rules/pipeRating.ts';
import type { MetresPerSecond, Metres, Pascals } from '../../si.ts';
import { feet, psi, either } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { PIPE_MATERIALS, isPlastic } from '../../tables/pipeMaterials.ts';

export interface PipeAtWork {
  /** "dropPipe" or "line" */
  readonly key: string;
  readonly place: PipePlace;
  /** "drop pipe" */
  readonly name: string;
  readonly pipe: PipeFacts;
  readonly length: Metres | null;
  /** While running; a sudden stop takes all of it. */
  readonly velocity: MetresPerSecond | null;
  readonly velocityMissing: readonly (Missing | null)[];
  /** Most across the wall without surge. */
  readonly pressure: Pascals | null;
  readonly pressureIs: string;
  readonly pressureMissing: readonly (Missing | null)[];
}

export const wallOf = ({ outsideDiameter, insideDiameter }: PipeFacts): Metres =>
  (outsideDiameter - insideDiameter) / 2;

function modulusOf({ material }: PipeFacts): Pascals {
  return psi(PIPE_MATERIALS[material].suddenModulus);
}

export function strengthFigures(context: Context, work: PipeAtWork): SheetFigure[] {
  const { facts, show } = context;
  const { key, place, name, pipe } = work;
  const temperature = facts.site.waterTemperature;
  const material = isPlastic(pipe) ? pipe.material : null;
  const factor = shareLeft(pipe, temperature);
  const threaded = isThreaded(pipe, place);
  const rating = bornePressure(pipe, place, facts);
  const working = known([rating], (pressure) => pressure * WORKING_SHARE_WITHOUT_SURGE);
  const wall = wallOf(pipe);
  const density = context.system.water.density;
  const modulus = modulusOf(pipe);
  const speed = known([wall], (thickness) => waveSpeed(modulus, pipe.insideDiameter / thickness));
  const surge = known([speed, work.velocity], (wave, velocityChange) =>
    surgePressure({ density, speed: wave, velocityChange }),
  );
  const sum = known([surge, work.pressure], (rise, pressure) => rise + pressure);
  const share = known([sum, rating], (most, rated) => most / rated);
  const sudden = known([work.length, speed], (length, wave) => suddenWithin(length, wave));
  const noRating: Missing | null =
    material === null
      ? { path: null, words: 'a printed rating: metal pipe of these sizes has none, and holds far more' }
      : pipe.rating === null
        ? { path: `${place}.rating`, words: `the rating printed on the ${name}` }
        : factor === null
          ? { path: 'site.waterTemperature', words: 'cooler water: no rating is printed for plastic this warm' }
          : null;
  const hold = (value: number | null) => (value === null ? null : value <= 1);
  return [
    figure(
      context,
      { key: `${key}Wall`, title: `Wall of the ${name}`, symbol: 't', value: wall, as: 'bore', missing: [] },
      () => ({
        terms: [
          term('D', 'outside diameter', pipe.outsideDiameter, 'bore'),
          term('d', 'inside diameter', pipe.insideDiameter, 'bore'),
        ],
        steps: [step('t', '(D − d) / 2', wall, 'bore')],
        range: within(
          pipe.wallClass === null
            ? 'nobody said the wall: that of the middle class is taken'
            : `least wall of ${pipe.wallClass}`,
          pipe.wallClass !== null,
        ),
        source: pipe.standard,
        ...(pipe.material === 'PE' && pipe.standard !== 'ASTM D2239'
          ? {
              notes: [
                `${pipe.standard} pipe is measured outside: its barbs are not those of ASTM D2239 pipe of the same name.`,
              ],
            }
          : {}),
      }),
    ),
    figure(
      context,
      {
        key: `${key}Rating`,
        title: `Rating of the ${threaded ? 'threaded ' : ''}${name} in water of ${show.temperature(temperature)}`,
        symbol: 'p_r',
        value: rating,
        as: 'readPressure',
        missing: [noRating],
      },
      () => ({
        terms: [
          term(
            'p_1',
            `rating at ${isMetricPipe(pipe) ? '20 °C' : either(context.units, '73 °F', '23 °C')}${pipe.resin === null ? '' : `, ${pipe.resin}`}`,
            pipe.rating,
            'readPressure',
          ),
          term('f', 'share that is left at this temperature', factor, 'percent'),
          ...(threaded ? [term('f_t', 'share that threads leave', THREADED_SHARE, 'percent')] : []),
        ],
        steps: [step('p_r', threaded ? 'f × f_t × p_1' : 'f × p_1', rating, 'readPressure')],
        range: threaded
          ? within('threads cut into schedule 80; schedule 40 is too thin for them', !isTooThinForThreads(pipe))
          : within('pipe without threads', null),
        source: `${isMetricPipe(pipe) ? pipe.standard : `${pipe.standard}, appendix`}${threaded ? ', threads from memory' : ''}; temperature: ${pipe.standard === 'ISO 4427-2' ? 'ISO 4427-1, annex A, from memory' : deratingSources('inch')}`,
      }),
    ),
    figure(
      context,
      {
        key: `${key}Working`,
        title: `Working pressure of the ${name} where surge is not worked out`,
        symbol: 'p_w',
        value: working,
        as: 'readPressure',
        missing: [noRating],
      },
      () => ({
        terms: [
          term('p_r', 'rating in this water', rating, 'readPressure'),
          term('f_w', 'share for working pressure', WORKING_SHARE_WITHOUT_SURGE, 'percent'),
        ],
        steps: [step('p_w', 'f_w × p_r', working, 'readPressure')],
        range: within('running pressure', null),
        source: 'Missouri Livestock Watering Systems Handbook, ch. 5',
      }),
    ),
    figure(
      context,
      {
        key: `${key}Pressure`,
        title: `Most pressure across the wall of the ${name}`,
        symbol: 'p',
        value: work.pressure,
        as: 'readPressure',
        missing: work.pressureMissing,
      },
      () => ({
        terms: [term('p', work.pressureIs, work.pressure, 'readPressure')],
        steps: [step('p', 'p', work.pressure, 'readPressure')],
        formula: `p = ${work.pressureIs}`,
        range: within(
          'steady, without surge; below the rating',
          known([work.pressure, rating], (has, may) => has / may) === null
            ? null
            : hold((work.pressure ?? 0) / (rating ?? 1)),
        ),
        source: 'hydrostatics',
      }),
    ),
    figure(
      context,
      {
        key: `${key}WaveSpeed`,
        title: `Speed of a pressure wave in the ${name}`,
        symbol: 'a',
        value: speed,
        as: 'velocity',
        missing: [],
      },
      () => ({
        terms: [
          term('a_0', 'speed in water without a pipe', FREE_WAVE_SPEED, 'velocity'),
          term('K', 'bulk modulus of water', WATER_MODULUS, 'modulus'),
          term('E', 'modulus of the wall for sudden load', modulus, 'modulus'),
          term('d', 'inside diameter', pipe.insideDiameter, 'bore'),
          term('t', 'wall', wall, 'bore'),
        ],
        steps: [step('a', 'a_0 / √(1 + K × d / (E × t))', speed, 'velocity')],
        range: within('full pipe without air', null),
        source: 'AWWA Manual M55 (2006), PE Pipe, ch. 4, equation from memory',
      }),
    ),
    figure(
      context,
      {
        key: `${key}Surge`,
        title: `Water hammer in the ${name}, all flow stopped at once`,
        symbol: 'Δp',
        value: surge,
        as: 'pressure',
        missing: work.velocityMissing,
      },
      () => ({
        terms: [
          term('γ', 'weight of water by volume', context.waterWeight, 'weightPerVolume'),
          term('g', 'standard gravity', context.waterWeight / density, 'gravity'),
          term('a', 'speed of the wave', speed, 'velocity'),
          term('v', 'velocity that stops', work.velocity, 'velocity'),
        ],
        steps: [step('Δp', 'γ / g × a × v', surge, 'pressure')],
        range: within(
          sudden === null
            ? 'a stop within 2 L / a'
            : `a stop within ${sudden < 1 ? sudden.toFixed(2) : sudden.toFixed(1)} s; slower stops give less`,
          null,
        ),
        source: 'Joukowsky (1898)',
      }),
    ),
    figure(
      context,
      {
        key: `${key}SurgeShare`,
        title: `Pressure with water hammer against the rating of the ${name}`,
        symbol: 'r',
        value: share,
        as: 'percent',
        missing: [noRating, ...work.velocityMissing, ...work.pressureMissing],
      },
      () => ({
        terms: [
          term('p', work.pressureIs, work.pressure, 'readPressure'),
          term('Δp', 'water hammer', surge, 'readPressure'),
          term('p_r', 'rating in this water', rating, 'readPressure'),
        ],
        steps: [step('r', '(p + Δp) / p_r', share, 'percent')],
        range: within(
          'PE stands an occasional surge of half its rating more; PVC and joints do not',
          share === null ? null : share <= (pipe.material === 'PE' ? 1.5 : 1),
        ),
        source: 'sum of the two; occasional surge in PE: AWWA M55 and C901, from memory',
        notes: ['A spring check valve shuts before the flow turns, so the real stop is gentler.'],
      }),
    ),
  ];
}

/** 4660 ft/s and 300,000 psi, as the handbooks round them and `waveSpeed` takes them. */
const FREE_WAVE_SPEED: MetresPerSecond = feet(4660);
const WATER_MODULUS: Pascals = psi(300_000);
