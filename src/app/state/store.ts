/**
 * Small storage of the browser, written at once: settings, and what a page that ends leaves to the next. In memory where
 * the browser refuses.
 */
export interface Store {
  /** False when what is written is gone with the page. */
  readonly lasting: boolean;
  get(key: string): string | null;
  /** False when it could not be written (full, or forbidden). */
  set(key: string, value: string): boolean;
  remove(key: string): void;
  keys(): string[];
}

export function openStore(): Store {
  const storage = storageNamed('localStorage');
  return storage === null ? memoryStore() : storageStore(storage);
}

/** What only this tab sees, and still has after a reload. */
export function openTabStore(): Store {
  const storage = storageNamed('sessionStorage');
  return storage === null ? memoryStore() : storageStore(storage);
}

function storageNamed(name: 'localStorage' | 'sessionStorage'): Storage | null {
  try {
    const storage = window[name];
    const probe = 'wellcut/probe';
    storage.setItem(probe, '1');
    storage.removeItem(probe);
    return storage;
  } catch (refusal) {
    // A sandboxed frame or a private window may forbid storage: the page goes on without.
    console.info(`wellcut: the browser has no ${name}`, refusal);
    return null;
  }
}

function storageStore(storage: Storage): Store {
  return {
    lasting: true,
    get: (key) => storage.getItem(key),
    set(key, value) {
      try {
        storage.setItem(key, value);
        return true;
      } catch (refusal) {
        console.info('wellcut: storage is full', refusal);
        return false;
      }
    },
    remove: (key) => storage.removeItem(key),
    keys: () => Array.from({ length: storage.length }, (_, i) => storage.key(i)).filter((key) => key !== null),
  };
}

export function memoryStore(): Store {
  const kept = new Map<string, string>();
  return {
    lasting: false,
    get: (key) => kept.get(key) ?? null,
    set: (key, value) => {
      kept.set(key, value);
      return true;
    },
    remove: (key) => void kept.delete(key),
    keys: () => [...kept.keys()],
  };
}
