/** The section O, from the ground up to its marks: each thing in its own file, put together in the order it lies. */
import type { Metres } from '../../model/si.ts';
import type { Finding, Solution } from '../../model/solution.ts';
import { HEADROOM, type SectionLayout } from '../layout.ts';
import type { SectionLooks } from '../looks.ts';
import type { Memory } from '../memory.ts';
import type { Shape } from '../scene.ts';
import { crop } from '../shapes.ts';
import { THEMES } from '../theme.ts';
import type { ChipPlace, ChipState, FramePlace, HitPlace, MarkPlace, WordedView } from '../view.ts';
import { drawBeyond } from './beyond.ts';
import { drawBody } from './body.ts';
import { drawChips } from './chips.ts';
import { chipWords, type ChipWords } from './chipWords.ts';
import { drawCone } from './cone.ts';
import { isSeen, pastEdges, sectionFrame, within, type SectionFrame } from './frame.ts';
import { drawSectionFlow } from './flow.ts';
import { drawFrost } from './frost.ts';
import { drawGround, groundLayers } from './ground.ts';
import { drawHouse, housePlace } from './house.ts';
import { drawBands, drawLayerNames } from './leftLabels.ts';
import { drawGhost, drawLevels } from './levels.ts';
import { drawOverview, OVERVIEW } from './overview.ts';
import { drawRail, drawTrueExtents } from './rail.ts';
import { drawMarks, drawRightLabels } from './rightLabels.ts';
import { drawTails } from './tails.ts';
import { drawSectionTurf } from './turf.ts';

export interface SectionDrawing {
  readonly frame: SectionFrame;
  readonly place: FramePlace;
  readonly shapes: readonly Shape[];
  readonly chips: readonly ChipPlace[];
  readonly chipStates: readonly ChipState[];
  readonly marks: readonly MarkPlace[];
  readonly hits: readonly HitPlace[];
  readonly looks: SectionLooks;
}

export function drawSection(
  solution: Solution,
  view: WordedView,
  layout: SectionLayout,
  memory: Memory,
): SectionDrawing {
  const { box } = layout;
  const { recall, same } = memory;
  const { facts, levels, values, bore } = solution;
  const frame = sectionFrame(
    solution,
    {
      box,
      ink: THEMES[view.theme],
      theme: view.theme,
      spare: view.spare ?? 1,
      units: view.units,
      words: view.words,
      frozen: view.frozen?.windows.O,
      // Paper shows the whole well.
      window: view.paper === undefined ? view.window : undefined,
      looks: view.looks?.O,
      held: view.held,
    },
    memory,
  );
  const isCut = frame.cut.top || frame.cut.bottom;
  const past = isCut ? recall('pastEdges', [frame], () => pastEdges(frame)) : frame;
  const frost = values.frostDepth;
  const frostShare = view.moment?.frostShare ?? 1;
  const thawShare = view.moment?.thawShare ?? 0;
  /** Snow is gone before the ground begins to thaw. */
  const snows = frostShare > 0 && thawShare === 0;
  // The cone is that of a pump that runs; what is left of it while the water comes back is known with the level alone.
  const atRest = view.moment?.pumping === false && view.moment.water === undefined;
  const layers = recall('layers', [facts.well, past], () => groundLayers(solution, past));
  const layersSeen = isCut ? recall('layersSeen', [facts.well, frame], () => groundLayers(solution, frame)) : layers;
  const bands = recall('bands', [solution.bands, solution.assumed, facts.pump.setting, facts.top, frame], () =>
    drawBands(solution, frame, memory),
  );
  const bandBoxes = same('bandBoxes', bands.boxes);
  const line = solution.parts.find(({ key }) => key === 'buriedLine');
  const body = drawBody(solution, past, view.moment, memory);
  const words = same('chipWords', chipWords(solution, frame));
  const isBeyond = ({ known, depth }: ChipWords): boolean => known && !isSeen(frame, depth);
  const seen = isCut ? words.filter((each) => !isBeyond(each)) : words;
  const beyond = drawBeyond(isCut ? words.filter(isBeyond) : [], layout.chips, frame, memory);
  const chips = drawChips(
    { words: seen, before: view.frozen?.chips },
    same('chipColumn', beyond.column),
    frame,
    memory,
  );
  const marks = recall('marks', [solution.findings, frame], () =>
    drawMarks(isCut ? findingsSeen(solution.findings, frame) : solution.findings, frame, memory),
  );
  const frostFoot = frost === null ? frame.top : within(frame, frame.y(frost));
  const restLevel = solution.cone === null ? null : levels.static;
  const lines = same('lineDepths', lineDepths(seen));
  const names = isCut ? recall('namesFrame', [frame], () => ({ ...frame, left: frame.left + OVERVIEW })) : frame;
  const inWindow: Shape[] = [
    ...recall('ground', [layers, facts.well, bore, past], () => drawGround(solution, layers, past, memory)),
    ...recall('frost', [frost, frostShare, thawShare, past], () => drawFrost(frost, past, frostShare, thawShare)),
    ...recall('turf', [frost, snows, facts.well, line, past], () => drawSectionTurf(solution, past, snows)),
    ...(atRest ? [] : recall('cone', [solution.cone, facts.well, bore, past], () => drawCone(solution, past))),
    ...recall('layerNames', [layersSeen, bandBoxes, frostFoot, restLevel, names], () =>
      drawLayerNames(layersSeen, bandBoxes, { frostFoot, restLevel }, names),
    ),
    body.shape,
    ...recall('ghost', [past], () => drawGhost(past)),
    ...drawTails(seen, housePlace(past.y(0), past).pipeX, past, memory),
    ...recall('house', [line, facts.house, facts.site, facts.dropPipe, past], () => drawHouse(solution, past)),
    ...recall('levels', [levels, facts.well, past], () => drawLevels(solution, past, memory)),
    ...bands.shapes,
    ...recall(
      'rightLabels',
      [facts.well, facts.house, facts.pump.lowLevelCutOff, levels, bore, values.drawdown, solution.parts, lines, frame],
      () => drawRightLabels(solution, lines, frame, memory),
    ),
    ...drawSectionFlow(solution, view.moment, past, memory),
  ];
  const shapes: Shape[] = [
    ...(isCut ? [recall('window', [...inWindow, frame], () => cropped(inWindow, frame))] : inWindow),
    ...drawOverview(solution, frame),
    recall('rail', [frame], () => drawRail(frame)),
    ...recall('extents', [body.closed, frame], () => drawTrueExtents(body.closed?.trueExtents ?? [], frame)),
    ...beyond.shapes,
    ...chips.shapes,
    ...marks.shapes,
  ];
  const place = same<FramePlace>('place', {
    view: 'O',
    x: box.left,
    y: box.top,
    width: box.right - box.left,
    height: box.bottom - box.top,
    topDepth: frame.topDepth,
    bottomDepth: frame.bottomDepth,
    widthFactor: frame.widthFactor,
  });
  return {
    frame,
    place,
    shapes,
    chips: [...chips.chips, ...beyond.chips],
    chipStates: [...chips.states, ...beyond.states],
    marks: marks.marks,
    looks: same('looksShown', { ...frame.looks, clear: body.closed?.clear ?? null }),
    hits: isCut ? body.hits.flatMap((hit) => hitSeen(hit, place)) : body.hits,
  };
}

/** A viewport of its own crops what goes on past the window; an end of the well that is seen has its room above the ground. */
function cropped(shapes: readonly Shape[], { left, right, top, bottom, cut }: SectionFrame): Shape {
  const from = cut.top ? top : top - HEADROOM;
  return crop('window', { x: left, y: from, width: right - left, height: bottom - from }, shapes);
}

/** Findings keep their numbers; one without a depth has no mark. */
function findingsSeen(findings: readonly Finding[], frame: SectionFrame): Finding[] {
  return findings.map((finding) =>
    finding.depth === null || isSeen(frame, finding.depth) ? finding : { ...finding, depth: null },
  );
}

/** What of a part answers to the pointer in the window. */
function hitSeen(hit: HitPlace, place: FramePlace): HitPlace[] {
  const x = Math.max(hit.x, place.x);
  const y = Math.max(hit.y, place.y);
  const width = Math.min(hit.x + hit.width, place.x + place.width) - x;
  const height = Math.min(hit.y + hit.height, place.y + place.height) - y;
  return width > 0 && height > 0 ? [{ ...hit, x, y, width, height }] : [];
}

function lineDepths(words: readonly ChipWords[]): Metres[] {
  return words.filter(({ known }) => known).map(({ depth }) => depth);
}
