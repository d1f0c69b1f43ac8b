/** "Which pump" and "Which tank" in words: one line why, and what stands in each cell. */
import type { Ask, InTheWay, PumpRow, PumpTable, Told } from '../model/choose/choosePump.ts';
import type { TankRow } from '../model/choose/chooseTank.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { decimals } from '../model/units.ts';
import { sayFinding } from './sayJudgement.ts';
import { sayWhyLeft } from './sayPlacement.ts';
import { percentUnder, type choose } from './en/choose.ts';
import type { Words } from './words.ts';

/** With the words of choosing, which a page fetches when somebody chooses. */
export type ChoiceWords = Words & { readonly choose: typeof choose };

/** Why a pump or a tank does the job or does not: one sentence. */
export function sayWhyChoice(
  row: Pick<PumpRow, 'does' | 'why'> | Pick<TankRow, 'does' | 'why'>,
  words: ChoiceWords,
  show: Show,
): string {
  const { does, why } = row;
  if (why.variant === 'finding') return sayFinding(why.numbers.finding, words, show).message;
  const { pumps, tanks } = words.choose;
  // Also of what would work, and depends on something that nobody said.
  const said = { ...pumps.whys, ...tanks.whys, ...(does !== 'no' && pumps.works) } as Readonly<
    Record<string, (numbers: object, show: Show) => string>
  >;
  return said[why.variant]?.(why.numbers, show) ?? '';
}

/** What has to be known of a pump before it is bought: one sentence. */
export function sayAsk({ variant, numbers }: Ask, words: ChoiceWords, show: Show): string {
  return sayIn(words.choose.pumps.asks, variant, numbers, show);
}

/** What its owner has to know of it besides: one sentence. */
export function sayTold({ variant, numbers }: Told, words: ChoiceWords, show: Show): string {
  return sayIn(words.choose.pumps.told, variant, numbers, show);
}

function sayIn(sentences: object, variant: string, numbers: object, show: Show): string {
  const said = sentences as Readonly<Record<string, (numbers: object, show: Show) => string>>;
  return said[variant]?.(numbers, show) ?? '';
}

/** What alone keeps every pump from doing the job: one sentence. */
export function sayInTheWay({ variant, numbers }: InTheWay, words: ChoiceWords, show: Show): string {
  const sentence = sayIn(words.choose.pumps.inTheWay, variant, numbers, show);
  if (variant === 'noDepth') return `${sayWhyLeft(numbers.why, words, show)} ${sentence}`;
  return variant === 'doesNotPass' ? `${sayFinding(numbers.finding, words, show).message} ${sentence}` : sentence;
}

/** The cells of a pump's row, by column; a dash where a figure is not known or has no meaning. */
export interface SaidPump {
  readonly name: string;
  readonly does: string;
  readonly why: string;
  readonly flow: string;
  readonly share: string;
  readonly spare: string;
  readonly lifts: string;
  readonly left: string;
  readonly range: string;
  readonly depth: string;
  readonly pipe: string;
  readonly wire: string;
  readonly weight: string;
  readonly tank: string;
}

export function sayPumpRow(row: PumpRow, words: ChoiceWords, show: Show): SaidPump {
  const { pumps } = words.choose;
  const { flow, share, spare, lifts, left, range } = row.figures;
  const { facts, values } = row.solution;
  const why = sayWhyChoice(row, words, show);
  const guard = guardOf(row, words, show);
  const load = values.hangLoadAtRest;
  const also = [
    ...row.also.map((each) => sayFinding(each, words, show).message),
    ...(row.needsRig && load !== null ? [pumps.needsRig(show.hook(load))] : []),
  ];
  const asks = row.asks.map((ask) => sayAsk(ask, words, show));
  const told = row.told.map((each) => sayTold(each, words, show));
  const { voltage, wires } = facts.pump;
  const supply = row.supplyFrom === null ? [] : [pumps.otherSupply(row.supplyFrom, { voltage, wires }, show)];
  const moved = row.movedFrom === null ? [] : [pumps.moved(show.depth(row.movedFrom), show.depth(facts.pump.setting))];
  return {
    name: pumps.name(row.name),
    does: pumps.does[row.does],
    why:
      row.does === 'no'
        ? why
        : [...asks, why, ...told, ...supply, ...moved, ...(guard === null ? [] : [guard.sentence]), ...also].join(' '),
    flow: orDash(flow, show.flow),
    share: orDash(share, percentUnder),
    spare: orDash(spare, show.pressure),
    lifts: orDash(lifts, (depth) => (depth > 0 ? show.depth(depth) : DASH)),
    left: orDash(left, show.depth),
    range: orDash(range, (each) => `${decimals(each, 2)} ×`),
    depth: `${show.depth(facts.pump.setting)}${guard === null ? '' : `, ${guard.cell}`}`,
    pipe: pipeText(row, words, show),
    wire: wireText(row.solution, words, show),
    weight: orDash(load, (each) => (row.needsRig ? pumps.rig(show.hook(each)) : show.hook(each))),
    tank: orDash(row.tank, show.volume),
  };
}

const DASH = '–';

function orDash<T>(value: T | null, say: (value: T) => string): string {
  return value === null ? DASH : say(value);
}

/** Dry-run protection that choosing the row would plan: what it does may rest on it. */
function guardOf({ parts, solution }: PumpRow, words: ChoiceWords, show: Show) {
  if (!parts.depth.some(({ path, to }) => path === 'pump.lowLevelCutOff' && to !== undefined)) return null;
  const { pumps } = words.choose;
  const { lowLevelCutOff } = solution.facts.pump;
  if (typeof lowLevelCutOff === 'number') {
    const depth = show.depth(lowLevelCutOff);
    return { cell: pumps.probe(depth), sentence: pumps.withProbe(depth) };
  }
  return lowLevelCutOff === true ? { cell: pumps.protection, sentence: pumps.withProtection } : null;
}

/** "PE 1 in, 200 psi", "PVC 1-1/4 in, schedule 80". */
function pipeText({ asks, solution }: PumpRow, words: ChoiceWords, show: Show): string {
  const { material, nominalSize, rating, wallClass } = solution.facts.dropPipe;
  const open = asks.find(({ variant }) => variant === 'pipeRating');
  const printed = material === 'PE' && rating !== null ? show.pressure(rating) : wallClass;
  const strength =
    open?.variant === 'pipeRating' ? words.choose.pumps.toBear(show.pressure(open.numbers.need)) : printed;
  return `${material} ${nominalSize}${strength === null ? '' : `, ${strength}`}`;
}

/** "10 AWG, 230 V, 3-wire, control box"; a drive brings its own motor and box. */
function wireText({ plan, facts, assumed }: Solution, words: ChoiceWords, show: Show): string {
  const { phase, wires, voltage, power } = facts.pump;
  if (power === null) return words.choose.pumps.powerUnsaid;
  const size = plan.wire?.size ?? assumed.find(({ path }) => path === 'wire.size')?.value ?? DASH;
  if (facts.house.control === 'variable speed') return `${size}, ${show.voltage(voltage)}, ${words.choose.pumps.drive}`;
  const kind = phase === 3 ? '3-phase' : `${wires}-wire`;
  const box = phase === 1 && wires === 3 ? `, ${words.choose.pumps.controlBox}` : '';
  return `${size}, ${show.voltage(voltage)}, ${kind}${box}`;
}

/** Over a table: that no pump has all that is asked, what stands in the way of all, and sand; null where none is. */
export function sayOverTable(
  {
    rows,
    inTheWay,
    sand,
    warm,
    watering,
  }: Pick<Extract<PumpTable, { kind: 'rows' }>, 'rows' | 'inTheWay' | 'sand' | 'warm' | 'watering'>,
  words: ChoiceWords,
  show: Show,
): readonly string[] | null {
  const { none, noneWithRoom, sand: withSand, warm: inWarm, watering: besides } = words.choose.pumps;
  const does = (wanted: PumpRow['does']) => rows.some((row) => row.does === wanted);
  const told = does('yes') || does('depends') ? [] : [does('works') ? noneWithRoom : none];
  const said = [
    ...told,
    ...inTheWay.map((each) => sayInTheWay(each, words, show)),
    ...(watering === null ? [] : [besides(show.flow(watering))]),
    ...(sand ? [withSand] : []),
    ...(warm === null ? [] : [inWarm(show.temperature(warm.water), show.temperature(warm.most))]),
  ];
  return said.length === 0 ? null : said;
}

export interface SaidTank {
  readonly name: string;
  readonly does: string;
  readonly why: string;
  readonly water: string;
  readonly run: string;
  readonly hour: string;
  readonly day: string;
}

export function sayTankRow(row: TankRow, words: ChoiceWords, show: Show): SaidTank {
  return {
    name: row.key,
    does: words.choose.pumps.does[row.does],
    why: sayWhyChoice(row, words, show),
    water: show.volume(row.water),
    run: show.time(row.run),
    hour: Number.isFinite(row.startsAnHour) ? decimals(row.startsAnHour, 1) : DASH,
    day: orDash(row.startsADay, (count) => decimals(count, 0)),
  };
}
