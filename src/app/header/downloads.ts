/** Files that the page hands out. Nothing is sent anywhere. */
import { draw, toSvg } from '../../draw/index.ts';
import type { Plan } from '../../model/plan/schema.ts';
import type { Solution } from '../../model/solution.ts';

/** px of an exported sheet: section and both details side by side. */
const SHEET = { width: 1000, height: 920 } as const;

export function downloadPlan(plan: Plan): void {
  download(`${JSON.stringify(plan, null, 2)}\n`, `${fileName(plan.title)}.json`, 'application/json');
}

export function downloadDrawing(solution: Solution, units: 'us' | 'metric'): void {
  const scene = draw(solution, { sheet: 'all', ...SHEET, units, theme: 'light', caption: true });
  download(toSvg(scene), `${fileName(solution.facts.title)}.svg`, 'image/svg+xml');
}

/** The title without what a file system may refuse. */
export function fileName(title: string | undefined): string {
  const plain = (title ?? '')
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  return plain === '' ? 'well' : plain;
}

function download(text: string, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has the file's content once the click is over; a little later is soon enough to let go.
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
