/** Layers, zones of water, and grout. */
import type { Span } from '../spans.ts';
import type { Book } from './book.ts';
import { tidied } from './tidied.ts';

export function layers(book: Book): void {
  const rows = book.spans('layer').filter(({ material, to }) => /[a-z]{3}/.test(material) && to !== null);
  if (rows.length < 2) return;
  const inside = (row: Span): boolean =>
    rows.some(
      (other) =>
        other !== row &&
        book.write.metres(other.from) <= book.write.metres(row.from) &&
        book.write.metres(row.to) <= book.write.metres(other.to),
    );
  const nested = rows.filter(inside);
  const sorted = rows
    .filter((row) => !nested.includes(row))
    .sort((a, b) => book.write.metres(a.to) - book.write.metres(b.to));
  const gap = sorted.some((row, i) => {
    const above = sorted[i - 1]?.to ?? null;
    const from = book.write.metres(row.from);
    return Math.abs(from - (above === null ? 0 : book.write.metres(above))) > 0.31;
  });
  book.read(
    'well.layers',
    sorted.map(({ material, to }) => ({ material, bottom: to === null ? 'unknown' : book.write.length(to) })),
    sorted.flatMap(({ piece, wrapped = [] }) => [piece, ...wrapped]),
    { doubt: gap || nested.length > 0 ? { kind: 'gap' } : null },
  );
}

export function zones(book: Book): void {
  const rows = book.spans('zone').filter(({ from, to }) => from !== null || to !== null);
  const flows = rows.map(({ flow }) => (flow === null ? null : book.write.flowSi(flow)));
  const total = flows.every((flow) => flow !== null) ? flows.reduce((sum, flow) => sum + flow, 0) : 0;
  const single = book.facts.marked.flatMap(({ text, quantities }, piece) => {
    if (rows.some((row) => row.piece === piece) || /first|static|recommend/.test(text)) return [];
    if (!/water[- ]bearing|fracture|main (?:water|inflow)|water (?:zone|entry|enters|comes in|found at)/.test(text))
      return [];
    return [...text.matchAll(/«L(\d+)»(?:[^«»]{0,3}«([PF])(\d+)»)?/g)].flatMap(([, index, kind, beside]) => {
      const depth = quantities[Number(index)];
      const other = beside === undefined ? undefined : quantities[Number(beside)];
      if (depth === undefined) return [];
      return [{ depth, piece, share: kind === 'P' ? other : undefined, flow: kind === 'F' ? other : undefined }];
    });
  });
  if (rows.length === 0 && single.length === 0) return;
  const list = [
    ...rows.flatMap(({ from, to }, i) => {
      const depth = from ?? to;
      if (depth === null) return [];
      const share = total > 0 ? `${Math.round((100 * (flows[i] ?? 0)) / total)} %` : undefined;
      return [tidied({ depth: book.write.length(depth), share })];
    }),
    ...single.map(({ depth, share }) =>
      tidied({ depth: book.write.length(depth), share: share === undefined ? undefined : `${share.value} %` }),
    ),
  ];
  book.read(
    'well.inflows',
    list,
    [...rows, ...single].map(({ piece }) => piece),
    { note: total > 0 ? 'shares' : null },
  );
}

export function grout(book: Book): void {
  const [span] = book.spans('grout');
  const [said] = book.of('grout');
  if (span?.to != null) book.read('well.grout', [{ bottom: book.write.length(span.to) }], [span.piece]);
  else if (said !== undefined && said.quantity.kind !== 'S')
    book.read('well.grout', [{ bottom: book.write.length(said.to ?? said.quantity) }], [said.piece]);
}
