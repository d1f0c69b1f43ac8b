/** Whose a unit is. Hours, volts and wire gauges are everybody's. */
const OF: Readonly<Record<'us' | 'metric', ReadonlySet<string>>> = {
  us: new Set([
    ...['ft', 'in', 'ft in', 'gpm', 'gph', 'psi', 'degF', 'gal', 'ft2/d', 'gpd/ft', 'lb', 'lbf', 'hp', 'degF d'],
  ]),
  metric: new Set([
    ...['m', 'cm', 'mm', 'L/min', 'L/s', 'm3/h', 'm3/d', 'kPa', 'bar', 'degC', 'L', 'm2/d', 'kg', 'N', 'kN', 'kgf'],
    ...['kW', 'W', 'L/h', 'degC d'],
  ]),
};

/** Whether a unit, by the name that the table of units has, is the other kind's. */
export function isForeign(unit: string, units: 'us' | 'metric'): boolean {
  return OF[units === 'us' ? 'metric' : 'us'].has(unit);
}

/** What is said in round figures of each kind, and cannot be turned from the one into the other. */
export function either<Said>(units: 'us' | 'metric', us: Said, metric: Said): Said {
  return units === 'us' ? us : metric;
}
