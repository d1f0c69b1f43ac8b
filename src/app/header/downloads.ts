/** Files that the page hands out. Nothing is sent anywhere. */
import type { Plan } from '../../model/plan/schema.ts';

export function downloadPlan(plan: Plan): void {
  download(`${JSON.stringify(plan, null, 2)}\n`, `${fileName(plan.title)}.json`, 'application/json');
}

/** What is kept and cannot be read, as it stands there. */
export function downloadText(text: string, title: string | undefined): void {
  download(text, `${fileName(title)}.txt`, 'text/plain');
}

/** The title without what a file system may refuse. */
export function fileName(title: string | undefined): string {
  const plain = (title ?? '')
    .toLowerCase()
    .replaceAll(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replaceAll(/^-|-$/g, '');
  return plain === '' ? 'well' : plain;
}

export function download(content: string | Uint8Array<ArrayBuffer>, name: string, type: string): void {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has the file's content once the click is over; a little later is soon enough to let go.
  setTimeout(() => URL.revokeObjectURL(address), 1000);
}
