/** Barbs and clamps of plastic pipe: what holds the string together. */
import type { Facts } from '../facts.ts';
import type { Change } from '../solution.ts';

export const CLAMPS_PER_JOINT = 2;

export interface JointFault {
  readonly severity: 'danger' | 'warning';
  readonly title: string;
  readonly amount: string;
  readonly message: string;
  readonly label: string;
}

/** What is wrong with barbs and clamps, worst first, and all that mends it. Rigid pipe has none of them. */
export function jointFaults({ dropPipe, string }: Facts): {
  readonly found: JointFault | null;
  readonly changes: readonly Change[];
} {
  const faults: JointFault[] = [];
  const changes: Change[] = [];
  if (dropPipe.material !== 'PE') return { found: null, changes };
  if (string.fittings === 'plastic' || string.fittings === 'nylon') {
    faults.push({
      severity: 'danger',
      title: 'Plastic fittings carry the string',
      amount: string.fittings,
      label: 'Use stainless steel fittings',
      message: `${string.fittings === 'nylon' ? 'Nylon' : 'Plastic'} insert fittings carry the whole string; metal barbs are asked for in a well.`,
    });
    changes.push({ path: 'string.fittings', to: 'stainless steel' });
  }
  if (string.clampsPerJoint < CLAMPS_PER_JOINT) {
    faults.push({
      severity: 'danger',
      title: 'A single clamp holds each joint',
      amount: `${string.clampsPerJoint} of ${CLAMPS_PER_JOINT}`,
      label: 'Use two clamps a joint',
      message: `Each joint has ${string.clampsPerJoint === 0 ? 'no clamp' : 'one clamp'}; two all-stainless clamps a joint are asked for.`,
    });
    changes.push({ path: 'string.clampsPerJoint', to: CLAMPS_PER_JOINT });
  }
  if (string.clampScrew === 'carbon steel') {
    faults.push({
      severity: 'warning',
      title: 'The clamp screws will rust',
      amount: 'carbon steel',
      label: 'Use all-stainless clamps',
      message: 'Carbon-steel screws rust away under water, and the clamp lets go.',
    });
    changes.push({ path: 'string.clampScrew', to: 'stainless steel' });
  }
  return { found: faults[0] ?? null, changes };
}
