/**
 * Detail D, at the house: the line comes up, tank tee, tank, what guards them and what takes the power off, at one scale
 * both ways. Its heights count from the floor, for no plan says how deep a floor lies.
 */
import { feet, inches } from '../../../model/units.ts';
import type { Metres } from '../../../model/si.ts';
import type { Solution } from '../../../model/solution.ts';
import { EYES, floorDepth, RELIEF_PORT, TEE_HEIGHT } from '../../../model/string/houseEnd.ts';
import { isInHouse } from '../../../model/string/houseKinds.ts';
import { atHouse as english } from '../../../words/en/atHouse.ts';
import type { AtHouseLanguage } from '../../../words/words.ts';
import type { Memory } from '../../memory.ts';
import { makePen } from '../../parts/pen.ts';
import { THEMES } from '../../theme.ts';
import { group } from '../../shapes.ts';
import type { DetailContext } from '../context.ts';
import type { DetailDrawer, DetailFrame, DetailScene } from '../contract.ts';
import { labelsLeft, LEADER_PX } from '../layout.ts';
import { drawMarks } from '../marks.ts';
import { layLabels, sceneOf } from '../over.ts';
import { RAIL_PX } from '../rail.ts';
import { calloutFor, touching, worstByPart, type Wanted } from '../wanted.ts';
import { drawContents, UNDER_FLOOR, waterOf } from './contents.ts';
import { isDotted, notesOf, wantedIn } from './labels.ts';

const EDGE_PX = 6;
/** Right of the riser at least: the conduit, and what is left free for the leaders. */
const RIGHT: Metres = inches(6);
const SPARE: Metres = inches(3);
const BELOW: Metres = UNDER_FLOOR + inches(5);

/** Parts are drawn from near at any size of this detail. */
const LOOKS = { pumpOpen: true, bands: true };

/** In a language: its words are fetched with it. */
export function drawAtHouseIn(said: AtHouseLanguage): DetailDrawer {
  const wanted = wantedIn(said);
  return (solution, frame, memory) => drawHouse(solution, frame, { said, wanted }, memory);
}

export const drawAtHouse = drawAtHouseIn(english);

interface Saying {
  readonly said: AtHouseLanguage;
  readonly wanted: readonly Wanted[];
}

function drawHouse(asked: Solution, frame: DetailFrame, { said, wanted }: Saying, memory: Memory): DetailScene {
  const { x, y, width, height, theme, ink, units, type } = frame;
  const solution = placedInHouse(asked);
  const { recall, same } = memory;
  const { above, left, right } = extentOf(solution);
  const track = {
    left: labelsLeft(frame),
    right: x + width - EDGE_PX,
    top: y + EDGE_PX,
    bottom: y + height - EDGE_PX,
    elbow: labelsLeft(frame) - LEADER_PX + 4,
  };
  const box = { left: x + RAIL_PX, top: y, right: track.left - 2, bottom: y + height };
  const room = track.left - LEADER_PX - box.left;
  const scale = Math.min(height / (above + BELOW), room / (left + right));
  const tall = height / scale;
  // What is left of the height is shared out over and under the house.
  const bottom = BELOW + (tall - above - BELOW) * 0.3;
  const slack = Math.max(0, room - (left + right) * scale);
  const layout = recall('layout', [x, y, width, height, theme, type, scale, bottom, left, right], () => ({
    track,
    pen: makePen({
      axis: box.left + left * scale + slack / 2,
      topY: y,
      top: bottom - tall,
      bottom,
      across: scale,
      down: scale,
      tones: THEMES[theme].tones,
      looks: LOOKS,
    }),
  }));
  const { pen } = layout;
  const { facts, parts } = solution;
  const contents = recall(
    'contents',
    [
      same(
        'inHouse',
        parts.filter(({ kind }) => isInHouse(kind)),
      ),
      facts.house,
      facts.site,
      facts.dropPipe,
      layout,
      ink,
    ],
    () => drawContents(solution, pen, ink, box),
  );
  const placed = contents.placed;
  const context: DetailContext = {
    solution,
    frame,
    pen,
    window: box,
    box,
    placed,
    faults: worstByPart(solution),
  };
  const waiting = wanted
    .filter(({ key }) => placed.some(({ part }) => part === key))
    .map((want) => calloutFor(want, context))
    .filter((each) => each !== null)
    .map((each) => (isDotted(each.key, solution) ? { ...each, assumed: { name: true, note: false } } : each));
  const tank = placed.find(({ kind }) => kind === 'tank') ?? { part: 'tank', kind: 'tank', ...box };
  const middle = tank.left + (tank.right - tank.left) * 0.8;
  const water = waterOf(tank, solution, pen);
  const callouts = same('calloutValues', [
    ...touching(waiting, placed, box, track.left - LEADER_PX),
    ...notesOf(solution, said, units, {
      tank: { x: middle, air: (tank.top + water) / 2, water },
      relief:
        facts.house.kind === 'open tank' || facts.house.reliefValve === true
          ? null
          : { x: pen.x(RELIEF_PORT), y: pen.y(-TEE_HEIGHT - inches(0.9)) },
      floor: { x: pen.x(right), y: pen.y(inches(2)) },
    }),
  ]);
  const { told, leaders } = layLabels(callouts, layout, frame, memory);
  const marked = drawMarks(context, [], leaders, memory);
  const drawn = recall('house', [contents], () =>
    group('atHouse', contents.shapes, { 'stroke-width': 1.1, 'stroke-linejoin': 'round', fill: 'none' }),
  );
  return sceneOf(context, { layout, told, marked, looks: LOOKS, widthFactor: 1, upward: true }, [drawn], memory);
}

/** How high its things stand, and how far from the riser. */
function extentOf({ parts, facts }: Solution): { above: Metres; left: Metres; right: Metres } {
  const floor = floorDepth(facts);
  let above = EYES;
  let left: Metres = feet(2);
  let right = RIGHT - SPARE;
  for (const { kind, top, radius, across = 0 } of parts) {
    if (!isInHouse(kind)) continue;
    above = Math.max(above, floor - top);
    left = Math.max(left, radius - across);
    right = Math.max(right, radius + across);
  }
  // Past an open tank's outlet its pipe goes up.
  const outlet = facts.house.kind === 'open tank' ? SPARE : 0;
  return { above: above + SPARE, left: left + outlet + SPARE, right: right + SPARE };
}

/** A fault of the line has a depth in the well, where this window does not look: it is marked here all the same. */
function placedInHouse(solution: Solution): Solution {
  if (solution.findings.every(({ depth }) => depth === null)) return solution;
  return { ...solution, findings: solution.findings.map((finding) => ({ ...finding, depth: null })) };
}
