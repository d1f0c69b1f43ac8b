/**
 * Freezing climate of weather stations: air freezing index in °F-days below 32 °F, length of the freezing season in days,
 * mean annual air temperature in °F.
 *
 * The normal year is worked out from climate normals and is a lower bound of the mean index. The cold winters are
 * estimates: the normal year with every temperature lowered by 5 °F (about one winter in 10) or 8 °F (about one in 100),
 * a rule fitted to adopted design values, within 20 %. They are not return-period statistics of a weather service.
 *
 * `quality` says what the figures rest on:
 *   A  twelve monthly normals
 *   B  eleven monthly normals, November interpolated (3 %)
 *   C  January, July and annual normals, sine-wave year (10 %)
 *   D  daily averages of a long record
 *   M  temperatures from memory, sine-wave year (20 %); verify
 *
 * Sources  A  National Weather Service and NCDC monthly normals 1961-1990, 1971-2000, 1981-2010 and 1991-2020 as printed by
 *             the Western Regional Climate Center, the Illinois State Water Survey, NWS Buffalo, the Minnesota normals
 *             table 1961-1990 and the Maine normals table 1971-2000; Canadian Climate Normals 1981-2010
 *          B  University of Minnesota, climate monthly summaries: normals 1971-2000, August to October 1961-1990
 *          C  Statistics Canada, Human Activity and the Environment, Table 1.6, 1971 to 2000
 *          D  us-weather-history, daily averages of airport stations, open data under CC BY 4.0
 *          M  rounded normals 1981-2010, from memory
 *          Indexes and seasons of all of them are computed, as `freezingIndex.ts` says.
 */
import { COLDEST_WINTERS, findColdestWinter } from './coldestWinters.ts';
import type { ColdestWinter } from './coldestWinters.ts';

export interface FreezingStation extends ColdestWinter {
  readonly latitude: number;
  readonly longitude: number;
  readonly normalIndex: number;
  readonly normalSeasonDays: number;
  readonly coldTenIndex: number;
  readonly coldTenSeasonDays: number;
  readonly quality: 'A' | 'B' | 'C' | 'D' | 'M';
}

/** Latitude, longitude, normal index and days, cold-10 index and days, quality. */
type Row = readonly [number, number, number, number, number, number, FreezingStation['quality']];

/** In the order of the coldest winters, by id. */
const ROWS: Readonly<Record<string, Row>> = {
  'US-MN-Crookston': [47.8, -96.6, 2555, 144, 3320, 162, 'B'],
  'US-MN-Moorhead': [46.9, -96.8, 2213, 138, 2940, 155, 'B'],
  'US-MN-Warroad': [48.92, -95.32, 2971, 156, 3790, 173, 'B'],
  'US-MN-GrandRapids': [47.24, -93.5, 2289, 144, 3050, 162, 'B'],
  'US-MN-InternationalFalls': [48.57, -93.4, 2751, 151, 3550, 168, 'B'],
  'US-MN-Duluth': [46.83, -92.18, 2141, 146, 2920, 166, 'B'],
  'US-MN-GrandMarais': [47.75, -90.33, 1552, 138, 2300, 162, 'B'],
  'US-MN-Hibbing': [47.38, -92.85, 2478, 149, 3270, 168, 'B'],
  'US-MN-Alexandria': [45.87, -95.38, 2084, 138, 2820, 156, 'B'],
  'US-MN-Morris': [45.58, -95.92, 2006, 135, 2730, 153, 'B'],
  'US-MN-StCloud': [45.58, -94.18, 1976, 135, 2700, 154, 'B'],
  'US-MN-Willmar': [45.12, -95.04, 1932, 132, 2630, 149, 'B'],
  'US-MN-Aitkin': [46.53, -93.71, 2198, 141, 2950, 160, 'B'],
  'US-MN-Minneapolis-StPaulAP': [44.88, -93.22, 1456, 121, 2110, 141, 'B'],
  'US-MN-Pipestone': [44, -96.3, 1715, 129, 2410, 149, 'B'],
  'US-MN-RedwoodFalls': [44.53, -95.12, 1490, 120, 2140, 139, 'B'],
  'US-SD-SiouxFalls': [43.57, -96.73, 1420, 121, 2070, 141, 'B'],
  'US-MN-Worthington': [43.62, -95.6, 1711, 130, 2410, 150, 'B'],
  'US-MN-Faribault': [44.3, -93.28, 1655, 126, 2340, 146, 'B'],
  'US-MN-Rochester': [44, -92.45, 1629, 126, 2300, 145, 'B'],
  'US-WI-LaCrosse': [43.93, -91.28, 1133, 110, 1740, 132, 'B'],
  'US-MN-Winona': [44.05, -91.64, 1414, 119, 2060, 138, 'B'],
  'US-ME-AcadiaNP': [44.37, -68.26, 762, 105, 1360, 134, 'A'],
  'US-ME-Allagash': [47.08, -69.03, 2646, 152, 3470, 176, 'A'],
  'US-ME-AugustaAP': [44.32, -69.8, 874, 105, 1460, 131, 'A'],
  'US-ME-BangorIntlAP': [44.8, -68.82, 1032, 111, 1650, 135, 'A'],
  'US-ME-Barnard': [45.32, -69.13, 1527, 127, 2220, 152, 'A'],
  'US-ME-Belfast': [44.4, -69, 789, 104, 1380, 131, 'A'],
  'US-MN-AgassizRefuge': [48.3, -95.98, 2689, 144, 3450, 161, 'A'],
  'US-MN-AlbertLea3SE': [43.65, -93.37, 1674, 124, 2340, 142, 'A'],
  'US-MN-MadisonSewagePlant': [45.01, -96.18, 1520, 122, 2180, 141, 'A'],
  'US-SD-Stephan2NW': [44.25, -99.45, 1472, 122, 2130, 141, 'A'],
  'US-MT-Creston': [48.18, -114.13, 708, 109, 1340, 144, 'A'],
  'US-CO-Waterdale': [40.42, -105.2, 230, 78, 720, 114, 'A'],
  'US-CO-Rush1N': [38.85, -104.09, 595, 110, 1230, 143, 'A'],
  'US-CO-Lindon5WNW': [39.76, -103.49, 366, 90, 900, 122, 'A'],
  'US-CO-Gateway': [38.68, -108.98, 74, 42, 370, 76, 'A'],
  'US-CO-Westcliffe': [38.13, -105.48, 738, 120, 1420, 151, 'A'],
  'US-UT-Milford': [38.4, -113.01, 233, 70, 670, 102, 'A'],
  'US-UT-FortDuchesne': [40.28, -109.86, 1056, 105, 1630, 124, 'A'],
  'US-UT-Escalante': [37.77, -111.6, 162, 61, 560, 96, 'A'],
  'US-ID-KetchumRS': [43.68, -114.36, 1328, 138, 2080, 164, 'A'],
  'US-IL-Urbana': [40.13, -88.22, 413, 80, 880, 104, 'A'],
  'US-NY-Buffalo': [42.93, -78.73, 413, 87, 930, 118, 'A'],
  'US-IL-KMDW': [41.79, -87.75, 410, 80, 880, 106, 'D'],
  'US-IN-KIND': [39.72, -86.29, 188, 61, 580, 91, 'D'],
  'US-PA-KPHL': [39.87, -75.24, 0, 0, 190, 64, 'D'],
  'US-NY-KNYC': [40.78, -73.97, 0, 0, 210, 68, 'D'],
  'US-WA-KSEA': [47.45, -122.31, 0, 0, 0, 0, 'D'],
  'US-NC-KCLT': [35.21, -80.94, 0, 0, 0, 0, 'D'],
  'CA-MB-BrandonA': [49.91, -99.95, 3045, 155, 3860, 173, 'A'],
  'CA-AB-EdmontonUofA': [53.52, -113.53, 2019, 153, 2830, 172, 'A'],
  'CA-AB-Redwater': [53.95, -113.1, 2800, 162, 3660, 180, 'A'],
  'CA-AB-Horburg': [52.33, -115, 1289, 144, 2070, 168, 'A'],
  'CA-NL-StJohns': [47.6, -52.7, 802, 126, 1520, 160, 'C'],
  'CA-PE-Charlottetown': [46.3, -63.1, 1256, 135, 1990, 160, 'C'],
  'CA-NS-Halifax': [44.9, -63.5, 849, 120, 1520, 149, 'C'],
  'CA-NB-Fredericton': [45.9, -66.5, 1507, 139, 2260, 162, 'C'],
  'CA-QC-Montreal': [45.5, -73.7, 1557, 138, 2300, 160, 'C'],
  'CA-ON-Ottawa': [45.3, -75.7, 1585, 137, 2330, 159, 'C'],
  'CA-ON-ThunderBay': [48.4, -89.3, 2609, 165, 3480, 185, 'C'],
  'CA-ON-Toronto': [43.7, -79.6, 817, 114, 1460, 141, 'C'],
  'CA-MB-Winnipeg': [49.9, -97.2, 3086, 166, 3960, 184, 'C'],
  'CA-SK-Regina': [50.4, -104.7, 2789, 164, 3650, 182, 'C'],
  'CA-SK-Saskatoon': [52.2, -106.7, 2989, 168, 3880, 186, 'C'],
  'CA-AB-Calgary': [51.1, -114, 1420, 144, 2210, 170, 'C'],
  'CA-AB-Edmonton': [53.3, -113.6, 2328, 164, 3200, 186, 'C'],
  'CA-BC-Vancouver': [49.2, -123.2, 0, 0, 0, 0, 'C'],
  'CA-BC-PrinceGeorge': [53.9, -122.7, 1446, 145, 2240, 171, 'C'],
  'CA-YT-Whitehorse': [60.7, -135.1, 3561, 188, 4550, 208, 'C'],
  'US-VT-Burlington': [44.47, -73.15, 925, 117, 1550, 142, 'M'],
  'US-NY-Albany': [42.75, -73.8, 550, 100, 1125, 128, 'M'],
  'US-NH-Concord': [43.2, -71.5, 725, 109, 1325, 136, 'M'],
  'US-ME-Portland': [43.65, -70.31, 600, 104, 1200, 134, 'M'],
  'US-MA-Boston': [42.36, -71.01, 100, 58, 500, 100, 'M'],
  'US-CT-Hartford': [41.94, -72.68, 300, 80, 775, 113, 'M'],
  'US-PA-Pittsburgh': [40.49, -80.23, 125, 61, 550, 102, 'M'],
  'US-OH-Cleveland': [41.41, -81.85, 175, 68, 600, 106, 'M'],
  'US-MI-Detroit': [42.23, -83.33, 325, 84, 825, 116, 'M'],
  'US-WI-Milwaukee': [42.95, -87.9, 575, 101, 1150, 129, 'M'],
  'US-WI-Madison': [43.13, -89.33, 875, 115, 1525, 140, 'M'],
  'US-WI-GreenBay': [44.48, -88.13, 1100, 124, 1800, 147, 'M'],
  'US-IA-DesMoines': [41.53, -93.65, 475, 91, 1000, 119, 'M'],
  'US-NE-Omaha': [41.3, -95.9, 450, 90, 975, 118, 'M'],
  'US-MO-KansasCity': [39.3, -94.71, 75, 47, 425, 90, 'M'],
  'US-ND-Bismarck': [46.77, -100.75, 1675, 140, 2425, 160, 'M'],
  'US-SD-RapidCity': [44.05, -103.05, 575, 102, 1150, 132, 'M'],
  'US-MT-Billings': [45.81, -108.54, 425, 93, 975, 125, 'M'],
  'US-MT-GreatFalls': [47.47, -111.38, 600, 107, 1225, 138, 'M'],
  'US-MT-Missoula': [46.92, -114.09, 650, 109, 1275, 139, 'M'],
  'US-ID-Boise': [43.57, -116.24, 50, 46, 425, 93, 'M'],
  'US-WA-Spokane': [47.62, -117.53, 225, 79, 725, 117, 'M'],
  'US-WY-Cheyenne': [41.16, -104.81, 350, 91, 900, 127, 'M'],
  'US-CO-Denver': [39.83, -104.66, 150, 64, 575, 105, 'M'],
  'US-UT-SaltLakeCity': [40.79, -111.97, 150, 63, 550, 100, 'M'],
  'US-AK-Anchorage': [61.17, -150.03, 1600, 155, 2450, 183, 'M'],
  'US-AK-Fairbanks': [64.82, -147.87, 4850, 196, 5875, 213, 'M'],
};

export const FREEZING_STATIONS: readonly FreezingStation[] = COLDEST_WINTERS.map(withRest);

function withRest(winter: ColdestWinter): FreezingStation {
  const row = ROWS[winter.id];
  if (row === undefined)
    throw new RangeError(`freezingStations: nothing is known of ${winter.id} but its coldest winter`);
  const [latitude, longitude, normalIndex, normalSeasonDays, coldTenIndex, coldTenSeasonDays, quality] = row;
  return {
    ...winter,
    latitude,
    longitude,
    normalIndex,
    normalSeasonDays,
    coldTenIndex,
    coldTenSeasonDays,
    quality,
  };
}

/** As `findColdestWinter`, with all that is known of the station. */
export function findStation(text: string): FreezingStation | null {
  const winter = findColdestWinter(text);
  return winter === null ? null : withRest(winter);
}
