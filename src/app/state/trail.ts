/**
 * Where the browser's own back and forward lead: every well that came on the desk, and each step of the start page, is a
 * place that one can go back to.
 */
/** What the empty desk shows: the ways to begin, or the report that is being typed. */
export type Door = 'doors' | 'report';

export interface Place {
  /** Id of the well on the desk; null: the start page. */
  readonly well: string | null;
  readonly door: Door;
}

/** In the state of the browser's history, beside what others may keep there. */
const KEY = 'wellcut';

export class Trail {
  readonly #history: History;
  readonly #go: (place: Place) => void;
  #here: Place | null = null;

  /** @param go  brings the page to a place that the reader went back or forth to */
  constructor(history: History, go: (place: Place) => void) {
    this.#history = history;
    this.#go = go;
  }

  /** To be called whenever the page shows another place, whoever brought it there. */
  at(place: Place): void {
    const before = this.#here;
    if (before !== null && before.well === place.well && (place.well !== null || before.door === place.door)) return;
    this.#here = place;
    const state = { ...stateOf(this.#history), [KEY]: place };
    // What a page shows first takes the place of what it came by.
    if (before === null) this.#history.replaceState(state, '');
    else this.#history.pushState(state, '');
  }

  /** The reader went back or forth. */
  came(state: unknown): void {
    const place = isRecord(state) ? state[KEY] : undefined;
    if (!isPlace(place)) return;
    this.#here = place;
    this.#go(place);
  }
}

function stateOf(history: History): Record<string, unknown> {
  const state: unknown = history.state;
  return isRecord(state) ? state : {};
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

function isPlace(value: unknown): value is Place {
  return (
    isRecord(value) &&
    (value['well'] === null || typeof value['well'] === 'string') &&
    (value['door'] === 'doors' || value['door'] === 'report')
  );
}
