/** What a camera reads, by a reader of another make. */
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { linkOf } from '../../src/link/planLink.ts';
import { qrCode } from '../../src/link/qrCode.ts';
import { SOUND } from '../wells/sound.ts';

/** Dots of the code, a module as wide as `scale` dots. */
function dotsOf(svg: string, scale: number): { data: Uint8ClampedArray; width: number } {
  const size = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
  const width = size * scale;
  const data = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of svg.matchAll(/M(\d+) (\d+)h1v1h-1z/g))
    for (let dy = 0; dy < scale; dy++)
      for (let dx = 0; dx < scale; dx++) {
        const at = ((Number(y) * scale + dy) * width + Number(x) * scale + dx) * 4;
        data.fill(0, at, at + 3);
      }
  return { data, width };
}

const read = (svg: string): string | undefined => {
  const { data, width } = dotsOf(svg, 4);
  return jsQR(data, width, width)?.data;
};

describe('a code', () => {
  test.each(SOUND.slice(0, 8).map(({ name, plan }) => [name, plan] as const))('of %s reads back', (_, plan) => {
    const address = `https://wells.example/draw/#${linkOf(plan as object)}`;
    expect(read(qrCode(address, 'Link')!)).toBe(address);
  });
  test('has four light modules on every side', () => {
    const svg = qrCode('https://wells.example/#w1.AAAA', 'Link')!;
    const size = Number(/viewBox="0 0 (\d+)/.exec(svg)?.[1]);
    const places = [...svg.matchAll(/M(\d+) (\d+)h1/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    expect(Math.min(...places.flat())).toBe(4);
    expect(Math.max(...places.flat())).toBe(size - 5);
  });
  test('of more than it holds is none', () => {
    expect(qrCode('a'.repeat(4000), 'Link')).toBeNull();
  });
  test('a stranger’s words are no markup', () => {
    expect(qrCode('x', '"><script>')).not.toContain('<script>');
  });
});
