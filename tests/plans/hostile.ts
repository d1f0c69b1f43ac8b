/** Texts that somebody may hand over as a plan: real ones with a few things broken, and some that are no plan at all. */

/** Numbers in [0, 1) from a seed, the same on every machine: mulberry32, from memory. */
export function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Right in one place and wrong in most. */
const ORDINARY: readonly unknown[] = [
  '3 ft',
  '40 ft',
  '180 ft',
  '10 gpm',
  '1 hp',
  '60 psi',
  '6 in',
  'unknown',
  true,
  false,
];
const ODD: readonly unknown[] = [
  ...ORDINARY,
  null,
  true,
  -1,
  0,
  1e308,
  '',
  ' ',
  'unknown',
  'none',
  '0 ft',
  '-3 ft',
  '1e-300 ft',
  '999999999999 ft',
  '62\' 6"',
  '12,5 m',
  '1,000 ft',
  '½ hp',
  'NaN ft',
  '٣ ft',
  '\u202Eft 26',
  '<img src=x onerror=alert(1)>',
  'x'.repeat(5000),
  '__proto__',
  [],
  {},
  [[[[]]]],
  { kind: 'test' },
  { kind: 'points', points: [] },
  Array.from({ length: 400 }, (_, i) => ({ bottom: `${400 - i} ft` })),
  Object.fromEntries(Array.from({ length: 400 }, (_, i) => [`k${i}`, i])),
];
const NAMES = ['format', '__proto__', 'constructor', 'toString', 'kind', 'depth', 'status', '', 'a.b', '0', '\u0000'];

/**
 * One such text.
 *
 * @param plans   texts of plans that are good
 * @param random  numbers in [0, 1)
 */
export function hostile(plans: readonly string[], random: () => number): string {
  const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)] as T;
  const plan = pick(plans);
  const kind = random();
  if (kind < 0.25) return brokenText(plan, random);
  const json: unknown = JSON.parse(plan);
  const changes = 1 + Math.floor(random() * random() * 5);
  for (let i = 0; i < changes; i++) {
    const groups = groupsIn(json);
    const group = pick(groups) as Record<string, unknown>;
    const key = random() < 0.7 && Object.keys(group).length > 0 ? pick(Object.keys(group)) : pick(NAMES);
    if (random() < 0.1) Reflect.deleteProperty(group, key);
    else
      Object.defineProperty(group, key, {
        value: random() < 0.2 ? pick(groups.map((each) => structuredClone(each))) : structuredClone(pick(ODD)),
        enumerable: true,
        configurable: true,
        writable: true,
      });
  }
  return JSON.stringify(json);
}

/** A few characters cut out, doubled, or put in. */
function brokenText(plan: string, random: () => number): string {
  let text = plan;
  const times = 1 + Math.floor(random() * 3);
  for (let i = 0; i < times; i++) {
    const at = Math.floor(random() * text.length);
    const end = at + Math.floor(random() * 40);
    const put = ['', text.slice(at, end), '"', '{', ']', ',', '\\u0000', '\uD800', '1e999', '}}'];
    text = text.slice(0, at) + (put[Math.floor(random() * put.length)] ?? '') + text.slice(random() < 0.5 ? at : end);
  }
  return text;
}

/** Every object and list in it, the outermost first. */
export function groupsIn(value: unknown): object[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(groupsIn)];
}
