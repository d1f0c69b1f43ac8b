/** The order of labels along a margin; while dragging, two change places only once they have clearly passed each other. */
export interface Ordered {
  readonly handle: string;
  readonly anchor: number;
}

/** Two anchors must have crossed by more than this before their labels change places [px]. */
const CROSSED = 4;

export function orderLabels<Label extends Ordered>(labels: readonly Label[], before?: readonly string[]): Label[] {
  const sorted = [...labels].sort((a, b) => a.anchor - b.anchor || (a.handle < b.handle ? -1 : 1));
  if (before === undefined) return sorted;
  const place = new Map(before.map((handle, i) => [handle, i]));
  const kept = sorted
    .filter((label) => place.has(label.handle))
    .sort((a, b) => (place.get(a.handle) ?? 0) - (place.get(b.handle) ?? 0));
  const fresh = sorted.filter((label) => !place.has(label.handle));
  const order: Label[] = [];
  for (const label of [...kept, ...fresh]) {
    let at = order.length;
    while (at > 0 && (order[at - 1]?.anchor ?? -Infinity) > label.anchor + CROSSED) at--;
    order.splice(at, 0, label);
  }
  return order;
}
