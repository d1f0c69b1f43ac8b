/** What is added to a length so that it can be used: common practice, no source. */
import { feet } from '../units.ts';

/** A cable does not hang straight: 2 % more than the pipe. */
export const WIRE_SLACK = 0.02;
/** Spare loop under the cap. */
export const WIRE_LOOP = feet(5);
/** Two tie-offs of a rope, 3 ft each. */
export const ROPE_TIES = feet(6);
/** A rope stays slack by this much when the pipe has stretched. */
export const ROPE_SLACK = feet(1);
/** The lift pipe is held this far above the casing. */
export const LIFT_PIPE_ABOVE_CASING = feet(2);
