/** Typed where a fact of the place is not known; the same as leaving it out, but on purpose. */
export const UNKNOWN = 'unknown';
