/** The friction factor: by its law where flow is laminar, else the root put back into both sides of its equation. */
import { darcyFactor, LAMINAR_TO, TURBULENT_FROM } from '../../formulas/friction.ts';
import type { Draft } from '../draft.ts';
import { step, term } from '../sum.ts';

interface FactorAccount extends Pick<Draft, 'terms' | 'steps'> {
  readonly notes: readonly string[];
}

/** In the symbols of the pipe: v, d, e, ν, Re, f. */
export function factorAccount(reynolds: number, factor: number, relativeRoughness: number): FactorAccount {
  const first = step('Re', 'v × d / ν', reynolds, 'number');
  if (reynolds < LAMINAR_TO) {
    return {
      terms: [],
      steps: [first, step('f', '64 / Re', factor, 'number')],
      notes: ['Below Re 2000 the flow is laminar and the roughness does not count.'],
    };
  }
  if (reynolds < TURBULENT_FROM) {
    const between = betweenLaws(reynolds, factor, relativeRoughness);
    return { ...between, steps: [first, ...between.steps] };
  }
  const colebrook = '−2 × log10(e / (3.7 × d) + 2.51 / (Re × √f))';
  return {
    terms: [],
    steps: [first, step('1 / √f', colebrook, 1 / Math.sqrt(factor), 'number')],
    notes: [
      'f is searched for until both sides of the Colebrook-White equation agree; here it stands put back into both.',
    ],
  };
}

/** The cubic of the EPANET 2.2 User Manual, ch. 12, on the factor at Re 4000. */
function betweenLaws(reynolds: number, factor: number, relativeRoughness: number): FactorAccount {
  const atTurbulent = darcyFactor(TURBULENT_FROM, relativeRoughness);
  const root = 1 / Math.sqrt(atTurbulent);
  const smooth = 2.51 / TURBULENT_FROM;
  const inside = relativeRoughness / 3.7 + smooth * root;
  const slope = (2 * atTurbulent) / (1 + ((2 / Math.LN10) * smooth) / inside);
  return {
    terms: [
      term('f_A', 'friction factor at Re 4000', atTurbulent, 'number'),
      term('f_B', 'twice that with its slope', slope, 'number'),
      term('R', 'Reynolds number by 2000', reynolds / 2000, 'number'),
    ],
    steps: [
      step('1 / √f_A', '−2 × log10(e / (3.7 × d) + 2.51 / (4000 × √f_A))', root, 'number'),
      step('f_B', '2 × f_A / (1 + 0.868589 × (2.51 / 4000) / (e / (3.7 × d) + 2.51 / (4000 × √f_A)))', slope, 'number'),
      step('R', 'Re / 2000', reynolds / 2000, 'number'),
      step(
        'f',
        '7 × f_A − f_B + R × (0.128 − 17 × f_A + 2.5 × f_B + R × (13 × f_A − 0.128 − 2 × f_B + R × (0.032 − 3 × f_A + 0.5 × f_B)))',
        factor,
        'number',
      ),
    ],
    notes: ['Between Re 2000 and 4000 a cubic joins the laminar and the turbulent law in value and slope.'],
  };
}
