/** One drawing, rendered by three programs that know nothing of each other, at two pixels a unit. */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from '@playwright/test';
import { PNG } from 'pngjs';
import { toPng } from '../../src/cli/png.ts';
import { fontFaces, writeFontconfig } from './fonts.ts';

export type Renderer = 'Chromium' | 'resvg' | 'librsvg';

export interface Image {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue, alpha; row by row. */
  readonly data: Uint8Array;
}

const ZOOM = 2;

export async function inChromium(browser: Browser, svgs: readonly string[]): Promise<Image[]> {
  const page = await browser.newPage({ deviceScaleFactor: ZOOM });
  try {
    await page.setContent(`<style>${fontFaces()}body{margin:0}svg{display:block}</style><div></div>`);
    const images: Image[] = [];
    for (const svg of svgs) {
      await page.evaluate(async (text) => {
        document.querySelector('div')!.innerHTML = text;
        await document.fonts.ready;
      }, svg);
      images.push(PNG.sync.read(await page.locator('div > svg').screenshot()));
    }
    return images;
  } finally {
    await page.close();
  }
}

/** By the very function that the command line uses. */
export async function inResvg(svg: string): Promise<Image> {
  return PNG.sync.read(Buffer.from(await toPng(svg, 'screen')));
}

/** Null where the machine has no rsvg-convert. */
export function inLibrsvg(svg: string): Image | null {
  const folder = mkdtempSync(join(tmpdir(), 'wellcut-renderers-'));
  try {
    const { status, stdout } = spawnSync('rsvg-convert', ['--zoom', String(ZOOM)], {
      input: svg,
      env: { ...process.env, FONTCONFIG_FILE: writeFontconfig(folder) },
      maxBuffer: 1 << 28,
    });
    return status === 0 ? PNG.sync.read(stdout) : null;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function librsvgVersion(): string | null {
  const { status, stdout } = spawnSync('rsvg-convert', ['--version'], { encoding: 'utf8' });
  return status === 0 ? (/\d[\d.]*/.exec(stdout)?.[0] ?? '') : null;
}
