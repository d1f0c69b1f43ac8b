/** A plan's path as a person would say it: "pump, intake to discharge". */
import { fields } from '../../model/plan/fields.ts';

const LABELS = new Map(fields.map(({ path, label }) => [path, label]));

export function nameOfPath(path: string): string {
  const label = LABELS.get(path) ?? LABELS.get(path.replaceAll(/\.\d+(?=\.|$)/g, '.*'));
  return (
    label ??
    path.replaceAll(/([a-z])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replaceAll('.', ', ')
  );
}
