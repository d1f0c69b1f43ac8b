/** The sheet to work from, as one HTML page: drawing, settings, what was found, parts, order of the work, joints and cards. */
import { draw, LETTER, toSvg, type Paper } from '../draw/index.ts';
import { qrCode } from '../link/qrCode.ts';
import { fixesOf } from '../model/fixes/fixesOf.ts';
import { lackingIn } from '../model/rules/lacking.ts';
import type { Solution } from '../model/solution.ts';
import { show, type Show } from '../model/units.ts';
import { partsList } from '../model/parts/partsList.ts';
import { orderOfWork } from '../model/work/orderOfWork.ts';
import type { Caution, Kind } from '../model/work/step.ts';
import { asBuilt } from '../words/en/asBuilt.ts';
import { connections } from '../words/en/connections.ts';
import { en } from '../words/en/index.ts';
import { installSheet as words } from '../words/en/installSheet.ts';
import { partsListWords } from '../words/en/partsList.ts';
import { sayAssumed, sayValue } from '../words/en/plan/assumed.ts';
import { nameOfPath } from '../words/en/plan/paths.ts';
import { work } from '../words/en/work.ts';
import { sayFinding, sayFix, sayLacking } from '../words/sayJudgement.ts';
import { sayPart } from '../words/sayParts.ts';
import { sayStep, sayStop, type SaidStep } from '../words/sayWork.ts';
import { asBuiltTable, startCauses, startTable, tapeTable } from './cards.ts';
import { element, raw, type Content, type Markup } from './html.ts';
import { blanks } from './blanks.ts';
import { jointsTable } from './joints.ts';
import { settingsTable } from './settings.ts';
import { shortForm } from './shortForm.ts';
import { styleOf } from './style.ts';
import { table } from './table.ts';

export interface SheetOptions {
  /** Default: letter. */
  readonly paper?: Paper;
  /** The reader's; default: those of the plan. */
  readonly units?: 'us' | 'metric';
  /** As `orderOfWork` takes it. */
  readonly kind?: Kind;
  /** One page: the drawing, the settings and what was found. */
  readonly short?: boolean;
  /** Address that opens this plan, printed as a code for a camera. */
  readonly link?: string;
  /** Printed where it is given: the sheet knows no clock. */
  readonly date?: string;
}

export function installSheetHtml(solution: Solution, options: SheetOptions = {}): string {
  const { facts } = solution;
  const units = show(options.units ?? facts.units);
  const { paper = LETTER, short = false, date = facts.date ?? undefined } = options;
  const title = facts.title === '' ? words.title : words.page(facts.title);
  const head = element('h1', {}, facts.title === '' ? words.title : facts.title);
  const place = facts.place === '' ? [] : [element('p', {}, facts.place)];
  const kind = kindOf(solution, options);
  const body: readonly Content[] = short
    ? shortForm(solution, { paper, units, date, kind, code: codeOf(options) }, place)
    : [
        drawing(solution, paper, units),
        ...codeOf(options),
        head,
        ...place,
        blanks(date),
        element('p', { class: 'caution' }, words.caution),
        element('h2', {}, words.heads.settings),
        settingsTable(solution, words, units, kind),
        ...found(solution, units),
        ...whole(solution, options.kind, units),
      ];
  return `<!doctype html>\n${
    element(
      'html',
      { lang: 'en' },
      element(
        'head',
        {},
        raw('<meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">'),
        element('title', {}, title),
        raw(`<style>${styleOf(paper, [title, date].filter(Boolean).join(', '))}</style>`),
      ),
      element('body', {}, ...body),
    ).html
  }\n`;
}

/** For whoever opens the well in ten years; none where the address is too long for one. */
function codeOf({ link }: SheetOptions): readonly Markup[] {
  const code = link === undefined ? null : qrCode(link, words.code);
  return code === null ? [] : [element('figure', { class: 'code' }, raw(code), element('figcaption', {}, words.code))];
}

function kindOf(solution: Solution, { kind }: SheetOptions): Kind {
  const done = orderOfWork(solution, kind);
  return done.kind === 'stop' ? 'new' : done.kind;
}

/** On a page of its own, to the scale that it states. */
function drawing(solution: Solution, paper: Paper, { units }: Show): Markup {
  const svg = toSvg(draw(solution, { paper, theme: 'print', caption: true, units }));
  return element('div', { class: 'drawing' }, raw(svg.replace(/^<\?xml[^>]*\?>\s*/, '')));
}

/** What was found, what could not be checked, and what is assumed: nobody works from a sheet that hides them. */
function found(solution: Solution, units: Show): readonly Markup[] {
  const { findings, assumed } = solution;
  const offered = fixesOf(solution.plan, solution);
  const open = lackingIn(solution);
  const { heads } = words;
  return [
    element('h2', {}, heads.findings),
    ...(findings.length === 0
      ? [element('p', {}, heads.none)]
      : findings.map((finding, i) => {
          const { title, message, caution } = sayFinding(finding, en, units);
          const { button = null, words: told = null } = offered[i] ?? {};
          const fix = button ?? told;
          return element(
            'div',
            { class: 'finding' },
            element('h3', {}, `${i + 1} ${en.long.findings.severities[finding.severity]}: ${title}`),
            element('p', {}, message),
            ...(fix === null ? [] : [element('p', {}, sayFix(finding.rule, fix, en, units))]),
            ...(caution === '' ? [] : [element('p', { class: 'caution' }, caution)]),
          );
        })),
    ...(open.length === 0
      ? []
      : [
          element('h2', {}, heads.open),
          element(
            'ul',
            {},
            ...open.map((each) => {
              const { missing } = sayLacking(each, en, units);
              return element('li', {}, missing);
            }),
          ),
        ]),
    ...(assumed.length === 0
      ? []
      : [
          element('h2', {}, heads.assumed),
          element('ul', { class: 'two' }, ...assumed.map((each) => element('li', {}, sayAssumed(each, units.units)))),
        ]),
  ];
}

function whole(solution: Solution, kind: Kind | undefined, units: Show): readonly Markup[] {
  const done = orderOfWork(solution, kind);
  const { heads } = words;
  if (done.kind === 'stop')
    return [
      element('h2', {}, heads.steps),
      ...sayStop(done, work).map((each) => element('p', { class: 'caution' }, each)),
    ];
  const steps = done.steps.map((each) => sayStep(each, work, units));
  const cautions = new Set<Caution>(done.steps.flatMap((each) => each.cautions));
  return [
    element('h2', {}, heads.cautions),
    element('ul', {}, ...[...cautions].map((each) => element('li', {}, work.cautions[each]))),
    ...partsTable(solution, done.kind, units),
    element('h2', {}, heads.steps),
    element(
      'div',
      { class: 'two' },
      ...steps.flatMap((each, i) => [
        ...(each.phase === steps[i - 1]?.phase ? [] : [element('h3', { class: 'phase' }, each.phase)]),
        stepBox(each, i + 1),
      ]),
    ),
    element('h2', {}, heads.tape),
    tapeTable(solution, words, units),
    element('h2', {}, heads.start),
    startTable(solution, words, units),
    element('ul', {}, ...startCauses(solution, words, units).map((each) => element('li', {}, each))),
    ...builtSection(solution, units),
    element('h2', {}, connections.title),
    ...jointsTable(solution, units),
  ];
}

/** What was put in, and what came out before it. */
function builtSection(solution: Solution, units: Show): readonly Markup[] {
  const { date, by, pulled } = solution.plan.asBuilt ?? {};
  const line = (name: string, value: string | undefined): Markup =>
    element('span', {}, value === undefined || value === '' ? name : `${name}: ${value}`);
  const old = Object.entries(pulled ?? {}).map(([field, value]) => {
    const path = `asBuilt.pulled.${field}`;
    return element('li', {}, `${nameOfPath(path)}: ${sayValue(path, value, units.units)}`);
  });
  return [
    element('h2', {}, asBuilt.title),
    element('div', { class: 'blank keep' }, line(asBuilt.date, date), line(asBuilt.by, by)),
    asBuiltTable(solution, units),
    ...(old.length === 0 ? [] : [element('h3', {}, asBuilt.pulled.title), element('ul', {}, ...old)]),
  ];
}

function stepBox({ title, does, why, check, mistake, onTheHook, cautions, assumed }: SaidStep, number: number): Markup {
  const { columns } = words;
  return element(
    'div',
    { class: 'step' },
    element('h3', {}, element('span', { class: 'box' }), `${number} ${title}`),
    ...cautions.map((each) => element('p', { class: 'caution' }, each)),
    element('ol', {}, ...does.map((each) => element('li', {}, each))),
    ...onTheHook.map((each) => element('p', {}, each)),
    ...(assumed === '' ? [] : [element('p', { class: 'note' }, assumed)]),
    element('p', { class: 'note' }, `${columns.why}: ${why}`),
    ...(check.length === 0 ? [] : [element('p', {}, `${columns.check}: ${check.join(' ')}`)]),
    element('p', { class: 'note' }, `${columns.mistake}: ${mistake}`),
  );
}

function partsTable(solution: Solution, kind: Kind, units: Show): readonly Markup[] {
  const list = partsList(solution, kind);
  if (list.kind === 'stop') return [];
  const { count, name, size, cut, note } = partsListWords.heads;
  const said = list.lines.map((line) => sayPart(line, partsListWords, units));
  const groups = [...new Set(said.map(({ group }) => group))];
  return [
    element('h2', {}, words.heads.parts),
    ...groups.flatMap((group) => [
      element('h3', {}, group),
      table(
        ['', count, name, size, cut, note],
        said
          .filter((each) => each.group === group)
          .map((each) => [
            element('span', { class: 'box' }),
            String(each.count),
            `${each.name}${each.assumed === '' ? '' : ` (${each.assumed})`}`,
            [each.size, each.material].filter((text) => text !== '').join(', '),
            [each.cut, each.buy].filter((text) => text !== '').join('; '),
            each.note,
          ]),
        'parts',
      ),
    ]),
    element('p', { class: 'note' }, partsListWords.caution),
  ];
}
