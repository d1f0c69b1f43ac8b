import { parseArgs } from 'node:util';
import { linkOf } from '../link/planLink.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';

/** `wellcut link PLAN.json [--base URL]`: the whole well as an address. */
export function linkCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { base: { type: 'string' } },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1) throw new Unreadable('link needs one plan: wellcut link PLAN.json');
  print(`${addressAt(values.base, linkOf(readInput(path)))}\n`);
  return EXIT.good;
}

/** @param base  address of the page; without one the fragment stands alone */
export function addressAt(base: string | undefined, fragment: string): string {
  if (base === undefined) return `#${fragment}`;
  if (!URL.canParse(base) || !/^https?:$/.test(new URL(base).protocol))
    throw new Unreadable(`"${base}" is no address of a page; write it as https://wells.example/`);
  const address = new URL(base);
  address.hash = fragment;
  return address.href;
}
