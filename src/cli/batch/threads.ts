/** The threads of a batch: parcels go to each in turn, and each answers in the order that it was asked. */
import { Worker } from 'node:worker_threads';
import type { Asked } from './judgeRecord.ts';
import type { BatchRecord } from './recordsOf.ts';
import type { Parcel } from './worker.ts';

interface Waiting {
  readonly resolve: (parcel: Parcel) => void;
  readonly reject: (fault: Error) => void;
}

export class Threads {
  readonly #threads: readonly { readonly worker: Worker; readonly waiting: Waiting[] }[];
  #next = 0;

  /** @param program  the file of `worker.ts`, as it is built */
  constructor(program: URL, count: number, asked: Asked) {
    this.#threads = Array.from({ length: count }, () => {
      const worker = new Worker(program, { workerData: asked });
      const waiting: Waiting[] = [];
      worker.on('message', (parcel: Parcel) => waiting.shift()?.resolve(parcel));
      worker.on('error', (fault) => {
        const error = fault instanceof Error ? fault : new Error(String(fault));
        waiting.splice(0).forEach(({ reject }) => reject(error));
      });
      return { worker, waiting };
    });
  }

  judge(records: readonly BatchRecord[]): Promise<Parcel> {
    const thread = this.#threads[this.#next++ % this.#threads.length];
    if (thread === undefined) throw new RangeError('Threads: there is none');
    return new Promise((resolve, reject) => {
      thread.waiting.push({ resolve, reject });
      thread.worker.postMessage(records);
    });
  }

  async end(): Promise<void> {
    await Promise.all(this.#threads.map(({ worker }) => worker.terminate()));
  }
}
