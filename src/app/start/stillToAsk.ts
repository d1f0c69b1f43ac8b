/** What a report leaves open, in the order in which one would ask for it on the telephone. */
import type { Question } from '../../reading/questions.ts';
import { isEmpty, type Report, type ReportField } from './report.ts';

export interface Asked {
  readonly question: Question;
  /** The line that takes the answer. */
  readonly field: ReportField;
}

/** Names that every table of casing has; any other one may have to be measured. */
const PLAIN_SIZE = /^\s*(?:[234568]|10|12)?\s*(?:in|inch|")?\s*$/i;

/** Whether the bore of a casing of that name has to be measured. */
export function isOddSize(size: string): boolean {
  return !isEmpty(size) && !PLAIN_SIZE.test(size);
}

export function stillToAsk(report: Report): readonly Asked[] {
  const lacks = (field: ReportField): boolean => isEmpty(report[field]);
  const screened = report.intake === 'screen' || report.intake === 'driven point';
  const hangs = report.hanging === 'pump';
  const questions: readonly (readonly [boolean, Question, ReportField])[] = [
    [lacks('depth'), 'depth', 'depth'],
    [lacks('soundedDepth'), 'sounded', 'soundedDepth'],
    [report.depthsFrom === '', 'datum', 'depthsFrom'],
    [
      lacks('casingSize') || report.casingMaterial === '',
      'casing',
      lacks('casingSize') ? 'casingSize' : 'casingMaterial',
    ],
    [isOddSize(report.casingSize) && lacks('casingInside'), 'casingInside', 'casingInside'],
    [lacks('casingBottom'), 'casingBottom', 'casingBottom'],
    [report.intake === '', 'intake', 'intake'],
    [
      screened && (lacks('screenTop') || lacks('screenBottom')),
      'screen',
      lacks('screenTop') ? 'screenTop' : 'screenBottom',
    ],
    [report.intake === 'open hole' && lacks('holeDiameter'), 'holeDiameter', 'holeDiameter'],
    [report.intake === 'open hole' && lacks('inflow'), 'inflow', 'inflow'],
    [lacks('staticLevel'), 'static', 'staticLevel'],
    [!lacks('staticLevel') && lacks('date'), 'whenRead', 'date'],
    [lacks('staticLowest'), 'lowest', 'staticLowest'],
    [report.test === 'unknown', 'test', 'test'],
    [report.test === 'test' && (lacks('testDrawdown') || lacks('testFlow')), 'testDrawdown', 'testDrawdown'],
    [report.test === 'yield only', 'pumped', 'test'],
    [lacks('frostDepth'), 'frost', 'frostDepth'],
    [!lacks('frostDepth') && report.frostFrom === '', 'frostFrom', 'frostFrom'],
    [report.top === '', 'top', 'top'],
    [report.hanging === '', 'hanging', 'hanging'],
    [hangs && (lacks('pumpSetting') || lacks('power')), 'oldPump', lacks('pumpSetting') ? 'pumpSetting' : 'power'],
    [lacks('demand') && lacks('people'), 'demand', 'people'],
    [lacks('distance'), 'distance', 'distance'],
    [lacks('rise'), 'rise', 'rise'],
    [report.line === '', 'line', 'line'],
    [lacks('tank'), 'tank', 'tank'],
    [lacks('wireRun'), 'wireRun', 'wireRun'],
    [report.voltage === '', 'voltage', 'voltage'],
    [hangs && report.wires === '', 'wires', 'wires'],
  ];
  return questions.flatMap(([open, question, field]) => (open ? [{ question, field }] : []));
}
