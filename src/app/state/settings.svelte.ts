/** How this device likes to see a well: units, theme, snapping. No part of the plan, so undo leaves it alone. */
import { MediaQuery } from 'svelte/reactivity';
import type { View } from '../../draw/view.ts';
import type { Store } from './store.ts';

export type Units = 'us' | 'metric';
export type ThemeChoice = 'system' | 'light' | 'dark' | 'contrast';

const KEY = 'wellcut/settings';

export class Settings {
  /** Null: as the plan was typed. */
  units = $state<Units | null>(null);
  theme = $state<ThemeChoice>('system');
  snapping = $state(true);

  readonly #dark = new MediaQuery('(prefers-color-scheme: dark)');
  readonly #moreContrast = new MediaQuery('(prefers-contrast: more)');
  readonly #forced = new MediaQuery('(forced-colors: active)');
  readonly #store: Store;

  constructor(store: Store) {
    this.#store = store;
    const { units, theme, snapping } = readSettings(store.get(KEY));
    if (units === 'us' || units === 'metric') this.units = units;
    if (theme === 'light' || theme === 'dark' || theme === 'contrast') this.theme = theme;
    if (typeof snapping === 'boolean') this.snapping = snapping;
  }

  /** What the page wears now. */
  readonly shade: 'light' | 'dark' = $derived.by(() => {
    const chosen = this.theme === 'light' || this.theme === 'dark';
    // Forced colours are the system's whatever was chosen here, and the browser then calls them light or dark.
    return chosen && !this.#forced.current ? (this.theme as 'light' | 'dark') : this.#dark.current ? 'dark' : 'light';
  });

  /** Strong contrast: chosen here, or asked for by the system, which leaves drawings alone when it forces colours. */
  readonly contrast: boolean = $derived.by(
    () => this.theme === 'contrast' || this.#moreContrast.current || this.#forced.current,
  );

  /** What the drawing wears now. */
  readonly drawn: View['theme'] = $derived.by(() => {
    if (!this.contrast) return this.shade;
    return this.shade === 'dark' ? 'contrast-dark' : 'contrast';
  });

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
