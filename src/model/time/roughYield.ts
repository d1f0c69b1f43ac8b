import type { WellFacts } from '../facts.ts';

/** How far a reported yield is to be believed, as the end of a sentence; null of one that a pump brought up. */
export function roughYield({ yieldFrom }: Pick<WellFacts, 'yieldFrom'>): string | null {
  switch (yieldFrom) {
    case 'pump':
      return null;
    case 'air lift':
      return 'a yield blown with air is a rough maximum';
    case 'bailer':
      return 'a yield that was bailed is a rough maximum';
    case null:
      return 'nobody said how it was found, so it is a rough maximum';
  }
}
