/** What an insulation reading says: the one that tells of shock and of a burnt motor before they come. */
import type { Volts } from '../si.ts';

export interface Insulation {
  readonly megohms: number;
  /** Under it nothing is run. */
  readonly least: number;
  readonly low: boolean;
}

/** Megohms at no volts, and a megohm more for each kilovolt: IEEE Std 43-1974, minimum insulation resistance, kV + 1. */
const LEAST = 1;
const VOLTS_A_MEGOHM: Volts = 1000;

/**
 * @param typed    "200", "> 200", "0.2 megohm", "2,5 MΩ"
 * @param voltage  of the motor
 * @returns        null where it is no number of megohms
 */
export function insulation(typed: string | undefined, voltage: Volts): Insulation | null {
  const number =
    /^\s*(?:[<>≥≤]=?\s*|over\s+|under\s+)?(\d+(?:[.,]\d+)?)\s*(?:m(?:eg)?\s*(?:ohms?|Ω|Ω)?|megs?)?\s*$/iu.exec(
      typed ?? '',
    )?.[1];
  if (number === undefined) return null;
  const megohms = Number(number.replace(',', '.'));
  const least = LEAST + voltage / VOLTS_A_MEGOHM;
  return { megohms, least, low: megohms < least };
}
