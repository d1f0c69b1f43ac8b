/** The name of a pipe size, read down to its number, so that "1-1/4 in", "1 1/4 in", "1¼\"" and "1.25 in" are one size. */
export interface NominalSize {
  readonly system: 'inch' | 'DN' | 'mm';
  /** 1.25 for "1-1/4 in", 32 for "DN 32", 40 for "40 mm". A name, not a dimension. */
  readonly number: number;
}

/** Diameter nominal of the inch sizes, as ISO 6708 and ASME B36.10M pair them. */
const INCH_OF_DN: Readonly<Record<number, number>> = {
  20: 0.75,
  25: 1,
  32: 1.25,
  40: 1.5,
  50: 2,
  65: 2.5,
  80: 3,
  100: 4,
  125: 5,
  150: 6,
  200: 8,
  250: 10,
  300: 12,
  400: 16,
};

const FRACTIONS: Readonly<Record<string, string>> = { '¼': ' 1/4', '½': ' 1/2', '¾': ' 3/4' };

/** Null when the text names no size. A bare number is taken as inches; millimetres name other pipes than inches do. */
export function readNominalSize(text: string): NominalSize | null {
  const plain = text
    .replace(/[¼½¾]/g, (mark) => FRACTIONS[mark] ?? '')
    .replace(',', '.')
    .toLowerCase()
    .trim();
  const dn = /^dn\s*(\d+)$/.exec(plain);
  if (dn) return { system: 'DN', number: Number(dn[1]) };
  const mm = /^(?:d\s*)?(\d+(?:\.\d+)?)\s*mm\.?$/.exec(plain);
  if (mm) return Number(mm[1]) > 0 ? { system: 'mm', number: Number(mm[1]) } : null;
  const inch =
    /^(?:nps\s*)?(?:(\d+(?:\.\d+)?)(?:[-\s]+(\d+)\/(\d+))?|(\d+)\/(\d+))\s*-?\s*(?:in|inch|inches|"|″|'')?\.?$/.exec(
      plain,
    );
  if (!inch) return null;
  const [, whole, above, below, top, bottom] = inch;
  const fraction = (a: string | undefined, b: string | undefined) => (a && b ? Number(a) / Number(b) : 0);
  const number = Number(whole ?? 0) + fraction(above, below) + fraction(top, bottom);
  return number > 0 && number < Infinity ? { system: 'inch', number } : null;
}

/** The inch number of a size name, or null. DN names count only where the pipe's standard has them. */
export function inchNumber(text: string, hasDnNames: boolean): number | null {
  const size = readNominalSize(text);
  if (size === null) return null;
  if (size.system === 'inch') return size.number;
  if (size.system === 'mm') return null;
  return hasDnNames ? (INCH_OF_DN[size.number] ?? null) : null;
}

/** "1-1/4 in" of 1.25: the way the trade writes it. */
export function writeInchName(number: number): string {
  const whole = Math.floor(number);
  const eighths = Math.round((number - whole) * 8);
  if (eighths === 0) return `${whole} in`;
  const fraction = eighths % 4 === 0 ? '1/2' : eighths % 2 === 0 ? `${eighths / 2}/4` : `${eighths}/8`;
  return whole === 0 ? `${fraction} in` : `${whole}-${fraction} in`;
}

/** The millimetre number of a size name ("40 mm"), which is an outside diameter; null for other names. */
export function millimetreNumber(text: string): number | null {
  const size = readNominalSize(text);
  return size?.system === 'mm' ? size.number : null;
}

/** "DN 32" of the pipe that inch sizes call 1-1/4 in; the inch name where it has no other. */
export function writeDnName(inchNumber: number): string {
  const [dn] = Object.entries(INCH_OF_DN).find(([, inch]) => inch === inchNumber) ?? [];
  return dn === undefined ? writeInchName(inchNumber) : `DN ${dn}`;
}
