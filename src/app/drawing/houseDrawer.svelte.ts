/** What draws the house is fetched when somebody asks for it, or once the page has nothing else to do: paper shows it too. */
import type { HouseDrawer } from '../../draw/view.ts';

let drawer = $state.raw<HouseDrawer | null>(null);

export const atHouse = {
  /** Null until it is fetched. */
  get drawer(): HouseDrawer | null {
    return drawer;
  },
  /** False where it could not be fetched. */
  async fetch(): Promise<boolean> {
    try {
      drawer ??= (await import('../../draw/details/house/atHouse.ts')).drawAtHouse;
    } catch {
      return false;
    }
    return true;
  },
};
