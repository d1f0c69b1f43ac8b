/**
 * `npm run size`: how much a reader has to fetch, gzipped, beside the figures to hold: the page as it was built, and
 * model and drawing by themselves, as another page would have them in it. More than is allowed fails.
 */
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import './ensure-packages.mjs';

const { build } = await import('vite');
const root = fileURLToPath(new URL('..', import.meta.url));

/** kB: what it must not be over, and what it should come down to. */
const ENGINE = [
  { name: 'draw and write SVG', of: { 'src/draw/index.ts': 'draw, toSvg' }, limit: 97.5, hold: 76 },
  { name: 'solve, without words', of: { 'src/model/index.ts': 'solve' }, limit: 61, hold: 45 },
  {
    name: 'both together',
    of: { 'src/draw/index.ts': 'draw, toSvg', 'src/model/index.ts': 'solve' },
    limit: 157.5,
    hold: 105,
  },
];

/** Chunks that the page asks for by name until the well that was kept stands drawn; what they import comes with them. */
const DRAWN = { chunks: ['index', 'Desk', 'bench'], limit: 279, hold: 150 };

let over = false;
for (const { name, of, limit, hold } of ENGINE) tell(name, await gzipped(of), limit, hold);
tell('page with a well drawn', builtWith(DRAWN.chunks), DRAWN.limit, DRAWN.hold);
const { status } = spawnSync('npx', ['--no', '--', 'size-limit'], {
  cwd: root,
  stdio: 'inherit',
  shell: process.platform === 'win32',
});
process.exit(over ? 1 : (status ?? 1));

function tell(name, bytes, limit, hold) {
  const measured = bytes / 1000;
  over ||= measured > limit;
  const verdict = measured > limit ? `OVER ${limit} kB` : `under ${limit} kB`;
  console.log(`  ${name.padEnd(24)} ${measured.toFixed(1).padStart(6)} kB   ${verdict}; to hold: ${hold} kB`);
}

/** Bytes, gzipped, of chunks of the built page and of all that they import. */
function builtWith(names) {
  const folder = `${root}dist/app/assets/`;
  const files = readdirSync(folder);
  const fetched = new Map();
  const fetchChunk = (file) => {
    if (fetched.has(file)) return;
    const code = readFileSync(folder + file, 'utf8');
    fetched.set(file, gzipSync(code, { level: 9 }).length);
    for (const [, imported] of code.matchAll(/(?:import|from)\s*[`'"]\.\/([\w.-]+\.js)[`'"]/g)) fetchChunk(imported);
  };
  for (const name of names) {
    const chunk = files.find((file) => file.startsWith(`${name}-`) && file.endsWith('.js'));
    if (chunk === undefined) throw new Error(`size: the page was built without a chunk ${name}`);
    fetchChunk(chunk);
  }
  return [...fetched.values()].reduce((sum, bytes) => sum + bytes, 0);
}

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
