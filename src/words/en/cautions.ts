/** The usual cautions, shown where the danger is; local code and licensed practice decide. */
export const ELECTRIC_CAUTION =
  'Switch the breaker off and lock it before opening the well. A licensed electrician and the local code decide on wiring.';
export const LIFTING_CAUTION =
  'A string that slips takes hands with it: hold it with a pipe clamp before any grip is released.';
export const OVERHEAD_CAUTION = 'Keep pipe and hoist away from power lines.';
export const DIGGING_CAUTION =
  'Have buried lines marked before digging; a deep trench can bury a person: shore it as the local code asks.';
export const PRESSURE_CAUTION = 'A burst tank or pipe throws parts: shut the pump off and let the pressure out first.';
export const FLOWING_CAUTION =
  'Do not open a flowing well: it can run away. A licensed contractor decides what is done.';
export const PIT_CAUTION = 'Do not climb into a well pit: bad air there has killed. Ask a licensed contractor.';
export const GAS_CAUTION =
  'Gas from a well can choke and explode. No flame, no spark, and never lean into a pit or a closed well house.';
