/** The page on how the program judges, as the rules and the words give it now. */
import { judgingIn } from '../../src/model/judging.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { judging } from '../../src/words/en/judging.ts';
import { judgingDocument } from '../../src/words/judgingDocument.ts';
import { judgingPage } from '../../src/words/judgingPage.ts';

const words = { ...en, judging };

export function pageNow(units: 'us' | 'metric') {
  return judgingPage(judgingIn(units), words, show(units));
}

/** The document docs/how-wellcut-judges.md. */
export function documentNow(): string {
  return judgingDocument({ us: judgingIn('us'), metric: judgingIn('metric') }, words, 'npm run judging');
}
