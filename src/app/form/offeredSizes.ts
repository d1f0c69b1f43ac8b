/** Sizes that the tables have, to pick from: those of the plan's own family first. */
import { DEFAULTS } from '../../model/plan/defaults.ts';
import { valueAt } from '../../model/plan/editPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { casingSizes } from '../../model/tables/casings.ts';
import { isPipeMaterial } from '../../model/tables/pipeMaterials.ts';
import { pipeSizes, pipeStandards } from '../../model/tables/pipes.ts';
import { usualWires, wireText } from '../../model/tables/wireSizes.ts';

const METRIC = /mm2?$|^DN/;

/** @returns  as one types them; empty for a field that is no size */
export function offeredSizes(plan: Plan, path: string): readonly string[] {
  const sizes = sizesAt(plan, path);
  const typed = valueAt(plan, path);
  const metric = typeof typed === 'string' ? METRIC.test(typed) : plan.units === 'metric';
  const own = sizes.filter((size) => METRIC.test(size) === metric);
  return [...own, ...sizes.filter((size) => METRIC.test(size) !== metric)];
}

function sizesAt(plan: Plan, path: string): readonly string[] {
  if (path === 'wire.size') return [...usualWires('AWG'), ...usualWires('mm2')].map(wireText);
  const group = path.slice(0, path.lastIndexOf('.'));
  if (path === 'dropPipe.size' || path === 'house.line.size') {
    const said = valueAt(plan, `${group}.standard`);
    const named = valueAt(plan, `${group}.material`);
    const material = isPipeMaterial(named) ? named : DEFAULTS.pipeMaterial;
    const standards = typeof said === 'string' ? [said] : pipeStandards(material);
    return [...new Set(standards.flatMap((standard) => pipeSizes(standard)))];
  }
  if (!/^well\.casings?(?:\.\d+)?\.size$/.test(path)) return [];
  const material = valueAt(plan, `${group}.material`);
  const known = material === 'PVC' || material === 'stainless steel' || material === 'concrete' ? material : 'steel';
  return casingSizes(known);
}
