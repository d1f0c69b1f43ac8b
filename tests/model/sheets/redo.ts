import { expect } from 'vitest';
import { evaluate, requireSame } from '../explain/evaluate.ts';
import type { Found } from '../explain/evaluate.ts';

/** A horsepower is 550 foot-pounds a second; a kilowatt a thousand watts. */
const inSumUnits = (side: string) => side.replace(/ hp$/, ' × 550 ft·lb/s').replace(/ kW$/, ' × 1000 W');

/** Does every sum of a worked line again from its text, and holds each result to what the digits before it give; returns the last. */
export function redo(worked: string, where: string): Found {
  let last: Found | null = null;
  for (const line of worked.split(/; |, and /)) {
    const [, ...sides] =
      /^[\p{L}\p{Nd}_′ /√().²Δ]+ = /u.test(line) && !/^[\d(−]|^1 \//.test(line)
        ? line.split(' = ')
        : ['', ...line.split(' = ')];
    const found = sides.map((side) => evaluate(inSumUnits(side)));
    for (let i = 1; i < found.length; i++) {
      const [one, next] = [found[i - 1]!, found[i]!];
      requireSame(one, next, `${where}: ${line}`);
      const room =
        one.error +
        next.error +
        1e-6 * Math.abs(next.value) +
        (i === found.length - 1 ? lastDigit(sides[i]!, next.value) : 0);
      expect(Math.abs(one.value - next.value), `${where}: ${line}`).toBeLessThanOrEqual(room + 1e-12);
    }
    last = found[found.length - 1] ?? last;
  }
  return last!;
}

/** Half of the last digit that the text shows, in SI: what the reader's unit may be rounded by. */
export function lastDigit(text: string, value: number): number {
  const [number = '0'] = /[\d.]+/.exec(text) ?? [];
  const shown = Number(number);
  const decimals = number.split('.')[1]?.length ?? 0;
  return shown === 0 ? 1e-3 : Math.abs(value / shown) * 0.501 * 10 ** -decimals;
}
