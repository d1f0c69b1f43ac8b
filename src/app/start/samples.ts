/** The sample wells that come with the program, all of invented places. Fetched when asked for. */
import { readPlanText, sayProblem } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';

export interface Sample {
  readonly file: string;
  readonly title: string;
  readonly about: string;
}

export const SAMPLES: readonly Sample[] = [
  { file: 'tamarack-ridge', title: 'Tamarack Ridge cabin', about: 'A rock well where frost goes deep. The pipe leaves below the frost.' },
  { file: 'heron-flats', title: 'Heron Flats farmhouse', about: 'A screened well in sand and gravel, reported in metres.' },
  { file: 'palo-amargo', title: 'Palo Amargo guest house', about: 'A warm country without frost. The pipe leaves through a seal on top.' },
  { file: 'slate-hollow', title: 'Slate Hollow homestead', about: 'Deep and poor. The driller only blew it with air, so much is unknown.' },
];

export async function loadSample(file: string): Promise<Plan> {
  const answer = await fetch(`./samples/${file}.json`);
  if (!answer.ok) throw new Error(`loadSample: samples/${file}.json answered ${answer.status}`);
  const reading = readPlanText(await answer.text());
  if (!reading.ok) throw new Error(`loadSample: ${file} does not read: ${reading.problems.map(sayProblem).join(' ')}`);
  return reading.plan;
}
