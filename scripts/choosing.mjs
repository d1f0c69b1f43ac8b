/** `npm run choosing`: writes docs/choosing-a-pump.md and its pictures anew, from what the program chooses for three wells. */
import { readFileSync, writeFileSync } from 'node:fs';
import { spawnSync } from 'node:child_process';
import { format, resolveConfig } from 'prettier';
import './ensure-packages.mjs';

const root = new URL('..', import.meta.url);
if (spawnSync('npm', ['run', '-s', 'build:cli'], { cwd: root, stdio: ['ignore', 'ignore', 'inherit'] }).status !== 0)
  process.exit(1);
const { draw, en, readPlanText, show, solve, toSvg } = await import(new URL('dist/node/lib.js', root));
const { choiceWords, choosePump, chooseTank, choosing, sayPumpRow, sayTankRow } = await import(
  new URL('dist/node/choosing.js', root)
);

const JOBS = [
  {
    file: 'rock-well',
    title: 'An ordinary well in rock',
    asks: 'A house that wants 8 gpm, a switch of 40 and 60 psi, and a well that was pumped at 10 gpm.',
    why: 'Half a horsepower does not reach cut-out from there, and two run past their range. The trade hangs 10 gpm and 3/4 hp in such a well (common practice, from memory).',
  },
  {
    file: 'low-yield-well',
    title: 'A deep well that gives little',
    asks: 'A house that wants 4.5 gpm at its busiest, and a well that gives 1 gpm.',
    why: 'No pump makes it give more. The water that stands in the bore carries the peak, so the pump hangs deep, under a probe that stops it before it runs dry, and has to lift from there. The trade hangs 5 gpm and 3/4 to 1 hp in such a well (common practice, from memory).',
  },
  {
    file: 'screened-well',
    title: 'A shallow well with a screen, in metres, at 50 Hz',
    asks: 'A house that wants 30 L/min, and gravel that gives 60.',
    why: 'At 50 Hz a motor carries no more than its rated power, so it counts a size weaker than one of the same name at 60 Hz. The trade hangs 30 to 40 L/min and 0.55 to 0.75 kW there (common practice, from memory).',
  },
];

const words = { ...en, choose: choiceWords };
const KEYS = ['name', 'does', 'flow', 'spare', 'left', 'range', 'depth', 'pipe', 'wire', 'tank'];

function table(heads, rows) {
  const line = (cells) => `| ${cells.join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

/** How far two ratings are apart. */
function unlike(one, other) {
  return Math.abs(Math.log(one.rated / other.rated)) + Math.abs(Math.log(one.power / other.power));
}

const parts = [
  `# Choosing a pump

Which pump, pipe, wire and tank belong in a well follows from the well: how deep its water stands while it is pumped, what
the house wants, and at what pressure. \`wellcut check PLAN.json --choose\` tries every usual rating in it; on the page the
tab **Pump** does the same, and one click chooses. Below are three invented wells; the tables and pictures are the
program's own (\`npm run choosing\`).

A pump **does the job** when it

- reaches cut-out with 10 psi (69 kPa) to spare, with the water at its lowest,
- gives 1.1 times what the house wants at cut-in,
- works between 0.5 and 1.3 times its rated flow,
- leaves 10 ft (3 m) of water over its intake even if it is the strongest of its rating,
- and breaks no rule that another pump, pipe or wire would keep.

Of those the smallest power comes first, then the rated flow nearest to what is asked; one that gives more than twice what
is wanted stands after one that does as well, or works, and gives up to 1.6 times. Where nobody told the dry season it hangs with more water
over it. Pipe and wire are sized for where it then hangs and for what it gives. Weight decides on no pump: from 300 lb
(136 kg) on the table says that it needs a rig. Common practice, no source.

A well that gives less than the house wants is drawn from as deep as the pump lifts: there it gives 1.1 times from the water
at rest, and four fifths with the last water over its dry-run protection. Where air alone told the yield, what draws more
of it stands first, and of two with one motor the one that draws more of the store. A pump is past its range there only
where it is so with the water drawn down, and under it only where it is so from the water at rest. One named for more than
twice what is wanted is none there, where a smaller one serves.

A pump that does not pass the casing or the adapter is none, or depends on how wide the one that is bought is; where that
keeps them all, it is said above the table with what would do.

That is more than \`check\` asks of a pump that hangs: a pump that it finds nothing wrong with, and that only gives less
than 1.1 times, or runs outside that range, *works, but*, and stands after those that do.

What nobody said is never guessed: such a pump *depends*, and the table says on what; so does one that no usual tank is
large enough for. Where nobody knows how far the water falls, a pump that still works within its range with the water at
its dry-run protection stands before one that hardly lifts from there: that one may run on and never shut off. Where no
depth leaves water over the intake and room under the motor, the table says so first.

A pump that fills an **open tank**, from which a second one serves the house, is held against what the tank needs: where it
carries the peak, the day's water in eight hours of running. A float switch has to stop the pump, never a valve alone.

**Caution.** These are usual pumps of their rating, not one maker's: check the maker's curve before you buy. Pump, wiring
and well are work for licensed people; local code decides.`,
];

for (const { file, title, asks, why } of JOBS) {
  const reading = readPlanText(readFileSync(new URL(`docs/choosing/${file}.json`, root), 'utf8'));
  if (!reading.ok) throw new Error(`${file} cannot be read`);
  const { plan } = reading;
  const units = show(plan.units ?? 'us');
  const pumps = choosePump(plan);
  if (pumps.kind === 'refused') throw new Error(`${file} is refused`);
  const [best] = pumps.rows;
  const withPump = choosing(plan, best).plan;
  const tanks = chooseTank(withPump);
  if (tanks.kind === 'refused') throw new Error(`${file}: no tank`);
  const [tank] = tanks.rows;
  const chosen = choosing(withPump, tank).plan;
  const fits = pumps.rows.filter(({ does }) => does === 'yes' || does === 'depends').slice(0, 3);
  const nearly = pumps.rows
    .filter(({ does }) => does === 'no' || does === 'works')
    .toSorted((a, b) => unlike(a, best) - unlike(b, best))
    .slice(0, 4);
  const said = [...fits, ...nearly].map((row) => sayPumpRow(row, words, units));
  const picture = toSvg(
    draw(solve(chosen), {
      sheet: 'all',
      width: 1040,
      height: 1000,
      units: plan.units ?? 'us',
      theme: 'light',
      caption: true,
    }),
  );
  writeFileSync(new URL(`docs/choosing/${file}.svg`, root), `${picture}\n`);
  const { columns } = choiceWords.pumps;
  const sized = sayTankRow(tank, words, units);
  parts.push(
    `## ${title}`,
    `${asks} The plan: [${file}.json](choosing/${file}.json).`,
    `${said[0].does}: **${said[0].name}**, intake at ${said[0].depth}, ${said[0].pipe}, ${said[0].wire}; tank ${sized.name}. ${said[0].why} ${why}`,
    `![${title}, as it would be built](choosing/${file}.svg)`,
    table(
      KEYS.map((key) => columns[key]),
      said.map((row) => KEYS.map((key) => row[key])),
    ),
    'What the others lack:',
    nearly.map((row, i) => `- ${said[fits.length + i].name}: ${said[fits.length + i].why}`).join('\n'),
    `The tank: ${sized.why} ${choiceWords.tanks.row(sized.water, sized.hour, tank.startsADay === null ? null : sized.day)} ${choiceWords.tanks.precharge(units.pressure(tanks.precharge))}`,
  );
}

const path = new URL('docs/choosing-a-pump.md', root);
const options = await resolveConfig(path);
writeFileSync(path, await format(`${parts.join('\n\n')}\n`, { ...options, parser: 'markdown' }));
