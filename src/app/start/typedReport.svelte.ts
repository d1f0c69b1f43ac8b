/** The report under the pen: what was typed is kept at once, until it is done with. */
import { untrack } from 'svelte';
import { NO_WELL } from '../keeping/drafts.ts';
import type { Page } from '../state/page.svelte.ts';
import { blankReport, isBlankReport, withKept } from './reportDraft.ts';
import type { Report } from './report.ts';

export class TypedReport {
  report = $state<Report>(blankReport('us'));

  readonly #page: Page;
  /** Something stood there, so that nothing is left to keep once it is gone. */
  #emptied = false;

  /** To be made while a component is set up: it lives as long as that. */
  constructor(page: Page) {
    this.#page = page;
    this.report = withKept(blankReport(page.settings.units ?? 'us'), this.#keptText());
    // What this device has and this tab had not comes a moment later; what is typed by then stays.
    void page.opened.then(() => (this.report = withKept(this.report, this.#keptText())));
    $effect(() => {
      const typed = JSON.stringify(this.report);
      const blank = isBlankReport(this.report);
      untrack(() => this.#keep(typed, blank));
    });
  }

  write<Field extends keyof Report>(field: Field, value: Report[Field]): void {
    this.report[field] = value;
  }

  /** The lines of another report take the place of what stands there, where they say anything. */
  take(lines: Partial<Report>): void {
    this.report = { ...this.report, ...lines };
  }

  /** What was read in a text and has no line is left out. */
  leaveOut(path: string): void {
    this.report.also = Object.fromEntries(Object.entries(this.report.also).filter(([each]) => each !== path));
  }

  #keptText(): string | null {
    return this.#page.drafts.load(NO_WELL, 'report');
  }

  #keep(typed: string, blank: boolean): void {
    if (!blank) this.#page.drafts.keep(NO_WELL, 'report', typed);
    else if (this.#emptied) this.#page.drafts.forget(NO_WELL, 'report');
    this.#emptied = !blank;
  }
}
