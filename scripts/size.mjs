/**
 * `npm run size`: how much a reader has to fetch, gzipped, beside the figures to hold: the page as it was built, and
 * model and drawing by themselves, as another page would have them in it. More than is allowed fails.
 */
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import './ensure-packages.mjs';

const { build } = await import('vite');
const root = fileURLToPath(new URL('..', import.meta.url));

/** kB: what it must not be over, and what it should come down to. */
const ENGINE = [
  { name: 'draw and write SVG', of: { 'src/draw/index.ts': 'draw, toSvg' }, limit: 98, hold: 76 },
  { name: 'solve, without words', of: { 'src/model/index.ts': 'solve' }, limit: 60.5, hold: 45 },
  {
    name: 'both together',
    of: { 'src/draw/index.ts': 'draw, toSvg', 'src/model/index.ts': 'solve' },
    limit: 157,
    hold: 105,
  },
];

let over = false;
for (const { name, of, limit, hold } of ENGINE) {
  const measured = (await gzipped(of)) / 1000;
  over ||= measured > limit;
  const verdict = measured > limit ? `OVER ${limit} kB` : `under ${limit} kB`;
  console.log(`  ${name.padEnd(24)} ${measured.toFixed(1).padStart(6)} kB   ${verdict}; to hold: ${hold} kB`);
}
const { status } = spawnSync('npx', ['--no', '--', 'size-limit'], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
process.exit(over ? 1 : (status ?? 1));

/** Bytes, minified and gzipped, of what is left when just these exports are used. */
async function gzipped(of) {
  const entry = '\0measured';
  const made = await build({
    configFile: false,
    root,
    logLevel: 'error',
    plugins: [
      {
        name: 'measured',
        resolveId: (id) => (id === entry ? id : null),
        load: (id) =>
          id === entry
            ? Object.entries(of)
                .map(([file, names]) => `export { ${names} } from '${root}${file}';`)
                .join('\n')
            : null,
      },
    ],
    build: {
      write: false,
      minify: true,
      target: 'es2022',
      rolldownOptions: { input: entry, preserveEntrySignatures: 'strict', output: { format: 'es' } },
    },
  });
  return [made]
    .flat()
    .flatMap(({ output }) => output)
    .filter(({ type }) => type === 'chunk')
    .reduce((sum, { code }) => sum + gzipSync(code, { level: 9 }).length, 0);
}
