/**
 * `npm run bench`: how long solving, drawing and one dragged frame take, beside the figures not to be over.
 * Machines are noisy: read the ratios of one run, and compare before and after on the same machine.
 */
import { spawnSync } from 'node:child_process';
import { readFileSync, readdirSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import './ensure-packages.mjs';

const root = new URL('..', import.meta.url);
const only = process.argv[2];
if (spawnSync('npm', ['run', '-s', 'build'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] }).status !== 0)
  process.exit(1);

const { readPlanText, solve, draw, toSvg } = await import(new URL('dist/node/lib.js', root));
const { choosePump, chooseTank, headroomOf } = await import(new URL('dist/node/choosing.js', root));
const samples = readdirSync(new URL('static/samples', root)).filter((name) => name.endsWith('.json'));

const quantile = (times, share) => times.sort((a, b) => a - b)[Math.floor((times.length - 1) * share)];
const ms = (value) => `${value.toFixed(value < 1 ? 3 : 2)} ms`;
function row(what, measured, toHold) {
  console.log(`${what.padEnd(66)} ${measured.padEnd(34)} ${toHold}`);
}

function time(work, { rounds = 1500, warm = 400 } = {}) {
  for (let i = 0; i < warm; i++) work(i);
  const times = [];
  for (let i = 0; i < rounds; i++) {
    const begun = performance.now();
    work(i);
    times.push(performance.now() - begun);
  }
  return times;
}

async function epanetMedian() {
  const { Project, Workspace, NodeType, LinkType, FlowUnits, HeadLossType } = await import('epanet-js');
  const workspace = new Workspace();
  if (workspace.loadModule) await workspace.loadModule();
  return quantile(
    time(
      () => {
        const model = new Project(workspace);
        model.init('report.rpt', 'out.bin', FlowUnits.GPM, HeadLossType.DW);
        const well = model.addNode('well', NodeType.Reservoir);
        const top = model.addNode('top', NodeType.Junction);
        const end = model.addNode('end', NodeType.Junction);
        const tank = model.addNode('tank', NodeType.Reservoir);
        model.setNodeValue(well, 0, -96);
        model.setNodeValue(tank, 0, 146);
        model.addCurve('pump');
        model.setCurveValue(model.getCurveIndex('pump'), 1, 10, 300);
        const pump = model.addLink('pump', LinkType.Pump, 'well', 'end');
        model.setLinkValue(pump, 19, model.getCurveIndex('pump'));
        const drop = model.addLink('drop', LinkType.Pipe, 'end', 'top');
        const line = model.addLink('line', LinkType.Pipe, 'top', 'tank');
        model.setPipeData(drop, 172.5, 1.049, 0.005, 0);
        model.setPipeData(line, 120, 1.049, 0.005, 0);
        void end;
        void top;
        model.solveH();
        model.close();
      },
      { rounds: 200, warm: 30 },
    ),
    0.5,
  );
}

async function nodeSide() {
  let epanet = null;
  try {
    epanet = await epanetMedian();
  } catch (fault) {
    console.log(`(EPANET's engine could not be run beside it: ${fault.message})`);
  }
  const wells = samples.map((name) => {
    const reading = readPlanText(readFileSync(new URL(`static/samples/${name}`, root), 'utf8'));
    if (!reading.ok) throw new Error(`${name} cannot be read`);
    const { plan } = reading;
    const solution = solve(plan);
    const view = { sheet: 'all', width: 1040, height: 1000, units: plan.units ?? 'us', theme: 'light' };
    return { name, plan, solution, write: () => toSvg(draw(solution, view)) };
  });
  const early = inTurn(wells, 25).flat();
  row('draw and write SVG, the first hundred of a process, median', ms(quantile(early, 0.5)), '');
  // An engine goes on translating a program of this size for some two thousand drawings.
  inTurn(wells, 800);
  const drawing = inTurn(wells, 800);
  wells.forEach(({ name, plan, solution, write }, i) => {
    const solving = quantile(
      time(() => solve(plan)),
      0.5,
    );
    const ahead = quantile(
      time(() => headroomOf(plan, solution), { rounds: 60, warm: 20 }),
      0.5,
    );
    const svg = write();
    const beside = epanet === null ? '' : `, ${(solving / epanet).toFixed(2)} of EPANET's ${ms(epanet)}`;
    row(`${name}: solve, median`, `${ms(solving)}${beside}`, '0.05 ms');
    const choosing = time(() => [choosePump(plan), chooseTank(plan)], { rounds: 30, warm: 10 });
    row(`${name}: which pump and which tank, all rows, median`, ms(quantile(choosing, 0.5)), '60 ms');
    row(`${name}: how far it may go, whole, median`, ms(ahead), '30 ms');
    row(`${name}: draw and write SVG, median`, ms(quantile(drawing[i], 0.5)), '0.5 ms');
    row(
      `${name}: SVG, section and both details`,
      `${(svg.length / 1000).toFixed(1)} kB, ${(gzipSync(svg).length / 1000).toFixed(1)} kB gzipped`,
      '60 kB',
    );
  });
}

/** Times of each well's drawing, one well after the other as a batch draws them. */
function inTurn(wells, rounds) {
  const times = wells.map(() => []);
  for (let i = 0; i < rounds; i++) {
    wells.forEach(({ write }, k) => {
      const begun = performance.now();
      write();
      times[k].push(performance.now() - begun);
    });
  }
  return times;
}

/**
 * Wraps the page's animation frames while `window.frames` is there: from the callback that applies the newest pointer
 * position to the microtask after the page has patched its attributes, and then on through a forced style and layout.
 * Frames in which the pointer has not reached the level's next step draw nothing and are not counted.
 */
function measureFrames() {
  const placed = () => document.querySelector('[data-handle="pumpSetting"]')?.style.transform;
  const request = window.requestAnimationFrame.bind(window);
  window.requestAnimationFrame = (work) =>
    request((now) => {
      const before = placed();
      const begun = performance.now();
      work(now);
      if (!window.dragFrames) return;
      Promise.resolve()
        .then(() => {})
        .then(() => {
          const patched = performance.now();
          void document.body.offsetHeight;
          const laidOut = performance.now();
          if (placed() !== before) window.dragFrames.push([patched - begun, laidOut - begun]);
        });
    });
}

/** Drags the pump up and down in the built page, bare and with the processor slowed four times. */
async function pageSide() {
  const { chromium } = await import('@playwright/test');
  const { launchOptions } = await import('./browser.mjs');
  const { preview } = await import('vite');
  const server = await preview({
    logLevel: 'silent',
    root: root.pathname,
    preview: { port: 4199, host: '127.0.0.1' },
    build: { outDir: 'dist/app' },
  });
  const browser = await chromium.launch(launchOptions());
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 1000 } });
    await page.addInitScript(measureFrames);
    await page.goto('http://127.0.0.1:4199/');
    await page.getByRole('button', { name: /Tamarack Ridge/ }).click();
    const session = await page.context().newCDPSession(page);
    // As on the other side, what is measured against a figure has run before; the first drag of a page is told by itself.
    for (const [run, rate] of [1, 1, 4].entries()) {
      await session.send('Emulation.setCPUThrottlingRate', { rate });
      const chip = await page.locator('[data-handle="pumpSetting"]').first().boundingBox();
      const x = chip.x + 12;
      const y = chip.y + chip.height / 2;
      await page.mouse.move(x, y);
      await page.mouse.down();
      await page.mouse.move(x, y - 10);
      await page.evaluate(() => (window.dragFrames = []));
      for (let i = 1; i <= 300; i++) {
        await page.mouse.move(x, y - 10 - 60 * Math.abs(Math.sin(i / 25)));
        await page.evaluate(() => new Promise((done) => setTimeout(done, 0)));
      }
      const frames = await page.evaluate(() => window.dragFrames);
      await page.evaluate(() => delete window.dragFrames);
      await page.mouse.up();
      const slowed = run === 0 ? 'the page’s first drag' : rate === 1 ? 'bare' : 'slowed four times';
      const say = (times) => `median ${ms(quantile(times, 0.5))}, p95 ${ms(quantile(times, 0.95))}`;
      const script = frames.map(([time]) => time);
      const whole = frames.map(([, time]) => time);
      row(
        `one dragged frame, ${slowed}, pointer to attributes`,
        `${say(script)} (${script.length} frames)`,
        run === 0 ? '' : rate === 1 ? 'p95 2 ms' : 'p95 8.3 ms',
      );
      row(
        `one dragged frame, ${slowed}, with style and layout`,
        say(whole),
        run === 0 ? '' : rate === 1 ? 'p95 4.2 ms' : 'p95 8.3 ms',
      );
    }
  } finally {
    await browser.close();
    await new Promise((done) => server.httpServer.close(done));
  }
}

if (only !== 'page') await nodeSide();
if (only !== 'node') await pageSide();
process.exit(0);
