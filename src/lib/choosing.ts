/** `wellcut/choosing`: which pump and which tank would do in a well, and how far its levels may still go. */
export { choosePump } from '../model/choose/choosePump.ts';
export type { OwnPump, PumpRow, PumpTable } from '../model/choose/choosePump.ts';
export { chooseTank } from '../model/choose/chooseTank.ts';
export type { TankRow, TankTable } from '../model/choose/chooseTank.ts';
export { choosing } from '../model/choose/choosing.ts';
export { pastedCurve } from '../model/choose/pastedCurve.ts';
export { headroomOf } from '../model/headroom/headroom.ts';
export type { Headroom, HeadroomReport } from '../model/headroom/told.ts';

// In words.
export { choose as choiceWords } from '../words/en/choose.ts';
export type { ChoiceWords } from '../words/sayChoice.ts';
export { sayPumpRow, sayTankRow, sayWhyChoice } from '../words/sayChoice.ts';
export { headroom as headroomWords } from '../words/en/headroom.ts';
export { sayHeadroom } from '../words/sayHeadroom.ts';
