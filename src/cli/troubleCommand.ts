import { parseArgs } from 'node:util';
import { solve } from '../model/index.ts';
import { isSymptom, SYMPTOMS } from '../model/matter/symptom.ts';
import { troubleOf } from '../model/matter/trouble.ts';
import { show } from '../model/units.ts';
import { en } from '../words/en/index.ts';
import { matter as words } from '../words/en/matter.ts';
import { sayTrouble } from '../words/sayMatter.ts';
import { troubleText } from '../words/troubleText.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';
import { standing } from './standing.ts';

/** `wellcut trouble PLAN.json [--symptom NAME] [--json]`: what is the matter with a well in use, and what is looked at first. */
export function troubleCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: { json: { type: 'boolean', default: false }, symptom: { type: 'string' } },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('trouble needs one plan: wellcut trouble PLAN.json --symptom no-water');
  const { json, symptom } = values;
  if (symptom !== undefined && !isSymptom(symptom))
    throw new Unreadable(`--symptom is "${symptom}"; use ${SYMPTOMS.slice(0, -1).join(', ')} or ${SYMPTOMS.at(-1)}`);
  const plan = readInput(path);
  if (symptom === undefined) {
    print(json ? asJson({ symptoms: SYMPTOMS.map(named) }) : `${SYMPTOMS.map(asLine).join('\n')}\n`);
    return EXIT.good;
  }
  const solution = solve(plan);
  const trouble = troubleOf(solution, symptom);
  const said = sayTrouble(trouble, words, en, show(solution.facts.units));
  print(
    json
      ? asJson({ ...trouble, causes: trouble.causes.map((cause, i) => ({ ...cause, words: said.causes[i] })) })
      : `${standing(solution).join('\n')}\n${troubleText({ title: plan.title, said }, words)}`,
  );
  return EXIT.good;
}

function named(symptom: (typeof SYMPTOMS)[number]) {
  const { title, shows } = words.symptoms[symptom];
  return { symptom, title, shows };
}

const WIDEST = Math.max(...SYMPTOMS.map(({ length }) => length));

function asLine(symptom: (typeof SYMPTOMS)[number]): string {
  const { title, shows } = words.symptoms[symptom];
  return `${symptom.padEnd(WIDEST)}  ${title}. ${shows}`;
}

function asJson(report: object): string {
  return `${JSON.stringify(report, null, 2)}\n`;
}
