/** One of the threads of a batch: a parcel of lines in, what becomes of each out. */
import { parentPort, workerData } from 'node:worker_threads';
import { EXIT, Unwritable } from '../exits.ts';
import { judgeRecord, type Asked } from './judgeRecord.ts';
import type { BatchRecord } from './recordsOf.ts';

/** `printed` holds a line for each record, ready for standard output. */
export type Parcel =
  | { readonly printed: string; readonly count: number; readonly ends: readonly number[]; readonly told: string }
  | { readonly unwritable: string };

parentPort?.on('message', (records: readonly BatchRecord[]) => parentPort?.postMessage(parcelOf(records)));

function parcelOf(records: readonly BatchRecord[]): Parcel {
  try {
    const judged = records.map((record) => judgeRecord(record, workerData as Asked));
    return {
      printed: judged.map(({ result }) => `${JSON.stringify(result)}\n`).join(''),
      count: judged.length,
      ends: [...new Set(judged.map(({ end }) => EXIT[end]))],
      told: judged.map(({ line, problem }) => (problem === null ? '' : `line ${line}: ${problem}\n`)).join(''),
    };
  } catch (fault) {
    if (!(fault instanceof Unwritable)) throw fault;
    return { unwritable: fault.message };
  }
}
