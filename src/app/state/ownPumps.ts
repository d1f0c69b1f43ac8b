/** Pumps that were pasted, kept on this device under their names: for every well, whatever plan they came with. */
import { pointsOf, type OwnPump } from '../../model/choose/candidates.ts';
import { pumpPointsFault } from '../../model/formulas/pointsCurve.ts';
import { parseQuantity } from '../../model/units.ts';
import type { Store } from './store.ts';

const KEY = 'wellcut/pumps';

export class OwnPumps {
  readonly #store: Store;
  /** What is there for as long as the page is, where the store refuses. */
  #unkept: readonly OwnPump[] = [];

  constructor(store: Store) {
    this.#store = store;
  }

  list(): readonly OwnPump[] {
    const kept = readPumps(this.#store.get(KEY));
    return [...kept, ...this.#unkept.filter(({ name }) => !kept.some((pump) => pump.name === name))];
  }

  /** @returns  whether it outlives the page; one of the same name is replaced */
  keep(pump: OwnPump): boolean {
    const all = [...this.list().filter(({ name }) => name !== pump.name), pump];
    const kept = this.#store.set(KEY, JSON.stringify(all)) && this.#store.lasting;
    this.#unkept = kept ? [] : [...this.#unkept.filter(({ name }) => name !== pump.name), pump];
    return kept;
  }

  remove(name: string): void {
    const left = this.list().filter((pump) => pump.name !== name);
    this.#unkept = this.#unkept.filter((pump) => pump.name !== name);
    this.#store.set(KEY, JSON.stringify(left));
  }
}

/** What another version or another hand wrote there is passed over, never thrown at. */
function readPumps(text: string | null): OwnPump[] {
  if (text === null) return [];
  try {
    const read: unknown = JSON.parse(text);
    return Array.isArray(read) ? read.filter(isPump) : [];
  } catch (fault) {
    console.info('wellcut: the kept pumps cannot be read', fault);
    return [];
  }
}

function isPump(value: unknown): value is OwnPump {
  if (typeof value !== 'object' || value === null) return false;
  const { name, power, points } = value as Record<string, unknown>;
  return (
    typeof name === 'string' &&
    name !== '' &&
    (power === undefined || isQuantity(power, 'power')) &&
    Array.isArray(points) &&
    points.every(isPoint) &&
    pumpPointsFault(pointsOf(points)) === null
  );
}

function isPoint(value: unknown): value is [string, string] {
  return Array.isArray(value) && value.length === 2 && isQuantity(value[0], 'flow') && isQuantity(value[1], 'length');
}

function isQuantity(value: unknown, kind: 'flow' | 'length' | 'power'): boolean {
  return typeof value === 'string' && parseQuantity(value, kind).ok;
}
