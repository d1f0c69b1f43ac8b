/** What a handle is called, and why it stops: names for the words of a language, never words themselves. */

/** Handles whose name needs no numbers. */
export type PlainHandle =
  | 'casingTop'
  | 'frostLine'
  | 'pitlessAdapter'
  | 'staticLevel'
  | 'pumpingLevel'
  | 'pumpIntake'
  | 'wellBottom'
  | 'casingBottom'
  | 'linerBottom';

/** One of several, counted as the plan lists them: the first is 0. */
export interface OneOf {
  readonly index: number;
  readonly count: number;
}

/** Every handle, with the numbers that its name is said with. */
export interface HandleNames extends Record<PlainHandle, object> {
  checkValve: OneOf;
  splice: OneOf;
  screenTop: OneOf;
  screenBottom: OneOf;
  layerFoot: { readonly material: string };
}

export type HandleName = {
  readonly [V in keyof HandleNames]: { readonly variant: V; readonly numbers: HandleNames[V] };
}[keyof HandleNames];

/** Why a handle goes no further, or cannot be dragged at all. */
export type Block =
  | 'noTallerCasing'
  | 'casingEndsAtGround'
  | 'frostStartsAtGround'
  | 'permafrost'
  | 'adapterBelowGround'
  | 'pumpHangsBelow'
  | 'nobodyDigsThere'
  | 'noHigherFlow'
  | 'sayThatItFlows'
  | 'meetsMeasuredLevel'
  | 'waterBelowBottom'
  | 'meetsStaticLevel'
  | 'meetsWellBottom'
  | 'dropPipeEnds'
  | 'meetsDischarge'
  | 'pumpMeetsTopWorks'
  | 'motorOnBottom'
  | 'meetsMotor'
  | 'meetsCasingOrScreen'
  | 'noDeeperWell'
  | 'casingNeedsLength'
  | 'linerNeedsLength'
  | 'meetsScreen'
  | 'meetsBottom'
  | 'meetsWhatIsAbove'
  | 'meetsOwnLowerEnd'
  | 'meetsOwnUpperEnd'
  | 'meetsWhatIsBelow'
  | 'layerNeedsThickness'
  | 'meetsNextLayer'
  | 'notKnown'
  | 'staticLevelNotKnown'
  | 'followsFromAquifer'
  | 'followsFromStepTest'
  | 'airLiftTellsNoDrawdown'
  | 'nothingHere';
