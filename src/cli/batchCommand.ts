import { createReadStream } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { columnsOf, type Column } from './batch/csvPlan.ts';
import { makeFolder, type Asked } from './batch/judgeRecord.ts';
import { recordsOf, type BatchRecord } from './batch/recordsOf.ts';
import { Threads } from './batch/threads.ts';
import type { Parcel } from './batch/worker.ts';
import { EXIT, Unreadable, Unwritable } from './exits.ts';
import { print } from './print.ts';
import { whyNot } from './whyNot.ts';

/** Lines that go to a thread at once: enough that the way there costs little, few enough that all threads have some. */
const PARCEL = 32;
/** Parcels that wait for each thread. */
const WAITING = 2;
const MOST_JOBS = 256;

/** `wellcut batch [PLANS.ndjson|PLANS.csv] [--csv] [--draw DIR] [--jobs N]`: a plan a line in, a result a line out. */
export async function batchCommand(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      csv: { type: 'boolean', default: false },
      draw: { type: 'string' },
      jobs: { type: 'string' },
    },
  });
  const [path = '-'] = positionals;
  if (positionals.length > 1) throw new Unreadable('batch reads one stream: wellcut batch plans.ndjson');
  const jobs = jobsOf(values.jobs);
  const quoted = values.csv || /\.csv$/i.test(path);
  const pictures = values.draw ?? null;
  if (pictures !== null) makeFolder(pictures);
  return run(recordsOf(piecesOf(path), { quoted }), { quoted, pictures, jobs });
}

function jobsOf(typed: string | undefined): number {
  if (typed === undefined) return availableParallelism();
  const jobs = /^\d{1,3}$/.test(typed) ? Number(typed) : 0;
  if (jobs < 1 || jobs > MOST_JOBS)
    throw new Unreadable(`--jobs is "${typed}"; use a whole number from 1 to ${MOST_JOBS}`);
  return jobs;
}

interface How {
  readonly quoted: boolean;
  readonly pictures: string | null;
  readonly jobs: number;
}

async function run(records: AsyncIterable<readonly BatchRecord[]>, how: How): Promise<number> {
  let columns: readonly Column[] | null = null;
  let threads: Threads | null = null;
  const out = new Out();
  // As many as are begun and not yet printed: the input waits for them.
  const begun: Promise<void>[] = [];
  let printed = Promise.resolve();
  try {
    for await (const found of records) {
      let rest = found;
      if (how.quoted && columns === null) {
        const [heading, ...rows] = found;
        if (heading === undefined) continue;
        if ('problem' in heading) throw new Unreadable(`the heading cannot be read: ${heading.problem}`);
        columns = columnsOf(heading.text);
        rest = rows;
      }
      threads ??= threadsFor({ columns, pictures: how.pictures }, how.jobs);
      for (let i = 0; i < rest.length; i += PARCEL) {
        const judged = threads.judge(rest.slice(i, i + PARCEL));
        printed = Promise.all([judged, printed]).then(([parcel]) => out.take(parcel));
        // Awaited below; until then a fault of it is nobody's yet.
        printed.catch(() => undefined);
        begun.push(printed);
        if (begun.length >= how.jobs * WAITING) await begun.shift();
      }
    }
    await printed;
  } finally {
    await threads?.end();
  }
  return out.end();
}

function threadsFor(asked: Asked, jobs: number): Threads {
  return new Threads(new URL(PROGRAM, import.meta.url), jobs, asked);
}

/** Beside this program, as the build puts it. */
const PROGRAM = './batchWorker.js';

async function* piecesOf(path: string): AsyncGenerator<Uint8Array> {
  const stream = path === '-' ? process.stdin : createReadStream(path);
  try {
    for await (const piece of stream) yield piece as Uint8Array;
  } catch (fault) {
    throw new Unreadable(`${path === '-' ? 'standard input' : path} cannot be read: ${whyNot(fault)}`);
  }
}

/** Between two words on how far it is, on a terminal [ms]. */
const PROGRESS = 500;

/** What is printed, and how it ends: the gravest of what was met. */
class Out {
  #count = 0;
  #told = 0;
  readonly #ends = new Set<number>();

  take(parcel: Parcel): void {
    if ('unwritable' in parcel) throw new Unwritable(parcel.unwritable);
    print(parcel.printed);
    if (parcel.told !== '') process.stderr.write(parcel.told);
    this.#count += parcel.count;
    parcel.ends.forEach((end) => this.#ends.add(end));
    const now = performance.now();
    if (process.stderr.isTTY && now - this.#told > PROGRESS) {
      this.#told = now;
      process.stderr.write(`\r${this.#count} plans`);
    }
  }

  end(): number {
    if (process.stderr.isTTY) process.stderr.write(`\r${this.#count} plans\n`);
    return [EXIT.ourFault, EXIT.unreadable, EXIT.danger].find((end) => this.#ends.has(end)) ?? EXIT.good;
  }
}
