import { expect } from 'vitest';
import { evaluate, requireSame } from '../explain/evaluate.ts';

/** Does every sum of a worked line again from its text, and holds each result to what the digits before it give. */
export function redo(worked: string, where: string): void {
  for (const line of worked.split(/; |, and /)) {
    const [, ...sides] =
      /^[\p{L}\p{Nd}_′ /√().²Δ]+ = /u.test(line) && !/^[\d(−]|^1 \//.test(line) ? line.split(' = ') : ['', ...line.split(' = ')];
    const found = sides.map(evaluate);
    for (let i = 1; i < found.length; i++) {
      const [one, next] = [found[i - 1]!, found[i]!];
      requireSame(one, next, `${where}: ${line}`);
      const room = one.error + next.error + 1e-6 * Math.abs(next.value) + (i === found.length - 1 ? lastDigit(sides[i]!, next.value) : 0);
      expect(Math.abs(one.value - next.value), `${where}: ${line}`).toBeLessThanOrEqual(room + 1e-12);
    }
  }
}

/** Half of the last digit that the text stands for, in SI. */
function lastDigit(text: string, value: number): number {
  const [number = '0'] = /[\d.]+/.exec(text) ?? [];
  const shown = Number(number);
  const whole = /(N|Pa|s)$/.test(text) || shown >= 1000;
  const decimals = number.split('.')[1]?.length ?? (whole ? 0 : 1);
  return shown === 0 ? 1e-3 : Math.abs(value / shown) * 0.501 * 10 ** -decimals;
}
