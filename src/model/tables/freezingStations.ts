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
export interface FreezingStation {
  readonly id: string;
  readonly name: string;
  /** State or province. */
  readonly region: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly meanAnnualFahrenheit: number;
  readonly normalIndex: number;
  readonly normalSeasonDays: number;
  readonly coldTenIndex: number;
  readonly coldTenSeasonDays: number;
  readonly coldHundredIndex: number;
  readonly coldHundredSeasonDays: number;
  readonly quality: 'A' | 'B' | 'C' | 'D' | 'M';
}

const station = (
  id: string,
  name: string,
  region: string,
  latitude: number,
  longitude: number,
  meanAnnualFahrenheit: number,
  normalIndex: number,
  normalSeasonDays: number,
  coldTenIndex: number,
  coldTenSeasonDays: number,
  coldHundredIndex: number,
  coldHundredSeasonDays: number,
  quality: FreezingStation['quality'],
): FreezingStation => ({
  id,
  name,
  region,
  latitude,
  longitude,
  meanAnnualFahrenheit,
  normalIndex,
  normalSeasonDays,
  coldTenIndex,
  coldTenSeasonDays,
  coldHundredIndex,
  coldHundredSeasonDays,
  quality,
});

export const FREEZING_STATIONS: readonly FreezingStation[] = [
  //      id, name, region, latitude, longitude, mean °F, normal index and days, cold-10 index and days, cold-100 ..., quality
  station('US-MN-Crookston', 'Crookston', 'MN', 47.8, -96.6, 39.9, 2555, 144, 3320, 162, 3820, 172, 'B'),
  station('US-MN-Moorhead', 'Moorhead', 'MN', 46.9, -96.8, 41.6, 2213, 138, 2940, 155, 3430, 166, 'B'),
  station('US-MN-Warroad', 'Warroad', 'MN', 48.92, -95.32, 37.3, 2971, 156, 3790, 173, 4330, 182, 'B'),
  station('US-MN-GrandRapids', 'Grand Rapids', 'MN', 47.24, -93.5, 39.5, 2289, 144, 3050, 162, 3560, 174, 'B'),
  station(
    'US-MN-InternationalFalls',
    'International Falls',
    'MN',
    48.57,
    -93.4,
    37.5,
    2751,
    151,
    3550,
    168,
    4070,
    179,
    'B',
  ),
  station('US-MN-Duluth', 'Duluth', 'MN', 46.83, -92.18, 39.0, 2141, 146, 2920, 166, 3430, 177, 'B'),
  station('US-MN-GrandMarais', 'Grand Marais', 'MN', 47.75, -90.33, 39.3, 1552, 138, 2300, 162, 2810, 176, 'B'),
  station('US-MN-Hibbing', 'Hibbing', 'MN', 47.38, -92.85, 38.0, 2478, 149, 3270, 168, 3790, 179, 'B'),
  station('US-MN-Alexandria', 'Alexandria', 'MN', 45.87, -95.38, 41.7, 2084, 138, 2820, 156, 3300, 166, 'B'),
  station('US-MN-Morris', 'Morris', 'MN', 45.58, -95.92, 42.3, 2006, 135, 2730, 153, 3200, 164, 'B'),
  station('US-MN-StCloud', 'St. Cloud', 'MN', 45.58, -94.18, 41.9, 1976, 135, 2700, 154, 3170, 164, 'B'),
  station('US-MN-Willmar', 'Willmar', 'MN', 45.12, -95.04, 43.0, 1932, 132, 2630, 149, 3100, 160, 'B'),
  station('US-MN-Aitkin', 'Aitkin', 'MN', 46.53, -93.71, 39.9, 2198, 141, 2950, 160, 3450, 172, 'B'),
  station(
    'US-MN-Minneapolis-StPaulAP',
    'Minneapolis-St Paul AP',
    'MN',
    44.88,
    -93.22,
    45.3,
    1456,
    121,
    2110,
    141,
    2550,
    153,
    'B',
  ),
  station('US-MN-Pipestone', 'Pipestone', 'MN', 44.0, -96.3, 43.5, 1715, 129, 2410, 149, 2870, 160, 'B'),
  station('US-MN-RedwoodFalls', 'Redwood Falls', 'MN', 44.53, -95.12, 45.7, 1490, 120, 2140, 139, 2570, 150, 'B'),
  station('US-SD-SiouxFalls', 'Sioux Falls', 'SD', 43.57, -96.73, 45.3, 1420, 121, 2070, 141, 2520, 154, 'B'),
  station('US-MN-Worthington', 'Worthington', 'MN', 43.62, -95.6, 43.4, 1711, 130, 2410, 150, 2880, 161, 'B'),
  station('US-MN-Faribault', 'Faribault', 'MN', 44.3, -93.28, 43.9, 1655, 126, 2340, 146, 2790, 157, 'B'),
  station('US-MN-Rochester', 'Rochester', 'MN', 44.0, -92.45, 43.6, 1629, 126, 2300, 145, 2760, 157, 'B'),
  station('US-WI-LaCrosse', 'La Crosse', 'WI', 43.93, -91.28, 47.1, 1133, 110, 1740, 132, 2150, 145, 'B'),
  station('US-MN-Winona', 'Winona', 'MN', 44.05, -91.64, 45.5, 1414, 119, 2060, 138, 2480, 148, 'B'),
  station('US-ME-AcadiaNP', 'Acadia NP', 'ME', 44.37, -68.26, 45.4, 762, 105, 1360, 134, 1790, 150, 'A'),
  station('US-ME-Allagash', 'Allagash', 'ME', 47.08, -69.03, 36.0, 2646, 152, 3470, 176, 4020, 191, 'A'),
  station('US-ME-AugustaAP', 'Augusta AP', 'ME', 44.32, -69.8, 45.9, 874, 105, 1460, 131, 1880, 146, 'A'),
  station('US-ME-BangorIntlAP', 'Bangor Intl AP', 'ME', 44.8, -68.82, 44.8, 1032, 111, 1650, 135, 2080, 151, 'A'),
  station('US-ME-Barnard', 'Barnard', 'ME', 45.32, -69.13, 41.6, 1527, 127, 2220, 152, 2700, 168, 'A'),
  station('US-ME-Belfast', 'Belfast', 'ME', 44.4, -69.0, 45.3, 789, 104, 1380, 131, 1800, 148, 'A'),
  station('US-MN-AgassizRefuge', 'Agassiz Refuge', 'MN', 48.3, -95.98, 38.9, 2689, 144, 3450, 161, 3950, 171, 'A'),
  station('US-MN-AlbertLea3SE', 'Albert Lea 3 SE', 'MN', 43.65, -93.37, 44.3, 1674, 124, 2340, 142, 2780, 152, 'A'),
  station(
    'US-MN-MadisonSewagePlant',
    'Madison Sewage Plant',
    'MN',
    45.01,
    -96.18,
    45.2,
    1520,
    122,
    2180,
    141,
    2620,
    152,
    'A',
  ),
  station('US-SD-Stephan2NW', 'Stephan 2 NW', 'SD', 44.25, -99.45, 45.1, 1472, 122, 2130, 141, 2570, 153, 'A'),
  station('US-MT-Creston', 'Creston', 'MT', 48.18, -114.13, 43.2, 708, 109, 1340, 144, 1800, 164, 'A'),
  station('US-CO-Waterdale', 'Waterdale', 'CO', 40.42, -105.2, 48.4, 230, 78, 720, 114, 1090, 134, 'A'),
  station('US-CO-Rush1N', 'Rush 1N', 'CO', 38.85, -104.09, 44.8, 595, 110, 1230, 143, 1690, 161, 'A'),
  station('US-CO-Lindon5WNW', 'Lindon 5 WNW', 'CO', 39.76, -103.49, 48.3, 366, 90, 900, 122, 1290, 141, 'A'),
  station('US-CO-Gateway', 'Gateway', 'CO', 38.68, -108.98, 54.2, 74, 42, 370, 76, 630, 94, 'A'),
  station('US-CO-Westcliffe', 'Westcliffe', 'CO', 38.13, -105.48, 42.4, 738, 120, 1420, 151, 1900, 170, 'A'),
  station('US-UT-Milford', 'Milford', 'UT', 38.4, -113.01, 50.2, 233, 70, 670, 102, 1000, 120, 'A'),
  station('US-UT-FortDuchesne', 'Fort Duchesne', 'UT', 40.28, -109.86, 46.6, 1056, 105, 1630, 124, 2020, 137, 'A'),
  station('US-UT-Escalante', 'Escalante', 'UT', 37.77, -111.6, 50.4, 162, 61, 560, 96, 880, 116, 'A'),
  station('US-ID-KetchumRS', 'Ketchum RS', 'ID', 43.68, -114.36, 39.5, 1328, 138, 2080, 164, 2600, 180, 'A'),
  station('US-IL-Urbana', 'Urbana', 'IL', 40.13, -88.22, 51.7, 413, 80, 880, 104, 1210, 118, 'A'),
  station('US-NY-Buffalo', 'Buffalo', 'NY', 42.93, -78.73, 49.0, 413, 87, 930, 118, 1310, 135, 'A'),
  station('US-IL-KMDW', 'Chicago Midway', 'IL', 41.79, -87.75, 51.5, 410, 80, 880, 106, 1220, 118, 'D'),
  station('US-IN-KIND', 'Indianapolis', 'IN', 39.72, -86.29, 53.2, 188, 61, 580, 91, 880, 104, 'D'),
  station('US-PA-KPHL', 'Philadelphia', 'PA', 39.87, -75.24, 56.0, 0, 0, 190, 64, 420, 86, 'D'),
  station('US-NY-KNYC', 'New York Central Park', 'NY', 40.78, -73.97, 55.0, 0, 0, 210, 68, 450, 89, 'D'),
  station('US-WA-KSEA', 'Seattle-Tacoma', 'WA', 47.45, -122.31, 52.7, 0, 0, 0, 0, 0, 0, 'D'),
  station('US-NC-KCLT', 'Charlotte', 'NC', 35.21, -80.94, 59.9, 0, 0, 0, 0, 0, 10, 'D'),
  station('CA-MB-BrandonA', 'Brandon A', 'MB', 49.91, -99.95, 36.1, 3045, 155, 3860, 173, 4400, 185, 'A'),
  station(
    'CA-AB-EdmontonUofA',
    'EdmontonUofA, University of Alberta',
    'AB',
    53.52,
    -113.53,
    38.4,
    2019,
    153,
    2830,
    172,
    3360,
    182,
    'A',
  ),
  station('CA-AB-Redwater', 'Redwater', 'AB', 53.95, -113.1, 34.9, 2800, 162, 3660, 180, 4210, 192, 'A'),
  station('CA-AB-Horburg', 'Horburg', 'AB', 52.33, -115.0, 39.2, 1289, 144, 2070, 168, 2590, 182, 'A'),
  station('CA-NL-StJohns', "St. John's", 'NL', 47.6, -52.7, 40.5, 802, 126, 1520, 160, 2030, 180, 'C'),
  station('CA-PE-Charlottetown', 'Charlottetown', 'PE', 46.3, -63.1, 41.5, 1256, 135, 1990, 160, 2500, 175, 'C'),
  station('CA-NS-Halifax', 'Halifax', 'NS', 44.9, -63.5, 43.3, 849, 120, 1520, 149, 1990, 165, 'C'),
  station('CA-NB-Fredericton', 'Fredericton', 'NB', 45.9, -66.5, 41.5, 1507, 139, 2260, 162, 2770, 176, 'C'),
  station('CA-QC-Montreal', 'Montreal', 'QC', 45.5, -73.7, 42.4, 1557, 138, 2300, 160, 2800, 172, 'C'),
  station('CA-ON-Ottawa', 'Ottawa', 'ON', 45.3, -75.7, 42.8, 1585, 137, 2330, 159, 2820, 171, 'C'),
  station('CA-ON-ThunderBay', 'Thunder Bay', 'ON', 48.4, -89.3, 36.5, 2609, 165, 3480, 185, 4050, 197, 'C'),
  station('CA-ON-Toronto', 'Toronto', 'ON', 43.7, -79.6, 45.5, 817, 114, 1460, 141, 1900, 156, 'C'),
  station('CA-MB-Winnipeg', 'Winnipeg', 'MB', 49.9, -97.2, 36.7, 3086, 166, 3960, 184, 4530, 194, 'C'),
  station('CA-SK-Regina', 'Regina', 'SK', 50.4, -104.7, 37.0, 2789, 164, 3650, 182, 4220, 194, 'C'),
  station('CA-SK-Saskatoon', 'Saskatoon', 'SK', 52.2, -106.7, 36.0, 2989, 168, 3880, 186, 4450, 197, 'C'),
  station('CA-AB-Calgary', 'Calgary', 'AB', 51.1, -114.0, 39.4, 1420, 144, 2210, 170, 2740, 186, 'C'),
  station('CA-AB-Edmonton', 'Edmonton', 'AB', 53.3, -113.6, 36.3, 2328, 164, 3200, 186, 3780, 199, 'C'),
  station('CA-BC-Vancouver', 'Vancouver', 'BC', 49.2, -123.2, 50.2, 0, 0, 0, 0, 130, 75, 'C'),
  station('CA-BC-PrinceGeorge', 'Prince George', 'BC', 53.9, -122.7, 39.2, 1446, 145, 2240, 171, 2770, 187, 'C'),
  station('CA-YT-Whitehorse', 'Whitehorse', 'YT', 60.7, -135.1, 30.7, 3561, 188, 4550, 208, 5190, 221, 'C'),
  station('US-VT-Burlington', 'Burlington', 'VT', 44.47, -73.15, 46, 925, 117, 1550, 142, 2000, 156, 'M'),
  station('US-NY-Albany', 'Albany', 'NY', 42.75, -73.8, 48, 550, 100, 1125, 128, 1550, 144, 'M'),
  station('US-NH-Concord', 'Concord', 'NH', 43.2, -71.5, 46.5, 725, 109, 1325, 136, 1750, 151, 'M'),
  station('US-ME-Portland', 'Portland', 'ME', 43.65, -70.31, 46.5, 600, 104, 1200, 134, 1625, 150, 'M'),
  station('US-MA-Boston', 'Boston', 'MA', 42.36, -71.01, 51.5, 100, 58, 500, 100, 850, 119, 'M'),
  station('US-CT-Hartford', 'Hartford', 'CT', 41.94, -72.68, 50.5, 300, 80, 775, 113, 1150, 130, 'M'),
  station('US-PA-Pittsburgh', 'Pittsburgh', 'PA', 40.49, -80.23, 51, 125, 61, 550, 102, 875, 122, 'M'),
  station('US-OH-Cleveland', 'Cleveland', 'OH', 41.41, -81.85, 51, 175, 68, 600, 106, 950, 124, 'M'),
  station('US-MI-Detroit', 'Detroit', 'MI', 42.23, -83.33, 50, 325, 84, 825, 116, 1200, 133, 'M'),
  station('US-WI-Milwaukee', 'Milwaukee', 'WI', 42.95, -87.9, 48, 575, 101, 1150, 129, 1575, 144, 'M'),
  station('US-WI-Madison', 'Madison', 'WI', 43.13, -89.33, 46.5, 875, 115, 1525, 140, 1950, 154, 'M'),
  station('US-WI-GreenBay', 'Green Bay', 'WI', 44.48, -88.13, 45, 1100, 124, 1800, 147, 2250, 161, 'M'),
  station('US-IA-DesMoines', 'Des Moines', 'IA', 41.53, -93.65, 51, 475, 91, 1000, 119, 1375, 133, 'M'),
  station('US-NE-Omaha', 'Omaha', 'NE', 41.3, -95.9, 51, 450, 90, 975, 118, 1350, 133, 'M'),
  station('US-MO-KansasCity', 'Kansas City', 'MO', 39.3, -94.71, 54.5, 75, 47, 425, 90, 725, 109, 'M'),
  station('US-ND-Bismarck', 'Bismarck', 'ND', 46.77, -100.75, 42.5, 1675, 140, 2425, 160, 2925, 173, 'M'),
  station('US-SD-RapidCity', 'Rapid City', 'SD', 44.05, -103.05, 47, 575, 102, 1150, 132, 1575, 147, 'M'),
  station('US-MT-Billings', 'Billings', 'MT', 45.81, -108.54, 48, 425, 93, 975, 125, 1375, 141, 'M'),
  station('US-MT-GreatFalls', 'Great Falls', 'MT', 47.47, -111.38, 45, 600, 107, 1225, 138, 1650, 155, 'M'),
  station('US-MT-Missoula', 'Missoula', 'MT', 46.92, -114.09, 45, 650, 109, 1275, 139, 1700, 156, 'M'),
  station('US-ID-Boise', 'Boise', 'ID', 43.57, -116.24, 52.5, 50, 46, 425, 93, 725, 113, 'M'),
  station('US-WA-Spokane', 'Spokane', 'WA', 47.62, -117.53, 48, 225, 79, 725, 117, 1100, 136, 'M'),
  station('US-WY-Cheyenne', 'Cheyenne', 'WY', 41.16, -104.81, 46.5, 350, 91, 900, 127, 1325, 145, 'M'),
  station('US-CO-Denver', 'Denver', 'CO', 39.83, -104.66, 50.5, 150, 64, 575, 105, 900, 124, 'M'),
  station('US-UT-SaltLakeCity', 'Salt Lake City', 'UT', 40.79, -111.97, 53, 150, 63, 550, 100, 875, 118, 'M'),
  station('US-AK-Anchorage', 'Anchorage', 'AK', 61.17, -150.03, 37, 1600, 155, 2450, 183, 3025, 199, 'M'),
  station('US-AK-Fairbanks', 'Fairbanks', 'AK', 64.82, -147.87, 28, 4850, 196, 5875, 213, 6525, 223, 'M'),
];

/**
 * A station by its id ("US-MN-Crookston"), its name ("Crookston") or its name with the region ("Crookston, MN").
 *
 * @returns  null when there is none of that name, or more than one
 */
export function findStation(text: string): FreezingStation | null {
  const wanted = text.trim().toLowerCase();
  const exact = FREEZING_STATIONS.find(
    ({ id, name, region }) => id.toLowerCase() === wanted || `${name}, ${region}`.toLowerCase() === wanted,
  );
  if (exact !== undefined) return exact;
  const named = FREEZING_STATIONS.filter(({ name }) => name.toLowerCase() === wanted);
  return named.length === 1 ? (named[0] ?? null) : null;
}
