/**
 * The pipe thread that goes with a name: fittings are bought by their thread, pipe by its own name.
 *
 * Sources  DN beside inches: EN 10255 and ISO 6708, from memory. Polyethylene pipe in mm goes with the thread whose bore is
 *          next to its own: common practice, no source.
 */
const OF_DN: Readonly<Record<string, string>> = {
  15: '1/2 in',
  20: '3/4 in',
  25: '1 in',
  32: '1-1/4 in',
  40: '1-1/2 in',
  50: '2 in',
};

const OF_MILLIMETRES: Readonly<Record<string, string>> = {
  20: '1/2 in',
  25: '3/4 in',
  32: '1 in',
  40: '1-1/4 in',
  50: '1-1/2 in',
  63: '2 in',
};

/**
 * @param name  of a pipe or an outlet: "1-1/4 in", "DN 32", "40 mm", "Rp 1 1/4"
 * @returns     "1-1/4 in"; null where the name tells no thread
 */
export function threadSize(name: string): string | null {
  const metric = /^\s*(?:(DN)\s*(\d+)|(\d+)\s*mm)\s*$/i.exec(name);
  if (metric !== null)
    return (metric[1] === undefined ? OF_MILLIMETRES[metric[3] ?? ''] : OF_DN[metric[2] ?? '']) ?? null;
  const inches = /(?:(\d+)[-\s])?(\d+)\/(\d+)|(\d+)/.exec(name);
  if (inches === null) return null;
  const [, whole, over, under, alone] = inches;
  if (alone !== undefined) return `${alone} in`;
  return `${whole === undefined ? '' : `${whole}-`}${over}/${under} in`;
}

/** Whether a thread is larger than another; false where either name tells no size. */
export function isWider(name: string, than: string): boolean {
  const [one, other] = [inchesOf(name), inchesOf(than)];
  return one !== null && other !== null && one > other;
}

function inchesOf(name: string): number | null {
  const found = /^(?:(\d+)-)?(\d+)(?:\/(\d+))? in$/.exec(threadSize(name) ?? '');
  if (found === null) return null;
  const [, whole = '0', over = '0', under = '1'] = found;
  return Number(whole) + Number(over) / Number(under);
}

/**
 * The two systems of pipe threads: ASME B1.20.1 (60 degrees) and ISO 7-1 (55 degrees). Their pitches differ in all sizes but
 * 1/2 and 3/4 in, and there the flanks do: one starts on the other, binds after a turn or two, and neither seals nor bears.
 */
export type ThreadSystem = 'NPT' | 'ISO 7-1';

/**
 * @param name  as it is stamped: "1-1/4 NPT", "Rp 1 1/4", "G 1"
 * @returns     null where the name tells a size alone
 */
export function systemSaid(name: string): ThreadSystem | null {
  if (/\bF?M?NPT[FSM]?\b/i.test(name)) return 'NPT';
  // R, Rp and Rc: ISO 7-1. G: ISO 228-1, of the same pitch and flanks, and an outer thread of ISO 7-1 goes into it.
  return /\bBSP[PT]?\b|\bISO\s*(?:7|228)|(?:^|\s)(?:R[pc]?|G)\s*\d/i.test(name) ? 'ISO 7-1' : null;
}
