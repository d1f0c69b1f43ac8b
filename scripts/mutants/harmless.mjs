/**
 * Survivors that somebody looked at and that no reader could tell from the program as it stands, with the reason. By
 * file; `line` is a piece of the line that was changed, `to` what stood there instead (any, where it is left out).
 */
export const HARMLESS = {};
