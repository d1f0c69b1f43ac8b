/** Labels of parts that are left out go with them, once all are laid out: the others stand where they stood. */
import type { Memory } from '../memory.ts';
import { showingOf, type Pieces } from '../pieces.ts';
import type { Callout, Laid } from './callouts.ts';

export interface Labels {
  readonly callouts: readonly Callout[];
  readonly laid: readonly Laid[];
}

export function labelsShown({ callouts, laid }: Labels, pieces: Pieces | undefined, { recall }: Memory): Labels {
  const isThere = ({ key }: Callout): boolean => showingOf(key, pieces) !== 'absent';
  return recall('labelsShown', [callouts, laid, pieces], () => ({
    callouts: callouts.filter(isThere),
    laid: laid.filter(({ callout }) => isThere(callout)),
  }));
}
