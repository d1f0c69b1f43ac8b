/** What others may import: read a plan, solve it, say what was found, draw it. */
export * from '../model/index.ts';
export { fixesOf } from '../model/fixes/fixesOf.ts';
export type { Offered } from '../model/fixes/fixesOf.ts';
export { choosePump } from '../model/choose/choosePump.ts';
export type { OwnPump, PumpRow, PumpTable } from '../model/choose/choosePump.ts';
export { chooseTank } from '../model/choose/chooseTank.ts';
export type { TankRow, TankTable } from '../model/choose/chooseTank.ts';
export { choosing } from '../model/choose/choosing.ts';
export { pastedCurve } from '../model/choose/pastedCurve.ts';
export { headroomOf } from '../model/headroom/headroom.ts';
export type { Headroom, HeadroomReport } from '../model/headroom/told.ts';
export { lackingIn } from '../model/rules/lacking.ts';
export type { Lacking } from '../model/rules/lacking.ts';
export { en } from '../words/en/index.ts';
export { choose as choiceWords } from '../words/en/choose.ts';
export type { ChoiceWords } from '../words/sayChoice.ts';
export { sayPumpRow, sayTankRow, sayWhyChoice } from '../words/sayChoice.ts';
export { headroom } from '../words/en/headroom.ts';
export { sayEnd } from '../words/sayEnd.ts';
export { changeInFindings, countFindings, sayInAll } from '../words/sayFindings.ts';
export { sayHeadroom } from '../words/sayHeadroom.ts';
export {
  sayAdvice,
  sayFinding,
  sayFix,
  sayHolding,
  sayLacking,
  sayMeasure,
  sayShort,
  sayTurning,
  sayTurns,
  sayWorse,
} from '../words/sayJudgement.ts';
export { sayAssumed } from '../words/en/plan/assumed.ts';
export { nameOfPath } from '../words/en/plan/paths.ts';
export { nameLevel, sayBlock, sayHandle, sayReading } from '../words/sayLevel.ts';
export type { LongLanguage, ShortLanguage, Words } from '../words/words.ts';
export { A3, A4, draw, landscape, LEGAL, LETTER, TABLOID, toSvg } from '../draw/index.ts';
export type { AskedView, Paper, Scene, View } from '../draw/index.ts';
