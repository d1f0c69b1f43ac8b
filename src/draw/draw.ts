/** From a solved plan to a scene: the sheet, its section and its details. */
import type { Solution } from '../model/solution.ts';
import { show } from '../model/units.ts';
import { drawLens, drawPumpEnd, drawWellTop } from './details/index.ts';
import type { DetailFrame, DetailScene } from './details/contract.ts';
import { layoutSheet, type DetailPlace, type SheetLayout } from './layout.ts';
import type { Shape } from './scene.ts';
import { crop, rect } from './shapes.ts';
import { drawSection, type SectionDrawing } from './section/drawSection.ts';
import { within } from './section/frame.ts';
import { drawBrackets } from './section/rail.ts';
import { drawCaption } from './sheet/caption.ts';
import { describe } from './sheet/describe.ts';
import { drawFrame, drawLink, drawScaleCaption, factorWords } from './sheet/frames.ts';
import { drawHeading, subtitleLines, titleOf } from './sheet/heading.ts';
import { drawLit } from './sheet/lit.ts';
import { THEMES, type Ink } from './theme.ts';
import type { DepthWindow, FramePlace, Scene, View, ViewName } from './view.ts';

interface DetailDrawing {
  readonly place: FramePlace;
  readonly scene: DetailScene;
}

export function draw(solution: Solution, view: View): Scene {
  const ink = THEMES[view.theme];
  const units = show(view.units);
  const lines = subtitleLines(solution, units, headingWidth(view));
  const layout = layoutSheet({ view, subtitleLines: lines.length });
  const section = layout.section === null ? null : drawSection(solution, view, layout.section, ink);
  const details = layout.details.map((place) => drawDetail(solution, view, place, ink));
  const frames = [...(section === null ? [] : [section.place]), ...details.map(({ place }) => place)];
  const hits = [...(section?.hits ?? []), ...details.flatMap(({ scene }) => scene.hits)];
  const marks = [...(section?.marks ?? []), ...details.flatMap(({ scene }) => scene.marks)];
  return {
    width: layout.width,
    height: layout.height,
    title: titleOf(solution),
    desc: describe(solution, units),
    background: ink.paper,
    shapes: [
      rect('paper', 0, 0, layout.width, layout.height, { fill: ink.paper }),
      drawHeading(solution, lines, layout.heading, ink),
      ...(section === null ? [] : sectionShapes(section, layout, details, ink)),
      ...details.flatMap((detail) => detailShapes(detail, ink)),
      ...drawLit(view.lit, solution, hits, ink),
      ...(layout.caption === null ? [] : drawCaption(solution, view, layout.caption, frames, ink)),
    ],
    scales: { windows: windowsOf(frames), chips: section?.chipStates ?? [] },
    chips: section?.chips ?? [],
    marks,
    frames,
    hits,
  };
}

/** The heading may run over the section and its chips; asked before the layout, which needs its number of lines. */
function headingWidth(view: View): number {
  return layoutSheet({ view, subtitleLines: 1 }).heading.width;
}

function sectionShapes(
  section: SectionDrawing,
  layout: SheetLayout,
  details: readonly DetailDrawing[],
  ink: Ink,
): Shape[] {
  const { frame, place } = section;
  const chips = layout.section?.chips;
  const bracketX = layout.section?.bracketX ?? null;
  const places = details.map((detail) => detail.place);
  const words = `widths ×${factorWords(place.widthFactor)}`;
  return [
    ...section.shapes,
    ...(bracketX === null ? [] : drawBrackets(places, frame, bracketX)),
    ...(chips === undefined
      ? []
      : places.map((each) =>
          drawLink(
            each,
            chips.x + chips.width + 4,
            within(frame, frame.y(each.topDepth)),
            within(frame, frame.y(each.bottomDepth)),
            ink,
          ),
        )),
    drawScaleCaption(words, place.x + place.width, place.y + place.height + 17, ink),
  ];
}

function drawDetail(solution: Solution, view: View, { view: name, box }: DetailPlace, ink: Ink): DetailDrawing {
  const frozen = view.frozen?.windows[name];
  const frame: DetailFrame = {
    view: name,
    x: box.left,
    y: box.top,
    width: box.right - box.left,
    height: box.bottom - box.top,
    units: view.units,
    theme: view.theme,
    ink,
    ...(frozen === undefined ? {} : { frozen }),
    ...(view.held === undefined ? {} : { held: view.held }),
    ...(view.lit === undefined ? {} : { lit: view.lit }),
  };
  const scene =
    name === 'A'
      ? drawWellTop(solution, frame)
      : name === 'B'
        ? drawPumpEnd(solution, frame)
        : drawLens(solution, depthOf(view), frame);
  const { topDepth, bottomDepth, widthFactor } = scene;
  const { x, y, width, height } = frame;
  return { scene, place: { view: name, x, y, width, height, topDepth, bottomDepth, widthFactor } };
}

function depthOf({ sheet }: View): number {
  return typeof sheet === 'object' ? sheet.at : 0;
}

function detailShapes({ place, scene }: DetailDrawing, ink: Ink): Shape[] {
  return [
    crop(`detail/${place.view}`, place.x, place.y, place.width, place.height, scene.shapes),
    drawFrame(place, ink),
  ];
}

function windowsOf(frames: readonly FramePlace[]): Partial<Record<ViewName, DepthWindow>> {
  return Object.fromEntries(
    frames.map(({ view, topDepth, bottomDepth, widthFactor }) => [view, { topDepth, bottomDepth, widthFactor }]),
  );
}
