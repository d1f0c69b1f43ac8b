/** Plain names for SI numbers. They are aliases, not branded types: arithmetic would drop a brand anyway. */
export type Metres = number;
export type SquareMetres = number;
export type CubicMetres = number;
export type CubicMetresPerSecond = number;
export type SquareMetresPerSecond = number;
export type MetresPerSecond = number;
export type Pascals = number;
export type Newtons = number;
export type Kilograms = number;
export type Seconds = number;
export type Volts = number;
export type Amperes = number;
export type Watts = number;
export type Celsius = number;
/** A plain ratio: 0.05 is five percent. */
export type Ratio = number;
