/** `wellcut sheet` and `wellcut steps`: the sheet as HTML and as a PDF, the steps as text and for programs. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { chromiumPath } from '../../scripts/browser.mjs';
import { sheetCommand } from '../../src/cli/sheetCommand.ts';
import { stepsCommand } from '../../src/cli/stepsCommand.ts';
import { sample } from '../plans/build.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
beforeEach(() => printed.splice(0));

const folder = mkdtempSync(join(tmpdir(), 'wellcut-sheet-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function planFile(plan: unknown): string {
  const path = join(folder, 'plan.json');
  writeFileSync(path, JSON.stringify(plan));
  return path;
}
const at = (name: string) => join(folder, name);

describe('sheet', () => {
  test('writes a page, or prints it', () => {
    expect(sheetCommand([planFile(sample('tamarack-ridge')), '-o', at('sheet.html')])).toBe(0);
    sheetCommand([planFile(sample('tamarack-ridge'))]);
    expect(readFileSync(at('sheet.html'), 'utf8')).toBe(printed.join(''));
    expect(printed.join('')).toContain('Order of the work');
  });
  test('refuses an ending that it cannot write, and a paper that it does not know', () => {
    const plan = planFile(sample('tamarack-ridge'));
    expect(() => sheetCommand([plan, '-o', at('sheet.docx')])).toThrow('end it in .html or .pdf');
    expect(() => sheetCommand([plan, '--paper', 'napkin'])).toThrow('use letter or a4');
  });
  test.runIf(chromiumPath() !== undefined)(
    'as a PDF each page has the size of the paper, and pages are counted',
    () => {
      vi.stubEnv('CHROMIUM_PATH', chromiumPath());
      for (const [paper, width, height] of [
        ['letter', 612, 792],
        ['a4', 595, 842],
      ] as const) {
        const path = at(`sheet-${paper}.pdf`);
        sheetCommand([planFile(sample('tamarack-ridge')), '-o', path, '--paper', paper]);
        const pdf = readFileSync(path);
        const boxes = mediaBoxes(pdf);
        expect(boxes.length).toBeGreaterThan(8);
        for (const [w, h] of boxes) {
          // Points of 1/72 in; a browser rounds a page to the next of them.
          expect(Math.abs(w! - width)).toBeLessThan(1.5);
          expect(Math.abs(h! - height)).toBeLessThan(1.5);
        }
      }
    },
    120_000,
  );
  test.runIf(chromiumPath() !== undefined)(
    'the short form is one page, whatever is wrong',
    () => {
      vi.stubEnv('CHROMIUM_PATH', chromiumPath());
      const faulty = {
        ...(sample('slate-hollow') as object),
        string: { checkValves: [], fittings: 'nylon', clampsPerJoint: 1 },
      };
      for (const [name, plan, paper] of [
        ['sound', sample('tamarack-ridge'), 'letter'],
        ['faulty', faulty, 'a4'],
        ['metric', sample('willow-dale'), 'a4'],
      ] as const) {
        const path = at(`short-${name}.pdf`);
        sheetCommand([planFile(plan), '-o', path, '--paper', paper, '--short']);
        expect(mediaBoxes(readFileSync(path))).toHaveLength(1);
      }
    },
    120_000,
  );
});

/** ISO 32000-1, 7.7.3.3: every page has its media box; a writer may keep it in a compressed stream. */
function mediaBoxes(pdf: Buffer): number[][] {
  const plain = [pdf.toString('latin1')];
  for (const { index } of pdf.toString('latin1').matchAll(/stream\r?\n/g)) {
    const from = pdf.indexOf('\n', index) + 1;
    try {
      plain.push(inflateSync(pdf.subarray(from)).toString('latin1'));
    } catch {
      // An image, or a stream that is not compressed: it has no box.
    }
  }
  return [...plain.join('\n').matchAll(/\/MediaBox\s*\[\s*0\s+0\s+([\d.]+)\s+([\d.]+)\s*\]/g)].map(([, w, h]) => [
    Number(w),
    Number(h),
  ]);
}

describe('steps', () => {
  test('numbers them, names each phase once, and warns where something can hurt', () => {
    expect(stepsCommand([planFile(sample('tamarack-ridge'))])).toBe(0);
    const text = printed.join('');
    for (const phase of ['Before the work', 'Casing and trench', 'Down the well', 'In the house'])
      expect(text.split(`\n${phase}\n`).length, phase).toBeLessThanOrEqual(2);
    const numbers = [...text.matchAll(/^ {0,2}(\d+) {2}\S/gm)].map(([, n]) => Number(n));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(numbers.length).toBeGreaterThan(25);
    expect(text).toMatch(/^ +! Switch the breaker off/m);
  });
  test('for programs with pieces, numbers in SI and words', () => {
    stepsCommand([planFile(sample('palo-amargo')), '--json', '--replace']);
    const report = JSON.parse(printed.join('')) as { kind: string; there: string[]; steps: { id: string }[] };
    expect(report.kind).toBe('replace');
    expect(report.steps.map(({ id }) => id)).toContain('pull');
    expect(report.there).toContain('casing/0');
  });
  test('of a flowing well it tells none', () => {
    const plan = sample('tamarack-ridge');
    const flowing = { ...plan, water: { ...(plan['water'] as object), staticLevel: '-2 ft' } };
    expect(stepsCommand([planFile(flowing)])).toBe(1);
    expect(printed.join('')).toContain('flows by itself');
  });
});
