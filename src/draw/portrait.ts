/**
 * The well alone, without a word, a level's line or a mark: as the section draws it, for a picture of a hand's breadth.
 * What names a well stands beside such a picture.
 */
import type { Solution } from '../model/solution.ts';
import { short as english } from '../words/en/short.ts';
import type { Box } from './hatch/clip.ts';
import { heavier } from './heavier.ts';
import { forgetful } from './memory.ts';
import type { Shape } from './scene.ts';
import { rect } from './shapes.ts';
import { drawBody } from './section/body.ts';
import { sectionFrame } from './section/frame.ts';
import { drawGround, groundLayers } from './section/ground.ts';
import { drawSectionTurf } from './section/turf.ts';
import { isContrast, THEMES } from './theme.ts';
import type { Scene, View } from './view.ts';

export type Portrait = Pick<Scene, 'width' | 'height' | 'paper' | 'shapes'>;

export type PortraitView = Pick<View, 'width' | 'height' | 'theme'>;

/** @param view  in px of the drawing: lines and symbols have the sizes that they have in the section, so a picture that is shown at half of it has them half as heavy */
export function drawPortrait(solution: Solution, view: PortraitView): Portrait {
  const { width, height, theme } = view;
  const ink = THEMES[theme];
  const frame = sectionFrame(
    solution,
    {
      box: boxOf(view),
      ink,
      theme,
      spare: 1,
      units: 'us',
      words: english,
      frozen: undefined,
      window: undefined,
      looks: undefined,
      held: undefined,
    },
    forgetful,
  );
  const shapes: Shape[] = [
    rect('paper', 0, 0, width, height, { fill: ink.paper }),
    ...drawGround(solution, groundLayers(solution, frame), frame, forgetful),
    ...drawSectionTurf(solution, frame),
    drawBody(solution, frame, undefined, forgetful).shape,
  ];
  return { width, height, paper: null, shapes: isContrast(theme) ? heavier(shapes, forgetful) : shapes };
}

/** Over the highest depth, for what is drawn taller than it is [px]. */
const OVER = 14;
/** The ground and the line to the house go on past the picture's edges [px]. */
const PAST = 12;

/** Where the section lies on such a picture. */
export function boxOf({ width, height }: PortraitView): Box {
  return { left: -PAST, right: width + PAST, top: OVER, bottom: height };
}
