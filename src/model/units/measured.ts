/** Nothing in or about a well is written with more noughts than these, in whatever unit; what is less is nothing. */
export const LEAST_MEASURED = 1e-9;
export const MOST_MEASURED = 1e12;
