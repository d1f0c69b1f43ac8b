/** One palette a theme: what every sign, word and part is drawn in. */

export type GroundName = 'soil' | 'clay' | 'sand' | 'gravel' | 'rock';

export interface GroundInk {
  readonly fill: string;
  readonly hatch: string;
}

export interface Ink {
  readonly paper: string;
  readonly panel: string;
  /** Text, and what is cut. */
  readonly ink: string;
  /** Second lines. */
  readonly ink2: string;
  /** Leaders, dimensions, ticks. */
  readonly hair: string;
  /** Faint rules: borders of labels, links between section and details. Never needed to understand. */
  readonly rule: string;
  readonly static: string;
  readonly pumping: string;
  readonly frost: string;
  readonly casing: string;
  readonly dropPipe: string;
  readonly wire: string;
  readonly rope: string;
  readonly pump: string;
  readonly danger: string;
  /** The number on a danger's octagon. */
  readonly onDanger: string;
  readonly warning: string;
  /** Number and outline of a warning's triangle. */
  readonly onWarning: string;
  readonly note: string;
  /** Allowed band. */
  readonly allowed: string;
  readonly grass: string;
  readonly ground: Readonly<Record<GroundName, GroundInk>>;
  readonly frostFill: string;
  readonly snow: string;
  /** What the well and its parts are drawn in. */
  readonly tones: Tones;
}

/** Flat tones of one material under light from the upper left. */
export interface Ramp {
  readonly edge: string;
  readonly shadow: string;
  readonly shade: string;
  readonly base: string;
  readonly light: string;
  readonly shine: string;
}

/** A face that the section cuts: fill, and the ink of its edge and hatching. */
export interface Cut {
  readonly fill: string;
  readonly ink: string;
}

export interface Tones {
  readonly steel: Ramp;
  readonly brass: Ramp;
  readonly cast: Ramp;
  readonly rubber: Ramp;
  readonly pump: Ramp;
  readonly motor: Ramp;
  readonly pipe: Ramp;
  readonly conduit: Ramp;
  readonly tank: Ramp;
  readonly pipeWall: Cut;
  readonly metalWall: Cut;
  readonly plasticWall: Cut;
  readonly concreteWall: Cut;
  readonly brassCut: Cut;
  readonly grout: Cut;
  readonly gravel: Cut;
  readonly bedding: Cut;
  readonly strainer: Cut;
  /** Inside of casing and hole where there is no water. */
  readonly bore: string;
  /** Over the ground. */
  readonly air: string;
  readonly water: string;
  readonly waterEdge: string;
  /** On the water in a pipe. */
  readonly waterShine: string;
  readonly turf: string;
  readonly cable: string;
  readonly cableShine: string;
  readonly rope: string;
  readonly ropeTwist: string;
  readonly bond: string;
  readonly ink: string;
  /** Ties, arms of an arrestor: thin black things. */
  readonly tape: string;
  /** Black, red, yellow and green leads in the order of the splice. */
  readonly leads: readonly [string, string, string, string];
}

/** From edge to shine. */
export const ramp = (
  edge: string,
  shadow: string,
  shade: string,
  base: string,
  light: string,
  shine: string,
): Ramp => ({
  edge,
  shadow,
  shade,
  base,
  light,
  shine,
});
