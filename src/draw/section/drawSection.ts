/** The section O, from the ground up to its marks: each thing in its own file, put together in the order it lies. */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import type { SectionLayout } from '../layout.ts';
import type { Memory } from '../memory.ts';
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
import { drawAir, drawFill, drawHoleWalls, drawUnknownZone, drawWater, waterOf } from './hole.ts';
import { drawBands, drawLayerNames } from './leftLabels.ts';
import { drawGhost, drawLevels } from './levels.ts';
import { drawRail, drawTrueExtents } from './rail.ts';
import { drawMarks, drawRightLabels } from './rightLabels.ts';
import { drawString } from './string.ts';
import { drawTopWorks, topPartsOf } from './topWorks.ts';
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

export function drawSection(
  solution: Solution,
  view: View,
  layout: SectionLayout,
  ink: Ink,
  memory: Memory,
): SectionDrawing {
  const { box } = layout;
  const { recall, same } = memory;
  const { facts, levels, values, bore, parts } = solution;
  const frame = sectionFrame(
    solution,
    { box, ink, theme: view.theme, units: view.units, frozen: view.frozen?.windows.O, held: view.held },
    memory,
  );
  const frost = values.frostDepth;
  const layers = recall('layers', [facts.well, frame], () => groundLayers(solution, frame));
  const bands = recall('bands', [solution.bands, facts.pump.setting, facts.top, frame], () =>
    drawBands(solution, frame),
  );
  const bandBoxes = same('bandBoxes', bands.boxes);
  const string = recall('string', [parts, facts.pump, facts.dropPipe, facts.top, facts.well.casings, bore, frame], () =>
    drawString(solution, frame),
  );
  const topParts = same('topParts', topPartsOf(solution, frame));
  const top = recall('topWorks', [facts.well, facts.house, facts.dropPipe, topParts, frame], () =>
    drawTopWorks(solution, topParts, frame),
  );
  const words = same('chipWords', chipWords(solution, frame.show, ink));
  const chips = drawChips(words, layout.chips, frame, view.frozen, view.held, memory);
  const marks = drawMarks(solution.findings, frame, memory);
  const frostFoot = frost === null ? frame.top : within(frame, frame.y(frost));
  const lines = same('lineDepths', lineDepths(words));
  const shapes: Shape[] = [
    ...recall('ground', [layers, facts.well, bore, frame], () => drawGround(solution, layers, frame, memory)),
    ...recall('frost', [frost, frame], () => drawFrost(frost, frame)),
    ...recall('cone', [solution.cone, frame], () => drawCone(solution, frame)),
    ...recall('layerNames', [layers, bandBoxes, frostFoot, frame], () =>
      drawLayerNames(layers, bandBoxes, frostFoot, frame),
    ),
    drawWell(solution, frame, memory),
    ...recall('house', [topParts.line, facts.house, facts.dropPipe, frame], () => drawHouse(solution, frame)),
    ...string.shapes,
    ...top.shapes,
    ...recall('ghost', [frame], () => drawGhost(frame)),
    ...drawTails(words, housePlace(frame.y(0), frame).pipeX, frame, memory),
    ...recall('levels', [levels, facts.well, frame], () => drawLevels(solution, frame)),
    ...bands.shapes,
    ...recall('rightLabels', [facts.well, facts.house, levels, bore, values.drawdown, topParts, lines, frame], () =>
      drawRightLabels(solution, lines, frame, memory),
    ),
    recall('rail', [frame], () => drawRail(frame)),
    ...recall('extents', [string, frame], () => drawTrueExtents(string.trueExtents, frame)),
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

/** The hole and all that lines and fills it. */
function drawWell(solution: Solution, frame: SectionFrame, { recall }: Memory): Shape {
  const { facts, levels, bore } = solution;
  const { level, rest } = waterOf(solution);
  // Only where nobody knows the drawdown does the pump's place say where the water may stand.
  const setting = levels.pumping === null ? facts.pump.setting : null;
  const pieces = [
    recall('annulus', [facts.well, frame], () => drawAnnulus(solution, frame)),
    recall('air', [bore, level, frame], () => drawAir(solution, frame)),
    recall('water', [bore, level, rest, frame], () => drawWater(solution, frame)),
    recall('unknownZone', [bore, levels, setting, frame], () => drawUnknownZone(solution, frame)),
    recall('fill', [facts.well, bore, frame], () => drawFill(solution, frame)),
    recall('casings', [facts.well, bore, frame], () => drawCasings(solution, frame)),
    recall('holeWalls', [facts.well, bore, frame], () => drawHoleWalls(solution, frame)),
  ];
  return recall('well', pieces, () => group('well', pieces.flat()));
}

function lineDepths(words: readonly ChipWords[]): Metres[] {
  return words.filter(({ known }) => known).map(({ depth }) => depth);
}
