/**
 * The coldest of about 100 winters at weather stations, which is all that an estimate of the frost line asks of one. What it
 * rests on stands with the rest of each station in `freezingStations.ts`.
 */
export interface ColdestWinter {
  readonly id: string;
  readonly name: string;
  /** State or province. */
  readonly region: string;
  readonly meanAnnualFahrenheit: number;
  /** °F-days below 32 °F. */
  readonly coldHundredIndex: number;
  readonly coldHundredSeasonDays: number;
}

/** Id, mean °F, index and days of the winter; the name where the id does not spell it. */
type Row = readonly [id: string, mean: number, index: number, days: number, name?: string];

const ROWS: readonly Row[] = [
  ['US-MN-Crookston', 39.9, 3820, 172],
  ['US-MN-Moorhead', 41.6, 3430, 166],
  ['US-MN-Warroad', 37.3, 4330, 182],
  ['US-MN-GrandRapids', 39.5, 3560, 174],
  ['US-MN-InternationalFalls', 37.5, 4070, 179],
  ['US-MN-Duluth', 39, 3430, 177],
  ['US-MN-GrandMarais', 39.3, 2810, 176],
  ['US-MN-Hibbing', 38, 3790, 179],
  ['US-MN-Alexandria', 41.7, 3300, 166],
  ['US-MN-Morris', 42.3, 3200, 164],
  ['US-MN-StCloud', 41.9, 3170, 164, 'St. Cloud'],
  ['US-MN-Willmar', 43, 3100, 160],
  ['US-MN-Aitkin', 39.9, 3450, 172],
  ['US-MN-Minneapolis-StPaulAP', 45.3, 2550, 153],
  ['US-MN-Pipestone', 43.5, 2870, 160],
  ['US-MN-RedwoodFalls', 45.7, 2570, 150],
  ['US-SD-SiouxFalls', 45.3, 2520, 154],
  ['US-MN-Worthington', 43.4, 2880, 161],
  ['US-MN-Faribault', 43.9, 2790, 157],
  ['US-MN-Rochester', 43.6, 2760, 157],
  ['US-WI-LaCrosse', 47.1, 2150, 145],
  ['US-MN-Winona', 45.5, 2480, 148],
  ['US-ME-AcadiaNP', 45.4, 1790, 150],
  ['US-ME-Allagash', 36, 4020, 191],
  ['US-ME-AugustaAP', 45.9, 1880, 146],
  ['US-ME-BangorIntlAP', 44.8, 2080, 151],
  ['US-ME-Barnard', 41.6, 2700, 168],
  ['US-ME-Belfast', 45.3, 1800, 148],
  ['US-MN-AgassizRefuge', 38.9, 3950, 171],
  ['US-MN-AlbertLea3SE', 44.3, 2780, 152, 'Albert Lea 3 SE'],
  ['US-MN-MadisonSewagePlant', 45.2, 2620, 152],
  ['US-SD-Stephan2NW', 45.1, 2570, 153, 'Stephan 2 NW'],
  ['US-MT-Creston', 43.2, 1800, 164],
  ['US-CO-Waterdale', 48.4, 1090, 134],
  ['US-CO-Rush1N', 44.8, 1690, 161, 'Rush 1N'],
  ['US-CO-Lindon5WNW', 48.3, 1290, 141, 'Lindon 5 WNW'],
  ['US-CO-Gateway', 54.2, 630, 94],
  ['US-CO-Westcliffe', 42.4, 1900, 170],
  ['US-UT-Milford', 50.2, 1000, 120],
  ['US-UT-FortDuchesne', 46.6, 2020, 137],
  ['US-UT-Escalante', 50.4, 880, 116],
  ['US-ID-KetchumRS', 39.5, 2600, 180],
  ['US-IL-Urbana', 51.7, 1210, 118],
  ['US-NY-Buffalo', 49, 1310, 135],
  ['US-IL-KMDW', 51.5, 1220, 118, 'Chicago Midway'],
  ['US-IN-KIND', 53.2, 880, 104, 'Indianapolis'],
  ['US-PA-KPHL', 56, 420, 86, 'Philadelphia'],
  ['US-NY-KNYC', 55, 450, 89, 'New York Central Park'],
  ['US-WA-KSEA', 52.7, 0, 0, 'Seattle-Tacoma'],
  ['US-NC-KCLT', 59.9, 0, 10, 'Charlotte'],
  ['CA-MB-BrandonA', 36.1, 4400, 185],
  ['CA-AB-EdmontonUofA', 38.4, 3360, 182, 'EdmontonUofA, University of Alberta'],
  ['CA-AB-Redwater', 34.9, 4210, 192],
  ['CA-AB-Horburg', 39.2, 2590, 182],
  ['CA-NL-StJohns', 40.5, 2030, 180, "St. John's"],
  ['CA-PE-Charlottetown', 41.5, 2500, 175],
  ['CA-NS-Halifax', 43.3, 1990, 165],
  ['CA-NB-Fredericton', 41.5, 2770, 176],
  ['CA-QC-Montreal', 42.4, 2800, 172],
  ['CA-ON-Ottawa', 42.8, 2820, 171],
  ['CA-ON-ThunderBay', 36.5, 4050, 197],
  ['CA-ON-Toronto', 45.5, 1900, 156],
  ['CA-MB-Winnipeg', 36.7, 4530, 194],
  ['CA-SK-Regina', 37, 4220, 194],
  ['CA-SK-Saskatoon', 36, 4450, 197],
  ['CA-AB-Calgary', 39.4, 2740, 186],
  ['CA-AB-Edmonton', 36.3, 3780, 199],
  ['CA-BC-Vancouver', 50.2, 130, 75],
  ['CA-BC-PrinceGeorge', 39.2, 2770, 187],
  ['CA-YT-Whitehorse', 30.7, 5190, 221],
  ['US-VT-Burlington', 46, 2000, 156],
  ['US-NY-Albany', 48, 1550, 144],
  ['US-NH-Concord', 46.5, 1750, 151],
  ['US-ME-Portland', 46.5, 1625, 150],
  ['US-MA-Boston', 51.5, 850, 119],
  ['US-CT-Hartford', 50.5, 1150, 130],
  ['US-PA-Pittsburgh', 51, 875, 122],
  ['US-OH-Cleveland', 51, 950, 124],
  ['US-MI-Detroit', 50, 1200, 133],
  ['US-WI-Milwaukee', 48, 1575, 144],
  ['US-WI-Madison', 46.5, 1950, 154],
  ['US-WI-GreenBay', 45, 2250, 161],
  ['US-IA-DesMoines', 51, 1375, 133],
  ['US-NE-Omaha', 51, 1350, 133],
  ['US-MO-KansasCity', 54.5, 725, 109],
  ['US-ND-Bismarck', 42.5, 2925, 173],
  ['US-SD-RapidCity', 47, 1575, 147],
  ['US-MT-Billings', 48, 1375, 141],
  ['US-MT-GreatFalls', 45, 1650, 155],
  ['US-MT-Missoula', 45, 1700, 156],
  ['US-ID-Boise', 52.5, 725, 113],
  ['US-WA-Spokane', 48, 1100, 136],
  ['US-WY-Cheyenne', 46.5, 1325, 145],
  ['US-CO-Denver', 50.5, 900, 124],
  ['US-UT-SaltLakeCity', 53, 875, 118],
  ['US-AK-Anchorage', 37, 3025, 199],
  ['US-AK-Fairbanks', 28, 6525, 223],
];

/** Country and region, two letters each, stand before the name: "US-MN-GrandRapids". */
const NAME_AT = 'US-MN-'.length;

export const COLDEST_WINTERS: readonly ColdestWinter[] = ROWS.map(([id, mean, index, days, name]) => ({
  id,
  name: name ?? id.slice(NAME_AT).replace(/[a-z](?=[A-Z])/g, '$& '),
  region: id.slice(3, 5),
  meanAnnualFahrenheit: mean,
  coldHundredIndex: index,
  coldHundredSeasonDays: days,
}));

/**
 * A station by its id ("US-MN-Crookston"), its name ("Crookston") or its name with the region ("Crookston, MN").
 *
 * @returns  null when there is none of that name, or more than one
 */
export function findColdestWinter(text: string): ColdestWinter | null {
  const wanted = text.trim().toLowerCase();
  const exact = COLDEST_WINTERS.find(
    ({ id, name, region }) => id.toLowerCase() === wanted || `${name}, ${region}`.toLowerCase() === wanted,
  );
  if (exact !== undefined) return exact;
  const named = COLDEST_WINTERS.filter(({ name }) => name.toLowerCase() === wanted);
  return named.length === 1 ? (named[0] ?? null) : null;
}
