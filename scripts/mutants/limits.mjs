/**
 * Limits are constants with a name, and their figures are what a change of signs and branches leaves alone: each figure
 * of a constant is made a tenth more and a tenth less, and some test has to notice either.
 */
import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { bundle, evaluated, testsOf } from './bundle.mjs';

/** @returns by file: how many figures were moved, and which of them no test noticed */
export async function moveLimits(part, files) {
  const figures = [];
  const path = await bundle(part, { anew: true, plugins: [figuresAsked(files, figures)] });
  const evaluate = evaluated(readFileSync(path, 'utf8'), path);
  const found = Object.fromEntries(files.map((file) => [file, { moved: 0, alive: [] }]));
  const noticed = new Map();
  for (const [index, { file, figure, line }] of figures.entries()) {
    const score = found[file];
    const likely = noticed.get(file) ?? [];
    noticed.set(file, likely);
    for (const share of [1.1, 0.9]) {
      score.moved++;
      const moved = Number((figure * share).toPrecision(6));
      globalThis.movedLimit = (asked, own) => (asked === index ? moved : own);
      const failed = await whoNotices(evaluate, path, likely);
      if (failed === null) score.alive.push({ line, from: String(figure), to: String(moved) });
      else if (!likely.includes(failed)) likely.unshift(failed);
    }
  }
  return Object.fromEntries(Object.entries(found).filter(([, { moved }]) => moved > 0));
}

const DECLARED = /^(?:export )?const [A-Z][A-Z0-9_]*\b[^=]* = ([^]*?;)$/gm;
/** A figure, and no key of a list, no part of a name or a text. */
const FIGURE = /(?<![\w.$'"])(?:\d[\d_]*(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?(?![\w.'"]|\s*:)/g;
const TEXTS = /\/\*[^]*?\*\/|\/\/.*$|'[^'\n]*'/gm;

/** Every figure of a constant in capitals is asked for whenever the file is run; nothing times a tenth stays nothing. */
function figuresAsked(files, figures) {
  return {
    name: 'figures-asked',
    enforce: 'pre',
    transform(text, id) {
      const file = files.find((each) => id.endsWith(`/${each}`));
      if (file === undefined) return null;
      const code = text.replace(DECLARED, (declared, value) => {
        const [line] = declared.split('\n');
        const bare = value.replace(TEXTS, (cut) => ' '.repeat(cut.length));
        let asked = '';
        let done = 0;
        for (const { 0: figure, index } of bare.matchAll(FIGURE)) {
          if (Number(figure.replaceAll('_', '')) === 0) continue;
          const number = figures.push({ file, line, figure: Number(figure.replaceAll('_', '')) }) - 1;
          asked += `${value.slice(done, index)}globalThis.movedLimit(${number}, ${figure})`;
          done = index + figure.length;
        }
        return `${declared.slice(0, declared.length - value.length)}${asked}${value.slice(done)}`;
      });
      return { code, map: null };
    },
  };
}

/** The first test that fails; those that failed before are asked first. */
async function whoNotices(evaluate, path, likely) {
  let tests;
  try {
    tests = testsOf(evaluate, path, expect);
  } catch {
    return 'reading the files';
  }
  const rank = new Map(likely.map((id, index) => [id, index - likely.length]));
  for (const { id, run } of [...tests].sort((one, other) => (rank.get(one.id) ?? 0) - (rank.get(other.id) ?? 0))) {
    try {
      await run();
    } catch {
      return id;
    }
  }
  return null;
}
