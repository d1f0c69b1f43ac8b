/** How the sheet looks on paper and on a screen: black on white, no page broken inside a step or a row. */
import type { Paper } from '../draw/paper.ts';

/** @param foot  printed at the foot of every page: whose well, and when */
export function styleOf({ width, height }: Paper, foot: string): string {
  const size = `${width}mm ${height}mm`;
  return `
@page { size: ${size}; margin: 12.7mm 12.7mm 15mm;
  @bottom-left { content: ${cssText(foot)}; font: 8pt sans-serif; }
  @bottom-right { content: counter(page) " / " counter(pages); font: 8pt sans-serif; } }
@page drawing { size: ${size}; margin: 0; @bottom-left { content: none; } @bottom-right { content: none; } }
* { box-sizing: border-box; }
html { font: 9pt/1.3 "Barlow", "Helvetica Neue", Arial, sans-serif; color: #000; background: #fff; }
body { margin: 0; }
h1 { font-size: 16pt; margin: 0 0 1mm; }
h2 { font-size: 12pt; margin: 5mm 0 1.5mm; border-bottom: 0.4mm solid #000; break-after: avoid; }
h3 { font-size: 10pt; margin: 2.5mm 0 0.8mm; break-after: avoid; }
p, ul, ol { margin: 0 0 1mm; }
ul, ol { padding-left: 4.5mm; }
table { border-collapse: collapse; width: 100%; margin-bottom: 2.5mm; }
th, td { border: 0.2mm solid #777; padding: 0.5mm 1.2mm; text-align: left; vertical-align: top; }
th { background: #eee; }
tr, .step, .finding, .keep { break-inside: avoid; }
thead { display: table-header-group; }
.parts th:nth-child(1) { width: 7mm; } .parts th:nth-child(2) { width: 13mm; } .parts th:nth-child(3) { width: 36mm; }
.parts th:nth-child(4) { width: 37mm; } .parts th:nth-child(5) { width: 30mm; }
.parts td:nth-child(2) { text-align: right; }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; border: 0.35mm solid #000; vertical-align: -0.5mm; margin-right: 1.5mm; }
.drawing { page: drawing; break-after: page; }
.drawing svg { display: block; width: ${width}mm; height: ${height}mm; }
.blank { display: grid; grid-template-columns: repeat(2, 1fr); gap: 2mm 8mm; margin: 2mm 0 3mm; }
.blank span { border-bottom: 0.3mm solid #000; padding-top: 4mm; }
.facts { columns: 2; column-gap: 6mm; }
.step { border: 0.2mm solid #777; padding: 1mm 2mm; margin-bottom: 1.5mm; }
.step h3 { margin-top: 0; }
.caution { border-left: 1.2mm solid #000; padding-left: 1.5mm; font-weight: 600; }
.note { color: #333; }
.two { columns: 2; column-gap: 6mm; }
.phase { font-size: 11pt; margin: 1mm 0 1.5mm; padding: 0.5mm 1.5mm; background: #ddd; }
.joints { font-size: 8pt; }
figure.code { float: right; width: 34mm; margin: 0 0 2mm 5mm; text-align: center; font-size: 8pt; }
.code svg { display: block; width: 34mm; height: 34mm; }
.short { break-inside: avoid; font-size: 8.5pt; }
.short h1 { font-size: 13pt; }
.short > svg { display: block; width: 100%; height: auto; }
.short .blank { margin: 0 0 2mm; grid-template-columns: repeat(4, 1fr); }
.short .facts { columns: 3; }
.short table { margin-bottom: 1mm; }
.short .facts tr { break-inside: avoid; }
@media screen {
  html { font-size: 11pt; }
  body { max-width: ${width}mm; margin: 8mm auto; padding: 0 4mm; }
  .drawing svg { width: 100%; height: auto; border: 0.3mm solid #999; }
  table { display: block; overflow-x: auto; }
}
@media screen and (max-width: 640px) { .two, .facts { columns: 1; } .blank { grid-template-columns: 1fr; } }
`;
}

/** As a string of CSS inside a style element: no quote ends it, and no tag can begin in it. */
function cssText(words: string): string {
  const plain = words.replace(/[\\"<>\p{Cc}]/gu, (sign) => `\\${(sign.codePointAt(0) ?? 32).toString(16)} `);
  return `"${plain}"`;
}
