/**
 * Does a worked line again from its text alone, as one would with a pocket calculator: numbers with their units, the
 * four operations, powers, roots, logarithms. Keeps the dimension of every number and how far its printed digits may
 * be off, so that adding feet to pounds fails, and so does a line whose digits do not carry its result.
 */

/** Metre, second, newton, ampere, volt, kelvin. */
type Dimension = readonly [number, number, number, number, number, number];

export interface Found {
  /** SI. */
  readonly value: number;
  readonly error: number;
  readonly dimension: Dimension;
}

const L: Dimension = [1, 0, 0, 0, 0, 0];
const NONE: Dimension = [0, 0, 0, 0, 0, 0];
const [metre, second, newton] = [L, [0, 1, 0, 0, 0, 0], [0, 0, 1, 0, 0, 0]] as const;
const ampere: Dimension = [0, 0, 0, 1, 0, 0];
const volt: Dimension = [0, 0, 0, 0, 1, 0];

/** Dimension from powers of metre, second and newton. */
const d = (m: number, s = 0, n = 0): Dimension => [m, s, n, 0, 0, 0];
// International yard and pound agreement (1959); US gallon of 231 cubic inches.
const [FT, IN, LB, GAL] = [0.3048, 0.0254, 4.4482216152605, 231 * 0.0254 ** 3];
const GPM = GAL / 60;

/** Everything a worked line may carry, in SI. */
const UNITS: Readonly<Record<string, readonly [number, Dimension]>> = {
  ft: [FT, metre],
  in: [IN, metre],
  m: [1, metre],
  cm: [0.01, metre],
  mm: [0.001, metre],
  s: [1, second],
  min: [60, second],
  h: [3600, second],
  'ft²': [FT ** 2, d(2)],
  'm²': [1, d(2)],
  'ft³': [FT ** 3, d(3)],
  'm³': [1, d(3)],
  gal: [GAL, d(3)],
  L: [0.001, d(3)],
  'ft/s': [FT, d(1, -1)],
  'm/s': [1, d(1, -1)],
  'ft/s²': [FT, d(1, -2)],
  'm/s²': [1, d(1, -2)],
  'ft²/s': [FT ** 2, d(2, -1)],
  'm²/s': [1, d(2, -1)],
  'ft³/s': [FT ** 3, d(3, -1)],
  'm³/s': [1, d(3, -1)],
  gpm: [GPM, d(3, -1)],
  'L/min': [0.001 / 60, d(3, -1)],
  'gpm/ft': [GPM / FT, d(2, -1)],
  'L/min/m': [0.001 / 60, d(2, -1)],
  'ft/gpm': [FT / GPM, d(-2, 1)],
  'm/(L/min)': [60_000, d(-2, 1)],
  'ft/gpm²': [FT / GPM ** 2, d(-5, 2)],
  'm/(L/min)²': [60_000 ** 2, d(-5, 2)],
  'ft/gpm³': [FT / GPM ** 3, d(-8, 3)],
  'm/(L/min)³': [60_000 ** 3, d(-8, 3)],
  lb: [LB, newton],
  N: [1, newton],
  // What hangs on a hook is read in kilograms: 1 kgf = 9.80665 N exactly (NIST SP 811, B.8).
  kg: [9.80665, newton],
  'lb/ft': [LB / FT, d(-1, 0, 1)],
  'N/m': [1, d(-1, 0, 1)],
  'lb/ft²': [LB / FT ** 2, d(-2, 0, 1)],
  'lb/ft³': [LB / FT ** 3, d(-3, 0, 1)],
  'N/m³': [1, d(-3, 0, 1)],
  Pa: [1, d(-2, 0, 1)],
  bar: [1e5, d(-2, 0, 1)],
  MPa: [1e6, d(-2, 0, 1)],
  psi: [LB / IN ** 2, d(-2, 0, 1)],
  'ft·lb/s': [FT * LB, d(1, -1, 1)],
  W: [1, d(1, -1, 1)],
  A: [1, ampere],
  V: [1, volt],
  'Ω/ft': [1 / FT, [-1, 0, 0, -1, 1, 0]],
  'Ω/m': [1, [-1, 0, 0, -1, 1, 0]],
  '%': [0.01, NONE],
  // Only ever divided by each other.
  'mg/L': [1, [0, 0, 0, 0, 0, 0]],
  'K·d': [86_400, [0, 1, 0, 0, 0, 1]],
  // A heat is a force along a length; the day in the sum cancels against the seconds of a day.
  's/d': [1 / 86_400, NONE],
  'W/(m·K)': [1, [0, -1, 1, 0, 0, -1]],
  'J/m³': [1, d(-2, 0, 1)],
  'in^2.5/gpm': [IN ** 2.5 / GPM, d(-0.5, 1)],
  'mm^2.5/(L/min)': [0.001 ** 2.5 * 60_000, d(-0.5, 1)],
  's^1.852/ft^0.685': [FT ** -0.685, d(-0.685, 1.852)],
  's^1.852/m^0.685': [1, d(-0.685, 1.852)],
};

const BY_LENGTH = Object.keys(UNITS).sort((a, b) => b.length - a.length);
const RAISED: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4 };
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

export function evaluate(text: string): Found {
  const reader = new Reader(text);
  const found = reader.sum();
  if (reader.rest() !== '') throw new Error(`cannot read "${reader.rest()}" in "${text}"`);
  return found;
}

/** Numbers that are only added or taken away: "138.44 ft + 7.17 ft". */
const SUM = /^\(?−?[\d.]+ ?[^\d+−]*(?: [+−] \(?−?[\d.]+ ?[^\d+−]*)+$/u;

class Reader {
  private at = 0;
  /** Parts of a sum are rounded to what their unit is worth, however few digits that leaves. */
  private readonly summed: boolean;
  constructor(private readonly text: string) {
    this.summed = SUM.test(text.trim().replace(/ × 10⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/gu, ''));
  }

  rest(): string {
    return this.text.slice(this.at).trim();
  }

  sum(): Found {
    let total = this.product();
    for (;;) {
      const sign = this.take('+') ? 1 : this.take('−') ? -1 : 0;
      if (sign === 0) return total;
      const next = this.product();
      // Zero goes with anything: "0 × L".
      requireSame(total, next, this.text);
      total = { ...total, value: total.value + sign * next.value, error: total.error + next.error };
    }
  }

  private product(): Found {
    let total = this.power();
    for (;;) {
      const times = this.take('×') ? 1 : this.take('/') ? -1 : 0;
      if (times === 0) return total;
      total = multiplied(total, this.power(), times);
    }
  }

  private power(): Found {
    const base = this.single();
    const next = this.text[this.at] ?? '';
    if (RAISED[next] !== undefined) {
      this.at += 1;
      return raised(base, RAISED[next]);
    }
    if (next === '^') {
      const [written = ''] = /^\^[\d.]+/.exec(this.text.slice(this.at)) ?? [];
      this.at += written.length;
      return raised(base, Number(written.slice(1)));
    }
    return base;
  }

  private single(): Found {
    if (this.take('√')) return raised(this.single(), 0.5);
    if (this.take('log10('))
      return this.called(
        (x) => Math.log10(x),
        (x) => 1 / (x * Math.LN10),
      );
    if (this.take('W(')) return this.called(exponentialIntegral, (x) => -Math.exp(-x) / x);
    if (this.take('π')) return { value: Math.PI, error: 0, dimension: NONE };
    if (this.take('(')) return this.closed();
    const negative = this.take('−');
    const read = this.number();
    return negative ? { ...read, value: -read.value } : read;
  }

  private called(of: (x: number) => number, slope: (x: number) => number): Found {
    const { value, error, dimension } = this.closed();
    if (dimension.some((power) => Math.abs(power) > 1e-9))
      throw new Error(`a function of a quantity in "${this.text}"`);
    return { value: of(value), error: Math.abs(slope(value)) * error, dimension: NONE };
  }

  private closed(): Found {
    const inside = this.sum();
    if (!this.take(')')) throw new Error(`a bracket is open in "${this.text}"`);
    return inside;
  }

  private number(): Found {
    this.skip();
    const [mantissa] = /^\d+(\.\d+)?/.exec(this.text.slice(this.at)) ?? [];
    if (mantissa === undefined) throw new Error(`no number at "${this.rest()}" in "${this.text}"`);
    this.at += mantissa.length;
    const [power = ''] = /^ × 10⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/.exec(this.text.slice(this.at)) ?? [];
    this.at += power.length;
    const scale = 10 ** exponentOf(power);
    const unit = this.unit();
    const [factor, dimension] = unit === null ? ([1, NONE] as const) : UNITS[unit]!;
    const decimals = mantissa.split('.')[1]?.length ?? 0;
    // A short number is exact (a pipe of 1.38 in, 4 in a formula); a long one was cut at its last digit.
    const digits = mantissa.replace('.', '').replace(/^0+/, '').length;
    const cut = digits >= 6 ? 0.5 * 10 ** -decimals * scale * factor : 0;
    // "20 lb" in a sum is 20.0 lb with its zero left out.
    const error = this.summed ? Math.max(cut, lastPlace(decimals, unit) * scale * factor) : cut;
    return { value: Number(mantissa) * scale * factor, error, dimension };
  }

  private unit(): string | null {
    const rest = this.text.slice(this.at);
    const found = BY_LENGTH.find(
      (name) => rest.startsWith(` ${name}`) && !/^[\p{L}²³/^]/u.test(rest.slice(name.length + 1)),
    );
    if (found === undefined) return null;
    this.at += found.length + 1;
    return found;
  }

  private take(token: string): boolean {
    this.skip();
    if (!this.text.startsWith(token, this.at)) return false;
    this.at += token.length;
    return true;
  }

  private skip(): void {
    // A power sign never follows a blank, so blanks before it stay an error.
    while (this.text[this.at] === ' ') this.at += 1;
  }
}

/** The last place that a part of a sum is written to. */
function lastPlace(decimals: number, unit: string | null): number {
  if (decimals > 0) return 10 ** -decimals;
  return WHOLE.includes(unit ?? '') ? 1 : unit === 'lb' ? 0.1 : 0.01;
}

const WHOLE = ['N', 'Pa', 's'];

function exponentOf(power: string): number {
  const digits = [...power].filter((sign) => SUPERSCRIPTS.includes(sign)).map((sign) => SUPERSCRIPTS.indexOf(sign));
  return (power.includes('⁻') ? -1 : 1) * Number(digits.join('') || 0);
}

function multiplied(one: Found, other: Found, sign: 1 | -1): Found {
  const value = sign === 1 ? one.value * other.value : one.value / other.value;
  const relative =
    (one.value === 0 ? 0 : one.error / Math.abs(one.value)) +
    (other.value === 0 ? 0 : other.error / Math.abs(other.value));
  return {
    value,
    error: Math.abs(value) * relative,
    dimension: one.dimension.map((power, i) => power + sign * other.dimension[i]!) as unknown as Dimension,
  };
}

function raised(base: Found, power: number): Found {
  const value = base.value ** power;
  return {
    value,
    error: base.value === 0 ? 0 : Math.abs((power * value * base.error) / base.value),
    dimension: base.dimension.map((each) => each * power) as unknown as Dimension,
  };
}

export function requireSame(one: Found, other: Found, where: string): void {
  const differ = one.dimension.some((power, i) => Math.abs(power - other.dimension[i]!) > 1e-9);
  if (differ) throw new Error(`unlike quantities in "${where}"`);
}

/** Abramowitz & Stegun (1964), eq. 5.1.11, by more terms than are needed; above 1 the integral itself by Simpson's rule. */
function exponentialIntegral(u: number): number {
  if (u <= 1) {
    let [sum, term] = [-0.5772156649015329 - Math.log(u), 1];
    for (let n = 1; n < 60; n++) {
      term *= -u / n;
      sum -= term / n;
    }
    return sum;
  }
  const steps = 20_000;
  const width = 40 / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const t = u + i * width;
    sum += ((i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * Math.exp(-t)) / t;
  }
  return (sum * width) / 3;
}
