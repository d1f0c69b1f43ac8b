/**
 * Customary units in SI, for whoever needs no more of them than that.
 *
 * Source   NIST Special Publication 811 (2008), Guide for the Use of the SI, Appendix B.8: the exact definitions of the
 *          foot, inch, US gallon, pound, pound-force, kilogram-force and horsepower (550 ft lbf/s), from which the
 *          others follow.
 */
export const FOOT = 0.3048;
export const INCH = 0.0254;
export const GALLON = 3.785411784e-3;
/** The gallon of Britain, and of old Canadian reports: 4.54609 L (NIST SP 811, B.8, "Canadian and U.K. (Imperial)"). */
export const IMPERIAL_GALLON = 4.54609e-3;
export const POUND = 0.45359237;
/** A pound in standard gravity, 9.80665 m/s2. */
export const POUND_FORCE = 4.4482216152605;
/** What a kilogram weighs in the same gravity. */
export const KILOGRAM_FORCE = 9.80665;
export const HORSEPOWER = 550 * FOOT * POUND_FORCE;
export const MINUTE = 60;
export const HOUR = 3600;
export const DAY = 86400;
export const SQUARE_INCH = INCH * INCH;
export const BAR = 1e5;
/** Fahrenheit's degrees in one of Celsius, and where it has the ice. */
export const FAHRENHEIT_DEGREES = 1.8;
export const FAHRENHEIT_ICE = 32;
/** W/(m K) in one Btu/(h ft °F), by the International Table. */
export const BTU_PER_HOUR_FOOT_FAHRENHEIT = 1.730735;
