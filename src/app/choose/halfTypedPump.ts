/** A pump that is half typed in: kept beside the well as it is typed, and there again whatever became of the page. */
import type { FlowUnit, HeadUnit } from '../../model/choose/pastedCurve.ts';
import type { Workspace } from '../state/workspace.svelte.ts';

export interface HalfTypedPump {
  readonly name: string;
  readonly power: string;
  /** Flow and head, as they were pasted. */
  readonly text: string;
  /** Null: as the well is shown. */
  readonly flow: FlowUnit | null;
  readonly head: HeadUnit | null;
}

export const FLOWS: readonly FlowUnit[] = ['gpm', 'L/min', 'L/s', 'm3/h'];
export const HEADS: readonly HeadUnit[] = ['ft', 'm', 'psi', 'bar', 'kPa'];

const NOTHING: HalfTypedPump = { name: '', power: '', text: '', flow: null, head: null };
const NAME = 'own pump';

export function keptPump({ drafts, desk }: Workspace): HalfTypedPump {
  return desk.id === null ? NOTHING : readPump(drafts.load(desk.id, NAME));
}

/** Units alone are nothing that anybody would miss. */
export function keepPump({ drafts, desk }: Workspace, pump: HalfTypedPump): void {
  if (desk.id === null) return;
  if (pump.name === '' && pump.power === '' && pump.text === '') drafts.forget(desk.id, NAME);
  else drafts.keep(desk.id, NAME, JSON.stringify(pump));
}

/** @returns  what `JSON.stringify` wrote of one; of anything else what can be read */
export function readPump(text: string | null): HalfTypedPump {
  if (text === null) return NOTHING;
  try {
    const kept = JSON.parse(text) as Record<string, unknown> | null;
    const words = (key: 'name' | 'power' | 'text'): string => {
      const value = kept?.[key];
      return typeof value === 'string' ? value : '';
    };
    return {
      name: words('name'),
      power: words('power'),
      text: words('text'),
      flow: FLOWS.find((unit) => unit === kept?.['flow']) ?? null,
      head: HEADS.find((unit) => unit === kept?.['head']) ?? null,
    };
  } catch (fault) {
    console.info('wellcut: a half typed pump cannot be read', fault);
    return NOTHING;
  }
}
