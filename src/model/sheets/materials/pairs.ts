/** Every two metals of a plan, how they are joined, and whether they go together. */
import type { Context } from '../../explain/context.ts';
import {
  anodeOf,
  coupleClass,
  galvanicDifference,
  pairVerdict,
  potential,
  waterClass,
} from '../../formulas/corrosion.ts';
import type { AreaSituation, PairVerdict, WaterClass } from '../../formulas/corrosion.ts';
import { metalOf } from '../../tables/metals.ts';
import type { Metal } from '../../tables/metals.ts';
import type { SheetTable } from '../sheet.ts';
import { columns, row } from '../table.ts';
import { isBarbed } from '../../tables/pipeMaterials.ts';
import { isConducting } from '../../tables/casings.ts';

/** Wetted area, roughly: what counts is which of two is the smaller. */
type Size = 1 | 2 | 3;

interface MetalPart {
  readonly name: string;
  readonly metal: Metal;
  readonly size: Size;
  /** Joined to motor and casing by the ground wire or by metal all the way. */
  readonly wired: boolean;
  /** Names of parts it touches. */
  readonly touches: readonly string[];
}

export interface MetalCouple {
  readonly first: MetalPart;
  readonly second: MetalPart;
  readonly joined: 'touching' | 'bonded by the ground wire' | 'in the same water';
  readonly areas: AreaSituation;
  readonly verdict: PairVerdict;
}

function partsOf({ facts }: Context): readonly MetalPart[] {
  const { string, dropPipe, well } = facts;
  const parts: MetalPart[] = [
    { name: 'pump and motor', metal: '304 stainless steel', size: 2, wired: true, touches: [] },
  ];
  const pipe = metalOf(dropPipe.material);
  const fittings = metalOf(string.fittings);
  if (fittings !== null)
    parts.push({ name: 'fittings', metal: fittings, size: 1, wired: true, touches: ['pump and motor', 'drop pipe'] });
  if (pipe !== null)
    parts.push({
      name: 'drop pipe',
      metal: pipe,
      size: 3,
      wired: true,
      touches: fittings === null ? [] : ['fittings'],
    });
  if (string.clampScrew === 'carbon steel')
    parts.push({ name: 'clamp screws', metal: 'carbon steel', size: 1, wired: false, touches: ['clamps'] });
  if (isBarbed(dropPipe))
    parts.push({
      name: 'clamps',
      metal: '304 stainless steel',
      size: 2,
      wired: false,
      touches: string.clampScrew === 'carbon steel' ? ['clamp screws'] : [],
    });
  const casing = well.casings.find(isConducting);
  const metal = casing === undefined ? null : metalOf(casing.material);
  if (metal !== null) parts.push({ name: 'casing', metal, size: 3, wired: true, touches: [] });
  return parts;
}

function areasOf(first: MetalPart, second: MetalPart): AreaSituation {
  const anode = anodeOf(first.metal, second.metal);
  if (anode === null || first.size === second.size) return 'similar';
  const active = anode === first.metal ? first : second;
  const noble = active === first ? second : first;
  return active.size < noble.size ? 'small active part' : 'small noble part';
}

export function metalCouples(context: Context): readonly MetalCouple[] {
  const parts = partsOf(context);
  const water = waterOf(context);
  const couples: MetalCouple[] = [];
  parts.forEach((first, i) => {
    for (const second of parts.slice(i + 1)) {
      const touching = first.touches.includes(second.name) || second.touches.includes(first.name);
      const joined = touching
        ? 'touching'
        : first.wired && second.wired
          ? 'bonded by the ground wire'
          : 'in the same water';
      const areas = joined === 'in the same water' ? 'apart' : areasOf(first, second);
      couples.push({
        first,
        second,
        joined,
        areas,
        verdict: pairVerdict({ first: first.metal, second: second.metal, areas, water }),
      });
    }
  });
  return couples;
}

export function waterOf({ facts }: Context): WaterClass {
  return waterClass({ conductivity: facts.water.conductivity, acidity: facts.water.acidity });
}

const AREA_NOTE: Readonly<Record<AreaSituation, string>> = {
  similar: 'much alike in size',
  'small noble part': 'the noble part is small: slow',
  'small active part': 'the part that gives way is small: fast',
  'large noble field': 'a large noble field: slow, but for years',
  apart: 'nothing joins them',
};

const VERDICT: Readonly<Record<PairVerdict, string>> = { ok: 'goes', caution: 'take care', avoid: 'avoid' };

export function metalTable(context: Context): SheetTable {
  const unlike = metalCouples(context).filter(({ first, second }) => first.metal !== second.metal);
  const signed = (volts: number) => ({ value: volts, text: `${volts < 0 ? '−' : ''}${Math.abs(volts).toFixed(2)} V` });
  return {
    key: 'metals',
    title: 'Metals that touch, are bonded, or stand in the same water',
    columns: columns(
      ['first', 'One'],
      ['firstVolts', 'Potential'],
      ['second', 'Other'],
      ['secondVolts', 'Potential'],
      ['joined', 'Joined'],
      ['difference', 'Difference'],
      ['class', 'Class'],
      ['gives', 'Gives way'],
      ['areas', 'Areas'],
      ['verdict', 'Verdict'],
    ),
    rows: unlike.map(({ first, second, joined, areas, verdict }) => {
      const anode = anodeOf(first.metal, second.metal);
      return row(
        verdict === 'avoid' ? 'does not do' : null,
        `${first.name}: ${first.metal}`,
        signed(potential(first.metal)),
        `${second.name}: ${second.metal}`,
        signed(potential(second.metal)),
        joined,
        signed(galvanicDifference(first.metal, second.metal)),
        coupleClass(first.metal, second.metal),
        anode ?? 'neither',
        AREA_NOTE[areas],
        VERDICT[verdict],
      );
    }),
    source:
      'galvanic series in flowing sea water, of the kind ASTM G82 describes; classes 0.15 and 0.25 V: common practice; area rule MIL-STD-1250A, 5.6',
    note: `${unlike.length === 0 ? 'This plan has no dissimilar metals. ' : ''}The series ranks metals; it gives no rate, and fresh water is far milder. Pump and motor are taken as stainless steel. The ground wire joins motor, metal casing and house earth, whatever pipe hangs between.`,
  };
}
