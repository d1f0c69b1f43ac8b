/** HTML to PDF by a browser that is there: it breaks the pages as a reader's own would. */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Unreadable } from './exits.ts';

const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];
/** ms */
const PATIENCE = 120_000;

/** @throws Unreadable where no browser is found, or where it makes no PDF */
export function toPdf(html: string): Uint8Array {
  const browser = [process.env['CHROMIUM_PATH'], ...PLACES].find((path) => path !== undefined && existsSync(path));
  if (browser === undefined)
    throw new Unreadable(
      'a PDF is made by Chromium, which was not found: name it in CHROMIUM_PATH, or write .html and print that',
    );
  const folder = mkdtempSync(join(tmpdir(), 'wellcut-sheet-'));
  try {
    const [page, pdf] = [join(folder, 'sheet.html'), join(folder, 'sheet.pdf')];
    writeFileSync(page, html);
    const { stderr, status } = spawnSync(
      browser,
      [
        ...[
          '--headless',
          '--no-sandbox',
          '--disable-gpu',
          '--no-pdf-header-footer',
          `--user-data-dir=${folder}/profile`,
        ],
        ...[`--print-to-pdf=${pdf}`, pathToFileURL(page).href],
      ],
      { encoding: 'utf8', timeout: PATIENCE },
    );
    if (!existsSync(pdf))
      throw new Unreadable(
        `${browser} made no PDF (it ended with ${status ?? 'no answer'}): ${stderr.trim().split('\n').at(-1)}`,
      );
    return readFileSync(pdf);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
