/** Colour arithmetic for the tests of inks: contrast, colour blindness, colour distance. */
export type Triple = readonly [number, number, number];

export const VISIONS = ['normal', 'protan', 'deutan', 'tritan'] as const;
export type Vision = (typeof VISIONS)[number];

/** Linear light of sRGB's red, green, blue, 0 to 1. IEC 61966-2-1. */
export function lineariseds(short: string): Triple {
  const hex = short.length === 4 ? `#${[...short.slice(1)].map((digit) => digit + digit).join('')}` : short;
  const channel = (at: number) => {
    const v = parseInt(hex.slice(at, at + 2), 16) / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/** W3C, WCAG 2.2, definition of contrast ratio. */
export function contrast(a: string, b: string): number {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
}

function luminance(hex: string): number {
  const [r, g, b] = lineariseds(hex);
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/**
 * What someone sees who lacks one kind of cone, as linear light.
 * Source  Machado, Oliveira & Fernandes (2009), IEEE Transactions on Visualization and Computer Graphics 15, full severity;
 *         coefficients from memory
 */
export function seenBy(vision: Vision, hex: string): Triple {
  const [r, g, b] = lineariseds(hex);
  const rows = MATRICES[vision];
  return rows.map(([a, c, d]) => Math.min(1, Math.max(0, a * r + c * g + d * b))) as unknown as Triple;
}

const MATRICES: Readonly<Record<Vision, readonly Triple[]>> = {
  normal: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protan: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deutan: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritan: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

/** CIE L*a*b* under D65 from linear sRGB. */
export function labOf([r, g, b]: Triple): Triple {
  const x = (0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047;
  const y = 0.2126729 * r + 0.7151522 * g + 0.072175 * b;
  const z = (0.0193339 * r + 0.119192 * g + 0.9503041 * b) / 1.08883;
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  return [116 * f(y) - 16, 500 * (f(x) - f(y)), 200 * (f(y) - f(z))];
}

/** CIEDE2000. Source  Sharma, Wu & Dalal (2005), Color Research & Application 30, equations 2 to 22 */
export function deltaE2000([l1, a1, b1]: Triple, [l2, a2, b2]: Triple): number {
  const rad = Math.PI / 180;
  const meanC = (Math.hypot(a1, b1) + Math.hypot(a2, b2)) / 2;
  const g = 0.5 * (1 - Math.sqrt(meanC ** 7 / (meanC ** 7 + 25 ** 7)));
  const [ap1, ap2] = [a1 * (1 + g), a2 * (1 + g)];
  const [c1, c2] = [Math.hypot(ap1, b1), Math.hypot(ap2, b2)];
  const hue = (a: number, b: number) => (a === 0 && b === 0 ? 0 : (Math.atan2(b, a) / rad + 360) % 360);
  const [h1, h2] = [hue(ap1, b1), hue(ap2, b2)];
  const turn = h2 - h1;
  const dh = c1 * c2 === 0 ? 0 : Math.abs(turn) <= 180 ? turn : turn > 180 ? turn - 360 : turn + 360;
  const dH = 2 * Math.sqrt(c1 * c2) * Math.sin((dh / 2) * rad);
  const [l, c] = [(l1 + l2) / 2, (c1 + c2) / 2];
  const sum = h1 + h2;
  const h = c1 * c2 === 0 ? sum : Math.abs(turn) <= 180 ? sum / 2 : sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
  const t =
    1 -
    0.17 * Math.cos((h - 30) * rad) +
    0.24 * Math.cos(2 * h * rad) +
    0.32 * Math.cos((3 * h + 6) * rad) -
    0.2 * Math.cos((4 * h - 63) * rad);
  const sl = 1 + (0.015 * (l - 50) ** 2) / Math.sqrt(20 + (l - 50) ** 2);
  const sc = 1 + 0.045 * c;
  const sh = 1 + 0.015 * c * t;
  const rt = -2 * Math.sqrt(c ** 7 / (c ** 7 + 25 ** 7)) * Math.sin(60 * Math.exp(-(((h - 275) / 25) ** 2)) * rad);
  const [x, y, z] = [(l2 - l1) / sl, (c2 - c1) / sc, dH / sh];
  return Math.sqrt(x * x + y * y + z * z + rt * y * z);
}

/** A tone of three digits in six. */
export const sixDigits = (hex: string): string =>
  hex.length === 4 ? `#${[...hex.slice(1)].map((digit) => digit + digit).join('')}` : hex;
