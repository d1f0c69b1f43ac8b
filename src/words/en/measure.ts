/** What would settle a finding that turns on a fact which nobody said: by the field that takes it. */
export const measure = {
  'water.pumping': 'Measure it: pump the well for hours and read how far the water falls',
  'site.frostDepth': 'Ask for it: the frost depth of the local code',
  'top.protrusion': 'Measure it: how far the adapter stands into the casing',
  'pump.lowLevelCutOff': 'Say it: how deep the probe of the dry-run protection hangs',
} as const;
