/** All that is looked up at the well, on one page: the drawing, who and when, the settings, and what was found in a line each. */
import { draw, toSvg, type Paper } from '../draw/index.ts';
import { lackingIn } from '../model/rules/lacking.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import type { Kind } from '../model/work/step.ts';
import { en } from '../words/en/index.ts';
import { installSheet as words } from '../words/en/installSheet.ts';
import { sayFinding, sayLacking } from '../words/sayJudgement.ts';
import { blanks } from './blanks.ts';
import { element, raw, type Content, type Markup } from './html.ts';
import { settingsTable } from './settings.ts';

interface Asked {
  readonly paper: Paper;
  readonly units: Show;
  readonly date: string | undefined;
  readonly kind: Kind;
  /** For a camera. */
  readonly code: readonly Markup[];
}

/** mm that the page's own margins take on either side. */
const MARGIN = 12.7;
/** Of the paper's height. */
const DRAWN = 0.56;
/** More findings than this are counted, so that the page stays one. */
const MOST = 7;

/** @param head  where it is; the drawing has the title itself */
export function shortForm(solution: Solution, asked: Asked, head: readonly Markup[]): readonly Content[] {
  const { paper, units, date, kind, code } = asked;
  const { findings, assumed } = solution;
  const sheet: Paper = { width: paper.width - 2 * MARGIN, height: Math.round(paper.height * DRAWN), margin: 0 };
  const svg = toSvg(draw(solution, { paper: sheet, theme: 'print', caption: false, units: units.units }));
  const rest = findings.length - MOST;
  const open = lackingIn(solution).map((each) => sayLacking(each, en, units).missing);
  const { short, heads } = words;
  return [
    element(
      'div',
      { class: 'short' },
      ...head,
      raw(svg.replace(/^<\?xml[^>]*\?>\s*/, '')),
      blanks(date),
      settingsTable(solution, words, units, kind),
      ...code,
      findings.length === 0
        ? element('p', {}, heads.none)
        : element(
            'ul',
            {},
            ...findings.slice(0, MOST).map((finding, i) => {
              const { title, amount } = sayFinding(finding, en, units);
              const severity = en.long.findings.severities[finding.severity];
              return element('li', {}, element('strong', {}, `${i + 1} ${severity}: `), `${title}, ${amount}`);
            }),
            ...(rest > 0 ? [element('li', {}, short.more(rest))] : []),
          ),
      ...(open.length === 0 ? [] : [element('p', {}, element('strong', {}, `${heads.open}: `), `${open.join('; ')}.`)]),
      ...(assumed.length === 0 ? [] : [element('p', {}, short.assumed(assumed.length))]),
      element('p', { class: 'caution' }, words.caution),
    ),
  ];
}
