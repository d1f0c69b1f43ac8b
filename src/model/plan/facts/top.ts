/** How the pipe leaves the well, in SI; where nobody chose, as the frost asks for. */
import type { SiteFacts, TopFacts } from '../../facts.ts';
import { siteFrostEstimate } from '../../formulas/frost.ts';
import type { Metres } from '../../si.ts';
import { inches, writeQuantity } from '../../units.ts';
import type { Plan } from '../schema.ts';
import { read } from '../take.ts';
import type { Take } from '../take.ts';
import { ROOM_OVER_PUMP } from '../../string/lengths.ts';

type TopPlan = NonNullable<Plan['top']>;

/** Least cover of a water service without frost: 12 in, IPC 305.4 and IRC P2603.5 (section texts from memory). */
const LEAST_COVER = inches(12);
/** Where nobody knows the frost. Common practice, no source: nothing that a person should dig by. */
const WITHOUT_FROST_DEPTH = { us: '48 in', metric: '120 cm' } as const;
const STEP = { us: { unit: 'in', size: inches(6) }, metric: { unit: 'cm', size: 0.1 } } as const;

interface Place {
  readonly site: SiteFacts;
  readonly units: 'us' | 'metric';
  /** Depth of the pump's discharge where the plan says how deep the pump hangs: the pipe leaves above it. */
  readonly hangsAt: Metres | null;
}

export function topFacts(top: TopPlan | undefined, place: Place, take: Take): TopFacts {
  const { site, hangsAt } = place;
  const hasRoom = hangsAt === null || hangsAt >= LEAST_COVER + ROOM_OVER_PUMP;
  // Only where frost is said to reach nowhere, or the pump hangs at the surface, does the pipe stand above the ground.
  const usualKind = site.frostDepth === 0 || !hasRoom ? 'seal' : 'pitless';
  if (top === undefined) take.assume('top.kind', usualKind);
  if (top === undefined ? usualKind === 'seal' : top.kind === 'seal') {
    const seal = top?.kind === 'seal' ? top : undefined;
    return {
      kind: 'seal',
      heated: take.option('top.heated', seal?.heated, false),
      housed: take.option('top.housed', seal?.housed, false),
    };
  }
  const pitless = top?.kind === 'pitless' ? top : undefined;
  return {
    kind: 'pitless',
    depth: take.quantity('top.depth', pitless?.depth, 'length', usualDepth(place)),
    protrusion: take.fact('top.protrusion', pitless?.protrusion, 'length'),
    thread: pitless?.thread ?? null,
    submergedUse: pitless?.submergedUse ?? null,
  };
}

/** Frost and its margin, and never less than the code's cover, rounded up. */
function usualDepth(place: Place): string {
  const { units, hangsAt } = place;
  const wanted = frostFree(place);
  const parsed = read(wanted, 'length');
  const most = hangsAt === null ? Infinity : Math.max(hangsAt - ROOM_OVER_PUMP, hangsAt / 2);
  return parsed <= most ? wanted : writeQuantity(most, 'length', STEP[units].unit);
}

function frostFree({ site, units }: Place): string {
  const frost = site.frostDepth ?? estimated(site);
  if (frost === null) return WITHOUT_FROST_DEPTH[units];
  const { unit, size } = STEP[units];
  const least = Math.max(frost + site.frostMargin, LEAST_COVER);
  // What is a whole step already is not pushed to the next by the last bit of a sum.
  return writeQuantity(Math.ceil(least / size - 1e-6) * size, 'length', unit, size);
}

function estimated({ freezing }: SiteFacts): Metres | null {
  const estimate = freezing === null ? null : siteFrostEstimate(freezing);
  return estimate === null || 'reason' in estimate ? null : estimate.depth;
}
