/** What a pipe bears: its rating, less what warm water and threads take of it. */
import type { Facts, PipeFacts } from '../facts.ts';
import { deratingFactor, isoDeratingFactor } from '../formulas/pipeStrength.ts';
import type { Celsius, Pascals, Ratio } from '../si.ts';
import { bars, psi } from '../units.ts';
import { PIPE_MATERIALS, PIPE_MATERIAL_NAMES, isPlastic } from '../tables/pipeMaterials.ts';
import { isSocketPipe } from '../tables/pipes.ts';

/** Least printed rating of plastic pipe, drop pipe and buried line alike, as each country names it. Common practice. */
export const LEAST_RATING = { us: psi(160), metric: bars(10) } as const;

/** Printed ratings are rounded, and written in other units: 11 bar is 160 psi, 145 psi is 10 bar. */
const PRINTED_ROUNDING: Ratio = 0.01;

/** How far a printed rating is over the least one; what rounding took of it is not missed. */
export function overLeast(rating: Pascals, { units }: Pick<Facts, 'units'>): Pascals {
  const least = LEAST_RATING[units];
  const margin = rating - least;
  return margin < 0 && margin >= -PRINTED_ROUNDING * least ? 0 : margin;
}

/**
 * What threads leave of a PVC pipe's rating; schedule 40 is not to be threaded at all.
 *
 * Source  ASTM D1785, appendix, from memory; common practice
 */
export const THREADED_SHARE: Ratio = 0.5;

/**
 * All new threaded metal pipe of the tables bears this.
 *
 * Barlow, 2 S (t - h) / D, with the wall t less the depth h of a taper thread (0.8 of its pitch, ASME B1.20.1), and half
 * of the yield strength S: 25,000 psi for ASTM A53 type F, 30,000 psi for stainless steel, both from memory. The least
 * of them is 2 in schedule 10S with 498 psi; the rest is left for rust.
 */
export const METAL_BEARS: Pascals = psi(400);

export { isPlastic, isSocketPipe };

/** PVC hangs in a well in lengths that are screwed together; PE is pushed over barbs, and a buried line of PVC is glued. */
export function isThreaded({ material }: PipeFacts, place: 'dropPipe' | 'house.line'): boolean {
  return place === 'dropPipe' && PIPE_MATERIALS[material].threadsWeaken;
}

/** Too thin a wall for threads: schedule 40, and pipe that is joined by sockets alone. */
export function isTooThinForThreads(pipe: PipeFacts): boolean {
  return pipe.wallClass === 'schedule 40' || isSocketPipe(pipe);
}

/** What water of this temperature leaves of a plastic pipe's rating; null where it is too warm for any. */
export function shareLeft({ material, standard }: PipeFacts, temperature: Celsius): Ratio | null {
  if (material === 'PE' && standard === 'ISO 4427-2') return isoDeratingFactor(temperature);
  return deratingFactor(material, temperature);
}

/** Who prints what warm water takes, for each plastic: "AWWA M55 (2006), Table 4-6 (PE), ..." */
export function deratingSources(family: 'inch' | 'metric'): string {
  return PIPE_MATERIAL_NAMES.flatMap((name) => {
    const { derating } = PIPE_MATERIALS[name];
    if (derating === null) return [];
    return [`${(family === 'metric' ? derating.metricSource : null) ?? derating.source} (${name})`];
  }).join(', ');
}

/** The rating in water of this temperature; null for metal, or where nobody knows the rating or the heat is too much. */
export function warmRating(pipe: PipeFacts, { site }: Pick<Facts, 'site'>): Pascals | null {
  if (pipe.rating === null) return null;
  const factor = shareLeft(pipe, site.waterTemperature);
  return factor === null ? null : pipe.rating * factor;
}

/** The same less what threads take. */
export function bornePressure(
  pipe: PipeFacts,
  place: 'dropPipe' | 'house.line',
  facts: Pick<Facts, 'site'>,
): Pascals | null {
  const warm = warmRating(pipe, facts);
  return warm === null || !isThreaded(pipe, place) ? warm : warm * THREADED_SHARE;
}
