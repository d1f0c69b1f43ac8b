import {
  chmodSync,
  chownSync,
  closeSync,
  fsyncSync,
  openSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  renameSync,
  rmSync,
  statSync,
  lstatSync,
  writeFileSync,
  type Stats,
} from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { Unwritable } from './exits.ts';
import { print } from './print.ts';
import { whyNot } from './whyNot.ts';

/**
 * Writes a file whole or not at all; "-" is standard output. Links are followed; pipes and devices are written to, never
 * replaced; a file keeps its mode, its owner and its other names, and one that may only be read is left alone.
 *
 * @throws Unwritable, one line that says why
 */
export function writeOutput(path: string, content: string | Uint8Array): void {
  if (path === '-') {
    print(content);
    return;
  }
  try {
    write(followed(path), content);
  } catch (fault) {
    throw fault instanceof Unwritable ? fault : new Unwritable(`${path} cannot be written: ${whyNot(fault)}`);
  }
}

function write(path: string, content: string | Uint8Array): void {
  const there = statSync(path, { throwIfNoEntry: false });
  if (there === undefined) replace(path, content, null);
  else if (there.isDirectory()) throw new Unwritable(`${path} cannot be written: it is a folder`);
  else if (!there.isFile()) writeFileSync(path, content);
  else if ((there.mode & ANYBODY_WRITES) === 0)
    throw new Unwritable(`${path} cannot be written: it may only be read, and is left as it was`);
  else if (there.nlink > 1) overwrite(path, content);
  else replace(path, content, there);
}

const ANYBODY_WRITES = 0o222;
const MODE = 0o7777;

/** Where the links of a path lead, also to what is not there yet. */
function followed(path: string): string {
  let at = resolve(path);
  for (let hops = 0; lstatSync(at, { throwIfNoEntry: false })?.isSymbolicLink() === true; hops++) {
    // As many as Linux follows.
    if (hops === 40) throw new Unwritable(`${path} cannot be written: its links lead in a circle`);
    at = resolve(dirname(at), readlinkSync(at));
  }
  return at;
}

/** Written beside the target and renamed: whoever reads it, or ends the run, finds the old file or the whole new one. */
function replace(path: string, content: string | Uint8Array, there: Stats | null): void {
  const folder = dirname(path);
  clearLeftBehind(folder);
  const draft = join(folder, `${DRAFT}${process.pid}-${Date.now().toString(36)}`);
  ENDING.forEach((signal) => process.on(signal, finishFirst));
  try {
    writeDraft(draft, content);
    if (there !== null) likeBefore(draft, there);
    renameSync(draft, path);
  } catch (fault) {
    rmSync(draft, { force: true });
    // A file of one's own in a folder of somebody else's.
    if (there === null || !isForbidden(fault)) throw fault;
    overwrite(path, content);
  } finally {
    ENDING.forEach((signal) => process.removeListener(signal, finishFirst));
  }
}

function writeDraft(draft: string, content: string | Uint8Array): void {
  const file = openSync(draft, 'wx');
  try {
    writeFileSync(file, content);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

/** The moment between a draft and its name is over before anything else is looked at. */
const ENDING: readonly NodeJS.Signals[] = ['SIGINT', 'SIGTERM', 'SIGHUP'];
const finishFirst = (): void => undefined;

function isForbidden(fault: unknown): boolean {
  return fault instanceof Error && 'code' in fault && (fault.code === 'EACCES' || fault.code === 'EPERM');
}

/** Short, since the target's own name may be as long as a name can be. */
export const DRAFT = '.wellcut-part-';

function likeBefore(draft: string, { uid, gid, mode }: Stats): void {
  try {
    chownSync(draft, uid, gid);
  } catch (fault) {
    // Only root gives files away; one's own stays one's own.
    if (!(fault instanceof Error && 'code' in fault && fault.code === 'EPERM')) throw fault;
  }
  chmodSync(draft, mode & MODE);
}

/** What a run that was killed outright left in a folder. */
function clearLeftBehind(folder: string): void {
  for (const name of namesIn(folder)) {
    const pid = name.startsWith(DRAFT) ? Number.parseInt(name.slice(DRAFT.length), 10) : NaN;
    if (Number.isInteger(pid) && !isRunning(pid)) rmSync(join(folder, name), { force: true });
  }
}

/** None where the folder may be written to and not be listed. */
function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (fault) {
    if (isForbidden(fault)) return [];
    throw fault;
  }
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (fault) {
    return fault instanceof Error && 'code' in fault && fault.code === 'EPERM';
  }
}

/** In place, since the file has other names; what was there comes back where the new does not fit. */
function overwrite(path: string, content: string | Uint8Array): void {
  const before = readFileSync(path);
  try {
    writeFileSync(path, content);
  } catch (fault) {
    writeFileSync(path, before);
    throw fault;
  }
}
