/** What a tab remembers of the wells that were on its desk. */
import type { Plan } from '../../model/plan/schema.ts';

export class OnHand {
  /** By id: the plan that was read, or handed over to be written, last. */
  readonly plans = new Map<string, Plan>();
  /** By id: a sample that was not changed yet, by the name of its file and its title. */
  readonly samples = new Map<string, readonly [file: string, title: string]>();

  /** The same well under another id. */
  rename(from: string, to: string): void {
    const plan = this.plans.get(from);
    if (plan !== undefined) this.plans.set(to, plan);
    this.plans.delete(from);
  }
}
