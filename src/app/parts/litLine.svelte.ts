/** Which line of the list is lit on the drawing: the one pointed at or in focus, else the one that was chosen. */
import type { PartLine } from '../../model/parts/partLine.ts';
import type { Workspace } from '../state/workspace.svelte.ts';

export class LitLine {
  readonly #workspace: Workspace;
  #chosen = $state.raw<PartLine | null>(null);

  constructor(workspace: Workspace) {
    this.#workspace = workspace;
  }

  /** @param line  null where the pointer or the focus has left one */
  point(line: PartLine | null): void {
    this.#workspace.lit = (line ?? this.#chosen)?.parts ?? null;
  }

  /** Once more takes it back. */
  choose(line: PartLine): void {
    this.#chosen = this.isChosen(line) ? null : line;
    if (this.#chosen !== null) this.#workspace.wantedParts = line.parts;
    this.point(null);
  }

  /** What is done with is not left lit. */
  leave(): void {
    this.#chosen = null;
    this.point(null);
  }

  isLit({ parts }: PartLine): boolean {
    const { lit } = this.#workspace;
    // One part is pointed at on the drawing, or those of a line are lit from here.
    return typeof lit === 'string' ? parts.includes(lit) : lit !== null && sameKeys(lit, parts);
  }

  isChosen(line: PartLine): boolean {
    return this.#chosen?.key === line.key && this.isLit(line);
  }
}

function sameKeys(some: readonly string[], others: readonly string[]): boolean {
  return some.length === others.length && some.every((key, i) => key === others[i]);
}
