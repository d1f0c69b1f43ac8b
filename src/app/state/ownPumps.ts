/** Pumps that were pasted, kept on this device under their names: for every well, whatever plan they came with. */
import { pointsOf, type OwnPump } from '../../model/choose/candidates.ts';
import { pumpPointsFault } from '../../model/formulas/pointsCurve.ts';
import { parseQuantity } from '../../model/units.ts';
import type { Rooms } from '../keeping/rooms.ts';

export class OwnPumps {
  readonly #rooms: Rooms;
  readonly #onchange: () => void;
  #pumps = new Map<string, OwnPump>();
  /** Names that the device refused: there for as long as the page is. */
  readonly #unkept = new Set<string>();

  /** @param onchange  what is on the device has changed */
  constructor(rooms: Rooms, onchange: () => void = () => {}) {
    this.#rooms = rooms;
    this.#onchange = onchange;
  }

  /** Reads what the device has; what it refused stays beside it. */
  async open(): Promise<void> {
    const kept = (await this.#rooms.all('pumps')).map(([, pump]) => pump).filter(isPump);
    const unkept = [...this.#pumps].filter(([name]) => this.#unkept.has(name));
    // What another version or another hand wrote there is passed over, never thrown at.
    this.#pumps = new Map([...kept.map((pump) => [pump.name, pump] as const), ...unkept]);
  }

  list(): readonly OwnPump[] {
    return [...this.#pumps.values()];
  }

  /** @returns  whether it outlives the page, as far as is known yet; one of the same name is replaced */
  keep(pump: OwnPump): boolean {
    const refused = this.#unkept.size > 0;
    this.#pumps.set(pump.name, pump);
    this.#unkept.add(pump.name);
    void this.#put(pump.name, pump);
    return this.#rooms.lasting && !refused;
  }

  remove(name: string): void {
    this.#pumps.delete(name);
    this.#unkept.delete(name);
    void this.#put(name, undefined);
  }

  async #put(name: string, pump: OwnPump | undefined): Promise<void> {
    try {
      await this.#rooms.change('pumps', name, () => ({
        puts: [{ room: 'pumps', key: name, value: pump }],
        answer: null,
      }));
      if (this.#pumps.get(name) === pump) this.#unkept.delete(name);
      this.#onchange();
    } catch (fault) {
      console.info('wellcut: a pump of one’s own could not be kept', fault);
    }
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
