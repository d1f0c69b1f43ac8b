import { renameSync, rmSync, writeFileSync } from 'node:fs';
import { Unreadable } from './exits.ts';

/** Writes beside the target and renames, so that a failed run never leaves half a file. "-" is standard output. */
export function writeOutput(path: string, content: string | Uint8Array): void {
  if (path === '-') {
    process.stdout.write(content);
    return;
  }
  const draft = `${path}.${process.pid}.part`;
  try {
    writeFileSync(draft, content);
    renameSync(draft, path);
  } catch (fault) {
    rmSync(draft, { force: true });
    throw new Unreadable(`${path} cannot be written: ${fault instanceof Error ? fault.message : String(fault)}`);
  }
}
