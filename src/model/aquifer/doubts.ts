/** What a fit rests on, and what in the readings speaks against it. */
import type { Ratio, Seconds } from '../si.ts';
import type { PumpingTest, RecoveryLine, Residual, StraightLine, TheisFit } from './pumpingTest.ts';

export function assumptionsOf(test: PumpingTest, tooEarly: Seconds): string[] {
  const said = [
    'A confined, wide, even aquifer of one thickness, tapped through all of it, without leakage, stream or barrier in reach.',
    'A constant flow, and drawdowns measured from a level that would have stayed at rest.',
    'The intervals count the scatter of the readings only: where the ground is not like that, the truth lies outside more often.',
  ];
  if (test.measuredIn === 'observation well') return said;
  const inWell =
    'Measured in the pumped well: its entry loss passes for storativity, which means nothing here; transmissivity stands.';
  const early =
    tooEarly > 0
      ? 'Readings while the bore’s own water counts (up to 25 rc²/T) are left out; what is left of it bends transmissivity by up to a tenth.'
      : 'The bore’s own water was not taken off: early readings may bend the fit. Give the radius of the bore to leave them out.';
  return [...said, inWell, early];
}

/** |correlation| from which T and S are hardly told apart. Common practice, no source. */
const ENTWINED: Ratio = 0.98;
/** Range of storativity that any ground has; Freeze & Cherry (1979), Groundwater, ch. 2, from memory, widened. */
const STORATIVITY = { least: 1e-6, most: 0.4 };
/** How far two straight readings of T may differ before it is said. Project decision. */
const APART: Ratio = 0.25;

export function doubtsOf(
  test: PumpingTest,
  theis: TheisFit,
  line: StraightLine | null,
  recovered: RecoveryLine | null,
): string[] {
  const { correlation, storativity, transmissivity } = theis;
  const doubts: string[] = [];
  if (leansOneWay(theis.residuals))
    doubts.push(
      'The readings leave the curve in long stretches on one side: the ground is not what the formula takes it for (leakage, a boundary, delayed yield), and the interval is too narrow.',
    );
  if (Math.abs(correlation) > ENTWINED)
    doubts.push('Transmissivity and storativity are hardly told apart by these readings: early ones are missing.');
  if (
    test.measuredIn === 'observation well' &&
    !(storativity.value > STORATIVITY.least && storativity.value < STORATIVITY.most)
  )
    doubts.push('No ground has such a storativity: check distance, flow and the times.');
  const differs = (other: number) => Math.abs(Math.log(other / transmissivity.value)) > Math.log(1 + APART);
  if (line !== null && differs(line.transmissivity.value))
    doubts.push(
      'The straight line and the whole series give different transmissivities: say which one a figure belongs to.',
    );
  if (recovered !== null && differs(recovered.transmissivity.value))
    doubts.push('The recovery gives another transmissivity than the whole: the flow may not have been constant.');
  if (recovered !== null && recovered.meetsZeroAt > 2)
    doubts.push('The level came back before the formula lets it: the ground is fed, or stores less on the way back.');
  return doubts;
}

/**
 * Whether the signs of the differences come in fewer runs than chance would give, at 2.5 %.
 *
 * Source  Wald & Wolfowitz (1940), Annals of Mathematical Statistics 11, 147; normal form, fit for ten readings or more
 */
export function leansOneWay(residuals: readonly Residual[]): boolean {
  const signs = residuals
    .filter(({ leftOut, difference }) => !leftOut && difference !== 0)
    .map(({ difference }) => difference > 0);
  const n = signs.length;
  const above = signs.filter(Boolean).length;
  const product = 2 * above * (n - above);
  if (n < 10 || product === 0) return false;
  const runs = signs.reduce((count, sign, i) => (i > 0 && sign !== signs[i - 1] ? count + 1 : count), 1);
  const mean = product / n + 1;
  const variance = (product * (product - n)) / (n * n * (n - 1));
  return variance > 0 && (runs - mean) / Math.sqrt(variance) < -1.96;
}
