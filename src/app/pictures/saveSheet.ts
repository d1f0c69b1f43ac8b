/** The sheet to work from, as a file that any browser opens and prints. */
import type { Solution } from '../../model/solution.ts';
import { installSheetHtml } from '../../sheet/installSheet.ts';
import { download, fileName } from '../header/downloads.ts';
import { imprint } from '../header/imprint.ts';
import { addressOf, linkOf } from '../keeping/links.ts';
import { paperFor } from '../header/paperFor.ts';
import type { Units } from '../state/settings.svelte.ts';

export function saveSheet(solution: Solution, units: Units): void {
  const { date } = imprint(solution);
  const html = installSheetHtml(solution, {
    paper: paperFor(units).paper,
    units,
    // A page that was saved to a disk has no address that a phone could open.
    ...(window.location.protocol.startsWith('http') ? { link: addressOf(linkOf(solution.plan), window.location) } : {}),
    ...(date === undefined ? {} : { date }),
  });
  download(html, `${fileName(solution.facts.title)}-install-sheet.html`, 'text/html');
}
