/** From a solved plan to a scene: the sheet, its section and its details. */
import type { Metres } from '../model/si.ts';
import type { Solution } from '../model/solution.ts';
import { show } from '../model/units.ts';
import { short as english } from '../words/en/short.ts';
import { drawLens, drawPumpEnd, drawWellTop } from './details/index.ts';
import type { DetailDrawer, DetailFrame, DetailScene } from './details/contract.ts';
import type { Box } from './hatch/clip.ts';
import { heavier } from './heavier.ts';
import { joined } from './joined.ts';
import { atScale, captionWidth, layoutSheet, withHouse } from './layout.ts';
import type { DetailPlace, SectionLayout, SheetLayout } from './layout.ts';
import type { DetailLooks, Looks, SectionLooks } from './looks.ts';
import { forgetful, memoryUnder, type Memory } from './memory.ts';
import { momentOf } from './moment.ts';
import { hitsShown, showPieces } from './pieces.ts';
import { drawable, sheetBox, standardScale, type Paper } from './paper.ts';
import type { Shape } from './scene.ts';
import { crop, rect } from './shapes.ts';
import { drawSection, type SectionDrawing } from './section/drawSection.ts';
import { sectionWindow, within } from './section/frame.ts';
import { drawBrackets, whereIs } from './section/rail.ts';
import { captionHeight, drawCaption, type Hand } from './sheet/caption.ts';
import { describe } from './sheet/describe.ts';
import { drawFrame, drawLink, drawScaleBar, drawScaleCaption, scaleCaption } from './sheet/frames.ts';
import { drawHeading, subtitleLines, titleOf } from './sheet/heading.ts';
import { drawLit } from './sheet/lit.ts';
import { drawMat } from './sheet/mat.ts';
import { isContrast, THEMES, type Ink } from './theme.ts';
import { measureWith } from './type/measure.ts';
import type { DepthSpan, DepthWindow, DetailDrawing, FramePlace, Scene, View, ViewName, WordedView } from './view.ts';

/** Without the house, unless the view brings its drawer. The view is whole: nothing is looked at twice. */
export function drawSheet(solution: Solution, view: View): Scene {
  return drawWith(forgetful, solution, view);
}

/**
 * @param kept  details of an earlier scene of the same view, shown again instead of drawn anew: while something is
 *              dragged in the section they may follow a moment later
 */
export function drawWith(memory: Memory, judged: Solution, asked: View, kept?: readonly DetailDrawing[]): Scene {
  const { recall } = memory;
  const solution = asked.marks === false ? { ...judged, findings: [] } : judged;
  const paper = asked.paper ?? null;
  const view: WordedView = {
    words: english,
    ...withoutMoment(paper === null ? asked : { ...asked, ...drawable(paper) }),
  };
  const ink = THEMES[view.theme];
  const type = measureWith(view.spare ?? 1);
  const hand: Hand = { view, ink, type };
  const { width, height, sheet, caption, words } = view;
  const room = [width, height, typeof sheet === 'object' ? 'at' : sheet, caption, type];
  const lines = recall('subtitle', [solution.facts.well, view.units, words, ...room], () =>
    subtitleLines(solution, view, headingWidth(view), type),
  );
  const foot = caption === true ? captionHeight(judged, hand, captionWidth(view)) : 0;
  const whole = recall('layout', [lines.length, foot, ...room], () =>
    layoutSheet({ view, subtitleLines: lines.length, captionHeight: foot }),
  );
  const scale = paper === null || whole.section === null ? null : scaleFor(solution, whole.section, view.units);
  const scaled = scale === null ? whole : atScale(whole, spanOf(solution), scale);
  const layout = scale === null || view.atHouse === undefined ? scaled : withHouse(scaled, whole);
  const section =
    layout.section === null ? null : drawSection(solution, view, layout.section, memoryUnder('O', memory));
  const details =
    kept ?? layout.details.map((place) => drawDetail(solution, place, hand, memoryUnder(place.view, memory)));
  const frames = [...(section === null ? [] : [section.place]), ...details.map(({ place }) => place)];
  const placed = joined([section?.hits ?? [], ...details.map(({ scene }) => scene.hits)]);
  const hits = view.pieces === undefined ? placed : hitsShown(placed, view.pieces);
  const marks = joined([section?.marks ?? [], ...details.map(({ scene }) => scene.marks)]);
  const matted = detailShapes(
    details,
    { sheet: sheetOf(layout, paper), besideSection: section !== null },
    hand,
    memory,
  );
  const title = titleOf(solution, words);
  const drawn: Shape[] = [
    recall('paper', [layout, ink, paper], () => drawPaper(layout, paper, ink)),
    // A detail alone has the heading over its mat.
    ...(section === null ? matted : []),
    recall('heading', [title, lines, layout, ink, type], () =>
      drawHeading({ title, lines }, layout.heading, ink, type),
    ),
    ...(section === null ? [] : [...sectionShapes(section, { layout, scale, details }, view.lens, memory), ...matted]),
    ...drawLit(litIn(view), solution, hits, ink),
    ...(layout.caption === null ? [] : drawCaption(judged, hand, layout.caption, { frames, marks, scale })),
  ];
  const shapes = view.pieces === undefined ? drawn : showPieces(drawn, solution, view.pieces);
  return {
    width: layout.width,
    height: layout.height,
    title,
    describe: () => describe(judged, words, show(view.units)),
    background: ink.paper,
    paper,
    shapes: isContrast(view.theme) ? heavier(shapes, memory) : shapes,
    scales: { windows: windowsOf(frames), chips: section?.chipStates ?? [], looks: looksOf(section, details) },
    chips: section?.chips ?? [],
    marks,
    frames,
    hits,
    details,
  };
}

/** Keys of parts, or the number of a finding. */
function litIn({ lit, pieces = {} }: View): string[] {
  const keys = Object.keys(pieces).filter((key) => pieces[key] === 'lit');
  return keys.concat(lit ?? []);
}

/** A picture that is printed or kept shows the well as planned. */
function withoutMoment(view: View): View {
  const { moment, ...still } = view;
  return moment === undefined || momentOf(view) !== undefined ? view : still;
}

function sheetOf({ width, height }: SheetLayout, paper: Paper | null): Box {
  return paper === null ? { left: 0, top: 0, right: width, bottom: height } : sheetBox(paper);
}

function drawPaper(layout: SheetLayout, paper: Paper | null, ink: Ink): Shape {
  const { left, top, right, bottom } = sheetOf(layout, paper);
  return rect('paper', left, top, right - left, bottom - top, { fill: ink.paper });
}

/** Depth that the section shows. */
function spanOf(solution: Solution): Metres {
  const { topDepth, bottomDepth } = sectionWindow(solution);
  return bottomDepth - topDepth;
}

function scaleFor(solution: Solution, { box }: SectionLayout, units: View['units']): number {
  return standardScale(spanOf(solution), box.bottom - box.top, units);
}

/** The heading may run over the section and its chips; asked before the layout, which needs its number of lines. */
function headingWidth(view: View): number {
  return layoutSheet({ view, subtitleLines: 1, captionHeight: 0 }).heading.width;
}

/** What stands on the sheet besides the section. */
interface Beside {
  readonly layout: SheetLayout;
  /** Of depths; null on a screen. */
  readonly scale: number | null;
  readonly details: readonly DetailDrawing[];
}

function sectionShapes(
  { frame, place, shapes }: SectionDrawing,
  { layout, scale, details }: Beside,
  lens: DepthSpan | undefined,
  { recall }: Memory,
): Shape[] {
  const { ink } = frame;
  const chips = layout.section?.chips;
  const bracketX = layout.section?.bracketX ?? null;
  // What stands in the house is at no depth of the well.
  const places = details.map((detail) => detail.place).filter((each) => each.view !== 'D');
  const words = scaleCaption(place, scale, frame);
  const at = (depth: Metres): number => within(frame, frame.y(depth));
  return [
    ...shapes,
    ...(bracketX === null
      ? []
      : recall('brackets', [...places, lens, frame, bracketX], () => drawBrackets(places, lens, frame, bracketX))),
    ...(chips === undefined
      ? []
      : places
          .filter((each) => whereIs(each, frame) === null)
          .map((each) =>
            recall(`link/${each.view}`, [each, chips, frame], () => {
              const x = chips.x + chips.width + 4;
              return drawLink(each, { x, top: at(each.topDepth), bottom: at(each.bottomDepth) }, ink);
            }),
          )),
    ...(scale === null ? [] : [drawScaleBar(place, scale, frame.show, ink)]),
    recall('scaleCaption', [words, layout, ink], () =>
      drawScaleCaption(words, place.x + place.width, place.y + place.height + 17, ink),
    ),
  ];
}

function drawDetail(
  solution: Solution,
  { view: name, box }: DetailPlace,
  { view, ink, type }: Hand,
  memory: Memory,
): DetailDrawing {
  const { units, words, theme, held, moment, lit, pieces } = view;
  const size = { x: box.left, y: box.top, width: box.right - box.left, height: box.bottom - box.top };
  const frame: DetailFrame = {
    view: name,
    ...size,
    units,
    words,
    theme,
    ink,
    type,
    frozen: view.frozen?.windows[name],
    looks: view.looks?.[name],
    held,
    moment,
    lit,
    pieces,
  };
  const scene = drawIn(frame, solution, view, memory);
  const { topDepth, bottomDepth, widthFactor } = scene;
  return { scene, place: memory.same('place', { view: name, ...size, topDepth, bottomDepth, widthFactor }) };
}

function drawIn(frame: DetailFrame, solution: Solution, view: View, memory: Memory): DetailScene {
  switch (frame.view) {
    case 'A':
      return drawWellTop(solution, frame, memory);
    case 'B':
      return drawPumpEnd(solution, frame, memory);
    case 'C':
      return drawLens(solution, depthOf(view), frame, memory);
    case 'D':
      if (view.atHouse === undefined) throw new Error('draw: a drawer without the house needs view.atHouse for it');
      return (view.atHouse as DetailDrawer)(solution, frame, memory);
  }
}

function depthOf({ sheet }: View): number {
  return typeof sheet === 'object' ? sheet.at : 0;
}

/** @param mat  the paper round them, and whether the section stands on it */
function detailShapes(
  details: readonly DetailDrawing[],
  { sheet, besideSection }: { readonly sheet: Box; readonly besideSection: boolean },
  { view: { words }, ink, type }: Hand,
  { recall }: Memory,
): Shape[] {
  if (details.length === 0) return [];
  const places = details.map(({ place }) => place);
  // The house, under the section, reaches out of its frame by no more than a pipe's end.
  const matted = besideSection ? places.filter(({ view }) => view !== 'D') : places;
  return [
    // A detail that was kept is kept with its window.
    ...details.map((detail) => {
      const { place, scene } = detail;
      return recall(`detail/${place.view}`, [detail], () => crop(`detail/${place.view}`, place, scene.shapes));
    }),
    recall(
      'mat',
      [...joined(matted.map(({ x, y, width, height }) => [x, y, width, height])), sheet.right, sheet.bottom, ink],
      () => drawMat(matted, sheet, besideSection, ink),
    ),
    ...places.map((place) => {
      const { view, x, y, width, height, widthFactor } = place;
      return recall(`frame/${view}`, [x, y, width, height, widthFactor, words, ink, type], () =>
        drawFrame(place, words, ink, type),
      );
    }),
  ];
}

function looksOf(section: SectionDrawing | null, details: readonly DetailDrawing[]): Looks {
  const looks: { O?: SectionLooks; A?: DetailLooks; B?: DetailLooks; C?: DetailLooks; D?: DetailLooks } = {};
  if (section !== null) looks.O = section.looks;
  for (const { place, scene } of details) if (place.view !== 'O') looks[place.view] = scene.looks;
  return looks;
}

function windowsOf(frames: readonly FramePlace[]): Partial<Record<ViewName, DepthWindow>> {
  const windows: Partial<Record<ViewName, DepthWindow>> = {};
  for (const { view, topDepth, bottomDepth, widthFactor } of frames)
    windows[view] = { topDepth, bottomDepth, widthFactor };
  return windows;
}
