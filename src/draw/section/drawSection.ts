/** The section O, from the ground up to its marks: each thing in its own file, put together in the order it lies. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { show } from '../../model/units.ts';
import type { SectionLayout } from '../layout.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { ChipPlace, ChipState, FramePlace, HitPlace, MarkPlace, View } from '../view.ts';
import { drawAnnulus, drawCasings } from './casing.ts';
import { drawChips } from './chips.ts';
import { chipWords, type ChipWords } from './chipWords.ts';
import { drawCone } from './cone.ts';
import { sectionFrame, within, type SectionFrame } from './frame.ts';
import { drawFrost } from './frost.ts';
import { drawGround, groundLayers } from './ground.ts';
import { drawHouse, housePlace } from './house.ts';
import { drawAir, drawFill, drawHoleWalls, drawUnknownZone, drawWater } from './hole.ts';
import { drawBands, drawLayerNames } from './leftLabels.ts';
import { drawGhost, drawLevels } from './levels.ts';
import { drawRail, drawTrueExtents } from './rail.ts';
import { drawMarks, drawRightLabels } from './rightLabels.ts';
import { drawString } from './string.ts';
import { drawTopWorks } from './topWorks.ts';
import { drawTails } from './tails.ts';

export interface SectionDrawing {
  readonly frame: SectionFrame;
  readonly place: FramePlace;
  readonly shapes: readonly Shape[];
  readonly chips: readonly ChipPlace[];
  readonly chipStates: readonly ChipState[];
  readonly marks: readonly MarkPlace[];
  readonly hits: readonly HitPlace[];
}

export function drawSection(solution: Solution, view: View, layout: SectionLayout, ink: Ink): SectionDrawing {
  const { box } = layout;
  const frame = sectionFrame(solution, {
    box,
    ink,
    theme: view.theme,
    show: show(view.units),
    frozen: view.frozen?.windows.O,
    held: view.held,
  });
  const layers = groundLayers(solution, frame);
  const frost = solution.values.frostDepth;
  const bands = drawBands(solution, frame);
  const string = drawString(solution, frame);
  const top = drawTopWorks(solution, frame);
  const words = chipWords(solution, frame.show, ink);
  const chips = drawChips(words, layout.chips, frame, view.frozen, view.held);
  const marks = drawMarks(solution.findings, frame);
  const frostFoot = frost === null ? frame.top : within(frame, frame.y(frost));
  const shapes: Shape[] = [
    ...drawGround(solution, layers, frame),
    ...drawFrost(frost, frame),
    ...drawCone(solution, frame),
    ...drawLayerNames(layers, bands.boxes, frostFoot, frame),
    group('well', [
      ...drawAnnulus(solution, frame),
      ...drawAir(solution, frame),
      ...drawWater(solution, frame),
      ...drawUnknownZone(solution, frame),
      ...drawFill(solution, frame),
      ...drawCasings(solution, frame),
      ...drawHoleWalls(solution, frame),
    ]),
    ...drawHouse(solution, frame),
    ...string.shapes,
    ...top.shapes,
    ...drawGhost(frame),
    ...drawTails(words, housePlace(frame.y(0), frame).pipeX, frame),
    ...drawLevels(solution, frame),
    ...bands.shapes,
    ...drawRightLabels(solution, lineDepths(words), frame),
    drawRail(frame),
    ...drawTrueExtents(string.trueExtents, frame),
    ...chips.shapes,
    ...marks.shapes,
  ];
  const place: FramePlace = {
    view: 'O',
    x: box.left,
    y: box.top,
    width: box.right - box.left,
    height: box.bottom - box.top,
    topDepth: frame.topDepth,
    bottomDepth: frame.bottomDepth,
    widthFactor: frame.widthFactor,
  };
  return {
    frame,
    place,
    shapes,
    chips: chips.chips,
    chipStates: chips.states,
    marks: marks.marks,
    hits: [...top.hits, ...string.hits],
  };
}

function lineDepths(words: readonly ChipWords[]): Metres[] {
  return words.filter(({ known }) => known).map(({ depth }) => depth);
}
