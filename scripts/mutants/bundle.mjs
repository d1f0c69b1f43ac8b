/** The unit tests of a part, and all that they import, as one file that can be run again and again. */
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';
import vm from 'node:vm';
import { build } from 'vite';
import { collector } from './collector.mjs';

/** Takes as long as all the others together: every case with every fix that it has. */
const TOO_LONG = /never changes the well, the water or the site$/;

/** The file as a function, compiled once. */
export function evaluated(text, file) {
  return new vm.Script(`(function (require, exports, module) {${text}\n})`, { filename: file }).runInThisContext();
}

/** The tests that the file lists when it is run; every run has the model anew. */
export function testsOf(evaluate, file, expect) {
  const { api, tests } = collector(expect);
  const require = createRequire(file);
  const module = { exports: {} };
  evaluate((name) => (name === 'vitest' ? api : require(name)), module.exports, module);
  return tests.filter(({ id }) => !TOO_LONG.test(id));
}

/** A test that reads a file beside it still does, read from the one file of all. */
const ownAddress = {
  name: 'own-address',
  transform: (text, id) =>
    id.includes('node_modules') || !text.includes('import.meta.url')
      ? null
      : { code: text.replaceAll('import.meta.url', JSON.stringify(pathToFileURL(id).href)), map: null },
};

/** All tests of the part and all that they import, as one file beside them. */
export async function bundle({ tests, own }, { anew = false, plugins = [] } = {}) {
  const root = process.cwd();
  const folder = `${root}/reports/mutants/part`;
  const file = `${folder}/built/part.cjs`;
  // A process that took over from one that ran without end finds it made.
  if (!anew && existsSync(file)) return file;
  mkdirSync(folder, { recursive: true });
  writeFileSync(`${folder}/entry.ts`, tests.map((test) => `import '../../../${test}';\n`).join(''));
  await build({
    configFile: false,
    root,
    logLevel: 'error',
    publicDir: false,
    plugins: [ownAddress, ...plugins],
    resolve: {
      alias: [
        { find: /^fast-check$/, replacement: `${root}/tests/mutants/fewRuns.ts` },
        { find: 'own-family', replacement: `${root}/${own ?? 'tests/mutants/noFamily.ts'}` },
      ],
    },
    ssr: { noExternal: true, external: ['vitest', '@resvg/resvg-js', 'epanet-js', 'fontkit', 'pngjs', 'pixelmatch'] },
    build: {
      ssr: `${folder}/entry.ts`,
      outDir: `${folder}/built`,
      minify: false,
      rolldownOptions: {
        // The package says that only some of its files do anything when read; tests do.
        treeshake: false,
        output: { format: 'cjs', entryFileNames: 'part.cjs', codeSplitting: false },
      },
    },
  });
  return file;
}
