/** What is the matter as plain text, for a message or a terminal: a cause after the other, a sentence a line. */
import type { MatterWords, SaidCause, SaidTrouble } from './sayMatter.ts';

interface Listed {
  /** Of the plan. */
  readonly title: string | undefined;
  readonly said: SaidTrouble;
  /** What was ticked, by number of the cause from 0: "This is it"; left out where nothing was. */
  readonly looked?: readonly (string | null)[];
}

export function troubleText({ title, said, looked = [] }: Listed, { heads, caution }: MatterWords): string {
  return (
    [
      `${said.title}${title === undefined ? '' : `: ${title}`}`,
      said.shows,
      ...said.wellCautions.map((each) => `! ${each}`),
      '',
      `${heads.first}:`,
      ...said.first.map((each) => `    ${each}`),
      ...said.causes.flatMap((cause, i) => ['', ...causeLines(cause, i + 1, looked[i] ?? null, heads)]),
      '',
      caution,
    ].join('\n') + '\n'
  );
}

function causeLines(
  cause: SaidCause,
  number: number,
  looked: string | null,
  heads: MatterWords['heads'],
): readonly string[] {
  const { title, likelihood, place, look, tells, then, own, cautions, deciding, assumed } = cause;
  const under = (head: string, all: readonly string[]): readonly string[] =>
    all.length === 0 ? [] : [`  ${head}:`, ...all.map((each) => `    ${each}`)];
  return [
    `${number}. ${title}${looked === null ? '' : ` [${looked}]`}`,
    `  ${likelihood}. ${heads.place}: ${place}.`,
    ...cautions.map((each) => `  ! ${each}`),
    ...under(
      heads.own,
      [...own, deciding, assumed].filter((each) => each !== ''),
    ),
    ...under(heads.look, look),
    ...under(heads.tells, tells),
    ...under(heads.then, then),
  ];
}
