/** The half of the time view that is fetched when it is first asked for. */
export { breakRange, levelAgainstTime, poorWell } from '../../model/time/index.ts';
export { atTime } from './atTime.ts';
