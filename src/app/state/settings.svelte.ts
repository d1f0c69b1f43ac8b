/** How this device likes to see a well: units, theme, snapping. No part of the plan, so undo leaves it alone. */
import { MediaQuery } from 'svelte/reactivity';
import type { Store } from './store.ts';

export type Units = 'us' | 'metric';
export type ThemeChoice = 'system' | 'light' | 'dark';

const KEY = 'wellcut/settings';

export class Settings {
  /** Null: as the plan was typed. */
  units = $state<Units | null>(null);
  theme = $state<ThemeChoice>('system');
  snapping = $state(true);

  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)');
  readonly #store: Store;

  constructor(store: Store) {
    this.#store = store;
    const { units, theme, snapping } = readSettings(store.get(KEY));
    if (units === 'us' || units === 'metric') this.units = units;
    if (theme === 'light' || theme === 'dark') this.theme = theme;
    if (typeof snapping === 'boolean') this.snapping = snapping;
  }

  /** What the page wears now. */
  get shade(): 'light' | 'dark' {
    return this.theme === 'system' ? (this.#dark.current ? 'dark' : 'light') : this.theme;
  }

  keep(): void {
    const { units, theme, snapping } = this;
    this.#store.set(KEY, JSON.stringify({ units, theme, snapping }));
  }
}

function readSettings(text: string | null): Record<string, unknown> {
  if (text === null) return {};
  try {
    const kept: unknown = JSON.parse(text);
    return typeof kept === 'object' && kept !== null ? (kept as Record<string, unknown>) : {};
  } catch (fault) {
    console.info('wellcut: the kept settings cannot be read', fault);
    return {};
  }
}
