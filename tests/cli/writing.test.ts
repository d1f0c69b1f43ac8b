/** Where what was drawn goes: whole or not at all, and never over what is no plain file. */
import { spawn, spawnSync } from 'node:child_process';
import {
  chmodSync,
  closeSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  openSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'wellcut-writing-'));
const program = join(root, 'dist/node-test-writing/wellcut.js');
const plan = join(root, 'static/samples/tamarack-ridge.json');

beforeAll(async () => {
  await build({
    root,
    configFile: join(root, 'vite.cli.config.ts'),
    logLevel: 'error',
    build: { outDir: 'dist/node-test-writing' },
  });
}, 60_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

let place = '';
beforeEach(() => (place = mkdtempSync(join(folder, 'run-'))));

const wellcut = (args: string[], env: NodeJS.ProcessEnv = {}) =>
  spawnSync(process.execPath, [program, ...args], { encoding: 'utf8', env: { ...process.env, ...env } });
const shell = (line: string) => spawnSync('bash', ['-c', line], { encoding: 'utf8' });

function drawn(): string {
  return wellcut(['draw', plan]).stdout;
}
const run = `'${process.execPath}' '${program}' draw '${plan}'`;
const oneLine = (text: string) => expect(text.trim().split('\n')).toHaveLength(1);

describe('a file', () => {
  test('that is new', () => {
    const out = join(place, 'well.svg');
    expect(wellcut(['draw', plan, '-o', out]).status).toBe(0);
    expect(readFileSync(out, 'utf8')).toBe(drawn());
    expect(readdirSync(place)).toEqual(['well.svg']);
  });

  test.each([0o600, 0o640, 0o755])('keeps its mode %o', (mode) => {
    const out = join(place, 'well.svg');
    writeFileSync(out, 'old');
    chmodSync(out, mode);
    expect(wellcut(['draw', plan, '-o', out]).status).toBe(0);
    expect(statSync(out).mode & 0o777).toBe(mode);
    expect(readFileSync(out, 'utf8')).toBe(drawn());
  });

  test('that may only be read is left as it was', () => {
    const out = join(place, 'well.svg');
    writeFileSync(out, 'old');
    chmodSync(out, 0o444);
    const { status, stderr } = wellcut(['draw', plan, '-o', out]);
    expect(status).toBe(4);
    oneLine(stderr);
    expect(stderr).toContain('may only be read');
    expect(readFileSync(out, 'utf8')).toBe('old');
    expect(readdirSync(place)).toEqual(['well.svg']);
  });

  test('with a name as long as a name can be', () => {
    const out = join(place, `${'w'.repeat(251)}.svg`);
    expect(wellcut(['draw', plan, '-o', out]).status).toBe(0);
    const longer = wellcut(['draw', plan, '-o', join(place, `${'w'.repeat(252)}.svg`)]);
    expect(longer.status).toBe(4);
    oneLine(longer.stderr);
    expect(longer.stderr).toContain('its name is too long');
  });

  test('with another name keeps it', () => {
    const out = join(place, 'well.svg');
    const other = join(place, 'other.svg');
    writeFileSync(out, 'old');
    linkSync(out, other);
    expect(wellcut(['draw', plan, '-o', out]).status).toBe(0);
    expect(readFileSync(other, 'utf8')).toBe(drawn());
  });
});

describe('through a link', () => {
  test('to a file, which stays where it was', () => {
    mkdirSync(join(place, 'there'));
    const target = join(place, 'there', 'well.svg');
    writeFileSync(target, 'old');
    symlinkSync(join('there', 'well.svg'), join(place, 'link.svg'));
    expect(wellcut(['draw', plan, '-o', join(place, 'link.svg')]).status).toBe(0);
    expect(readlinkSync(join(place, 'link.svg'))).toBe(join('there', 'well.svg'));
    expect(readFileSync(target, 'utf8')).toBe(drawn());
  });

  test('to nothing yet', () => {
    symlinkSync('new.svg', join(place, 'link.svg'));
    expect(wellcut(['draw', plan, '-o', join(place, 'link.svg')]).status).toBe(0);
    expect(lstatSync(join(place, 'link.svg')).isSymbolicLink()).toBe(true);
    expect(readFileSync(join(place, 'new.svg'), 'utf8')).toBe(drawn());
  });

  test('in a circle', () => {
    symlinkSync('b.svg', join(place, 'a.svg'));
    symlinkSync('a.svg', join(place, 'b.svg'));
    const { status, stderr } = wellcut(['draw', plan, '-o', join(place, 'a.svg')]);
    expect(status).toBe(4);
    oneLine(stderr);
  });
});

describe('what is no plain file', () => {
  test('a pipe is written to and stays a pipe', () => {
    const pipe = join(place, 'well.svg');
    expect(
      shell(`mkfifo '${pipe}' && cat '${pipe}' > '${place}/read.svg' & sleep 0.2; ${run} -o '${pipe}'; wait`).status,
    ).toBe(0);
    expect(statSync(pipe).isFIFO()).toBe(true);
    expect(readFileSync(join(place, 'read.svg'), 'utf8')).toBe(drawn());
  });

  test('a device stays a device', () => {
    const before = statSync('/dev/null').rdev;
    expect(wellcut(['draw', plan, '-o', '/dev/null']).status).toBe(0);
    expect(statSync('/dev/null').isCharacterDevice()).toBe(true);
    expect(statSync('/dev/null').rdev).toBe(before);
  });

  test('a folder is refused', () => {
    const { status, stderr } = wellcut(['draw', plan, '-o', place]);
    expect(status).toBe(4);
    oneLine(stderr);
    expect(stderr).toContain('it is a folder');
  });
});

describe('no room, no reader', () => {
  test.each([
    ['a full device', `${run} -o /dev/full`],
    ['a full disk under standard output', `${run} > /dev/full`],
    ['a check on a full disk', `'${process.execPath}' '${program}' check '${plan}' > /dev/full`],
    ['its help on a full disk', `'${process.execPath}' '${program}' help > /dev/full`],
  ])('%s', (_, line) => {
    const { status, stderr } = shell(line);
    expect(status).toBe(4);
    oneLine(stderr);
    expect(stderr).toContain('the disk is full');
  });

  test('a pipe whose reader has gone', () => {
    const { stdout } = shell(
      `{ ${run}; echo "exit $?" >&2; } 2> '${place}/said' | true; sleep 0.2; cat '${place}/said'`,
    );
    expect(stdout).toMatch(/^standard output cannot be written: its reader has gone\nexit 4\n$/);
  });

  test('a file that may grow no further: the old one stays', () => {
    const out = join(place, 'well.svg');
    writeFileSync(out, 'old');
    const { status, stderr } = shell(`trap '' XFSZ; ulimit -f 8; ${run} -o '${out}'`);
    expect(status).toBe(4);
    oneLine(stderr);
    expect(readFileSync(out, 'utf8')).toBe('old');
    expect(readdirSync(place)).toEqual(['well.svg']);
  });

  test('a folder that is not there', () => {
    const { status, stderr } = wellcut(['draw', plan, '-o', join(place, 'nowhere', 'well.svg')]);
    expect(status).toBe(4);
    oneLine(stderr);
  });

  test('no folder for the fonts of a PNG', () => {
    const { status, stderr } = wellcut(['draw', plan, '-o', join(place, 'well.png')], {
      TMPDIR: join(place, 'nowhere'),
    });
    expect(status).toBe(4);
    oneLine(stderr);
    expect(stderr).toContain('TMPDIR');
  });

  test('a reader that is slow gets all of it', () => {
    const { stdout } = shell(`${run} | { sleep 0.5; cat; }`);
    expect(stdout).toBe(drawn());
  });
});

describe('a slip of the fingers', () => {
  test('the plan itself, under any of its names, is left as it was', () => {
    const own = join(place, 'well.svg');
    const text = readFileSync(plan, 'utf8');
    writeFileSync(own, text);
    symlinkSync('well.svg', join(place, 'link.svg'));
    for (const out of ['well.svg', 'link.svg']) {
      const { status, stderr } = wellcut(['draw', own, '-o', join(place, out)]);
      expect(status).toBe(2);
      oneLine(stderr);
      expect(readFileSync(own, 'utf8')).toBe(text);
    }
  });

  test.each(['well.pdf', 'well.json'])('%s is no name for a drawing', (name) => {
    const { status, stderr } = wellcut(['draw', plan, '-o', join(place, name)]);
    expect(status).toBe(2);
    expect(stderr).toContain('.svg or .png');
    expect(readdirSync(place)).toEqual([]);
  });
});

describe('a plan that never ends', () => {
  test.each(['/dev/zero', '/dev/urandom'])('%s is refused at once', (device) => {
    const { status, stderr } = wellcut(['check', device]);
    expect(status).toBe(2);
    expect(stderr).toContain('longer than 1,000,000 characters');
  });
});

test('a run that is killed leaves the old file or the whole new one, and the next clears up after it', async () => {
  const out = join(place, 'well.svg');
  const whole = drawn();
  for (let i = 0; i < 12; i++) {
    writeFileSync(out, 'old');
    const child = spawn(process.execPath, [program, 'draw', plan, '-o', out], { stdio: 'ignore' });
    const ended = new Promise((done) => child.on('exit', done));
    setTimeout(() => child.kill('SIGKILL'), 60 + 25 * i);
    await ended;
    expect(['old', whole]).toContain(readFileSync(out, 'utf8'));
  }
  // As a run leaves it that is killed between the draft and its name.
  const gone = spawnSync(process.execPath, ['-e', '']).pid;
  closeSync(openSync(join(place, `.wellcut-part-${gone}-abc`), 'w'));
  expect(wellcut(['draw', plan, '-o', out]).status).toBe(0);
  expect(readdirSync(place)).toEqual(['well.svg']);
}, 30_000);
