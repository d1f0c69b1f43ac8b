/**
 * Generic lengths of the small parts, for parts whose maker nobody named. Real ones overrule.
 * Source: common practice, no source.
 */
import { feet, inches } from '../units.ts';

export const NIPPLE_SHOWING = inches(2);
export const CHECK_VALVE = inches(4);
export const FITTING_SHOWING = inches(2);
export const FITTING_BARB = inches(2);
export const CLAMP_WIDTH = inches(0.5);
export const CLAMP_GAP = inches(0.5);
export const ARRESTOR = inches(12);
export const SPLICE = inches(8);
/** Of a dry-run protection's probe, and its width. */
export const PROBE = inches(5);
export const PROBE_WIDTH = inches(0.7);
export const TIE = inches(1);
/** From the middle of a tie to what it keeps off. */
export const TIE_CLEAR = inches(2);
export const GUARD = inches(4);
export const CAP = inches(4);
export const SEAL = inches(3);
export const COUPLING = inches(2);
export const TEE = inches(4);
export const PLUG = inches(1);
/** Outside, against the line that it joins. */
export const UNION_SHARE = 1.5;
/** A sample tap over the middle of its line. */
export const TAP = inches(3.8);
/** Half the width of what a line rests on. */
export const SUPPORT_RADIUS = inches(0.6);
/** From the seal's lower plate to the middle of the eye under it. */
export const SEAL_EYE = inches(1);
/** Under the casing's top, where the pump's cable meets the cable to the house. */
export const CAP_SPLICE_FROM = inches(3);
export const CAP_SPLICE_TO = inches(9);
/** A flow-limiting valve stands on the pump's nipple, and leaves this of it to be seen at either end. */
export const LIMITER_CLEAR = inches(0.2);
export const PITLESS_BODY = inches(4);
export const INTAKE_RING = inches(3);
/** Standard length of rigid drop pipe, where the plan gives none. */
export const RIGID_SECTION = feet(20);
/** Bore of an insert fitting as a share of the pipe's bore. */
export const INSERT_BORE_RATIO = 0.8;
/** How far a buried conduit goes down where nobody said. Maryland COMAR 26.04.04.22 D asks for 18 in. */
export const CONDUIT_DEPTH = inches(18);
/**
 * Least from where the string hangs down to the pump's discharge. What stands there with PE and a valve, under a seal, is
 * 18 in: 2 in of the seal, nipple, fitting, two barbs, fitting, valve and nipple.
 */
export const ROOM_OVER_PUMP = feet(1.5);
