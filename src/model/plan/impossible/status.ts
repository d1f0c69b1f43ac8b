/** A status that stands for nothing: a mend would still move what the user meant to hold. */
import { fieldAt, fields } from '../fields.ts';
import { nearestName } from '../nearest.ts';
import { shortJson } from '../problem.ts';
import type { Problem } from '../problem.ts';
import type { Fields } from './raw.ts';

export function strangeStatus(status: Fields): Problem[] {
  return Object.keys(status)
    .filter((path) => !isPath(path))
    .map((path) => {
      const near = nearestName(
        path,
        fields.map((field) => field.path),
      );
      const write = near === null ? 'the path of a field, as in "pump.setting"' : `did you mean "${near}"?`;
      return {
        path: `status.${path}`,
        read: shortJson(status[path]),
        problem: 'said of no field of the plan',
        write,
        kind: 'value',
      };
    });
}

/** A field, or a group that holds fields: "pump" speaks for all of the pump. */
function isPath(path: string): boolean {
  const group = `${path.replace(/^well\.casing$/, 'well.casings').replace(/\.\d+(?=\.|$)/g, '.*')}.`;
  return fieldAt(path) !== null || fields.some((field) => field.path.startsWith(group));
}
