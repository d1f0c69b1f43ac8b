/**
 * Invented reports in the layouts and words of public report forms, and all that may be read from each. Wells, places and
 * names are made up.
 */
import type { Doubt, WhyNot } from '../../src/reading/reading.ts';

export interface Report {
  readonly name: string;
  readonly text: string;
  /** Everything that is read, and nothing else. */
  readonly read: Readonly<Record<string, unknown>>;
  readonly doubts?: Readonly<Record<string, Doubt['kind']>>;
  readonly asides?: readonly WhyNot[];
  /** Lines that nobody understood, as they stand there. */
  readonly left?: readonly string[];
}

export const REPORTS: readonly Report[] = [
  {
    name: 'a construction and test report, telescoped, perforated, tested with air',
    text: `WELL CONSTRUCTION AND TEST REPORT
Well permit number: 88123    Owner: J. Sample
4. GROUND SURFACE ELEVATION 6120 feet   DRILLING METHOD air rotary
DATE COMPLETED 5/14/2012   TOTAL DEPTH 310 feet   DEPTH COMPLETED 295 feet
6. HOLE DIAM (in.)   From (ft)   To (ft)
   9                 0           40
   6.5               40          310
7. PLAIN CASING:
OD (in)   Kind    Wall Size (in)   From (ft)   To (ft)
6 5/8     Steel   0.188            +1.5        40
4 1/2     PVC     0.214            20          195
PERFORATED CASING: Screen Slot Size (in): .040
OD (in)   Kind    Wall Size (in)   From (ft)   To (ft)
4 1/2     PVC     0.214            195         295
12. WELL TEST DATA
TESTING METHOD Air compressor
Static Level 62 ft.  Date/Time measured: 5/14/2012 10:30   Production Rate 8 gpm.
Pumping Level 290 ft.  Test Length (hrs) 2
`,
    read: {
      'well.depth': '295 ft',
      'well.casings': [
        { material: 'steel', size: '6-5/8 in', schedule: '0.188 in', bottom: '40 ft', height: '1.5 ft' },
        { material: 'PVC', size: '4-1/2 in', schedule: '0.214 in', top: '20 ft', bottom: '195 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '195 ft', bottom: '295 ft' }],
      'water.staticLevel': '62 ft',
      'well.tested': '5/14/2012',
      'well.yield': '8 gpm',
      'well.yieldFrom': 'air lift',
    },
    asides: ['drilledDeeper', 'airLevel', 'noPlace'],
  },
  {
    name: 'a letter with its numbers in words',
    text: `Dear Mr. Field,
we drilled your well last August. It is four hundred and five
feet deep. We set 62 feet of 6 inch steel casing. The water rose to within 38 feet of
the surface, and with air it made about five gallons a minute. We hit first water at 120 ft.
I would recommend setting the pump at 360 feet.
`,
    read: {
      'well.depth': '405 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '62 ft',
      'water.staticLevel': '38 ft',
      'well.yield': '5 gpm',
      'well.yieldFrom': 'air lift',
      'pump.setting': '360 ft',
    },
    doubts: { 'well.casing.bottom': 'length' },
    asides: ['firstWater'],
  },
  {
    name: 'notes of a driller, depths from the casing top, with a log and zones',
    text: `Static water level: 35 ft below top of casing
Casing: 6" steel, sched 40, +2 to 84 ft
Open hole 6" 84 - 205 ft
Pump test: 10 gpm for 4 hours, drawdown 42'
Log:
0-28   brown clay
28-61  sand and gravel
61-84  weathered granite
84-205 granite, hard
Water bearing zones: 140-145 ft 3 gpm
198 ft - 200 ft 7 gpm
Well depth 205'
Pump installed: 3/4 hp set at 180 ft
Yield adequate
`,
    read: {
      'well.depth': '205 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.schedule': 'schedule 40',
      'well.casing.bottom': '84 ft',
      'well.casing.height': '2 ft',
      'well.intake.kind': 'open hole',
      'well.intake.diameter': '6 in',
      'well.layers': [
        { material: 'brown clay', bottom: '28 ft' },
        { material: 'sand and gravel', bottom: '61 ft' },
        { material: 'weathered granite', bottom: '84 ft' },
        { material: 'granite, hard', bottom: '205 ft' },
      ],
      'well.inflows': [
        { depth: '140 ft', share: '30 %' },
        { depth: '198 ft', share: '70 %' },
      ],
      'water.staticLevel': '33 ft',
      'water.pumping.flow': '10 gpm',
      'water.pumping.drawdown': '42 ft',
      'water.pumping.after': '4 h',
      'well.yieldFrom': 'pump',
      'pump.setting': '180 ft',
      'pump.power': '3/4 hp',
    },
    doubts: { 'water.staticLevel': 'takenOff' },
    left: ['Yield adequate'],
  },
  {
    name: 'plain labels, one a line',
    text: `Total depth: 240 ft
Casing diameter: 6 in
Casing material: steel
Casing depth: 62 ft
Static water level: 41' 6"
Yield: 12 gpm
`,
    read: {
      'well.depth': '240 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '62 ft',
      'water.staticLevel': '41.5 ft',
      'well.yield': '12 gpm',
    },
  },
  {
    name: 'units in the labels, leaders to the values',
    text: `Depth of well (ft) ............ 185
Diameter of casing (in) ....... 6
Depth of casing (ft) .......... 40
Static level (ft) ............. 22
Yield (gpm) ................... 15
`,
    read: {
      'well.depth': '185 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '40 ft',
      'water.staticLevel': '22 ft',
      'well.yield': '15 gpm',
    },
  },
  {
    name: 'a table with rulings, a pump test, screened',
    text: `| CASING RECORD |
| Inside dia (in) | Material | From (ft) | To (ft) |
| 5 | PVC | 0 | 92 |
| SCREEN RECORD |
| Dia (in) | Slot | From (ft) | To (ft) |
| 5 | 20 | 92 | 107 |
Well depth 107 ft
PUMPING TEST
Static level 18 ft
Pumping rate 20 gpm
Duration 24 hours
Drawdown 31 ft
`,
    read: {
      'well.depth': '107 ft',
      'well.casing.size': '5 in',
      'well.casing.material': 'PVC',
      'well.casing.bottom': '92 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '92 ft', bottom: '107 ft', slot: '0.02 in' }],
      'water.staticLevel': '18 ft',
      'water.pumping.flow': '20 gpm',
      'water.pumping.drawdown': '31 ft',
      'water.pumping.after': '24 h',
      'well.yieldFrom': 'pump',
    },
  },
  {
    name: 'a metric record with millimetres',
    text: `Total depth: 73.2 m
Casing diameter: 160 mm PVC
Casing to: 58 m
Screen: 58 m to 70 m
Static water level: 12.4 m below ground
Pumping rate: 0.6 L/s
Pumping level: 19.8 m
Duration of test: 8 h
`,
    read: {
      'well.depth': '73.2 m',
      'well.casing.size': '160 mm',
      'well.casing.material': 'PVC',
      'well.casing.bottom': '58 m',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '58 m', bottom: '70 m' }],
      'water.staticLevel': '12.4 m',
      'water.pumping.flow': '0.6 L/s',
      'water.pumping.level': '19.8 m',
    },
    asides: ['noPlace'],
  },
  {
    name: 'two static levels with days: the later one',
    text: `Well depth: 300 ft
Static water level: 48 ft on 4/2/1998
Static water level: 71 ft on 9/12/2021
`,
    read: { 'well.depth': '300 ft', 'water.staticLevel': '71 ft' },
    asides: ['earlier'],
  },
  {
    name: 'two static levels without days: the first, and a doubt',
    text: `Well depth: 300 ft
Static water level: 48 ft
Water level: 71 ft
`,
    read: { 'well.depth': '300 ft', 'water.staticLevel': '48 ft' },
    doubts: { 'water.staticLevel': 'two' },
  },
  {
    name: 'an air test whose pumping level is where the stem stood',
    text: `Completed depth 420 ft
SWL 80 ft
WELL TEST: [x] Air  [ ] Bailer  [ ] Pump
Yield 3 gpm with drill stem at 400 ft for 1 hr
Pumping level 400 ft
`,
    read: {
      'well.depth': '420 ft',
      'water.staticLevel': '80 ft',
      'well.yield': '3 gpm',
      'well.yieldFrom': 'air lift',
    },
    asides: ['testIntake', 'airLevel', 'noPlace'],
  },
  {
    name: 'a pump test with unticked boxes for air',
    text: `Depth completed 180 ft
Static level 30 ft
Test method: [ ] Air lift [ ] Bailer [X] Pump
Tested at 9 gpm, pumping level 66 ft after 2 hrs
`,
    read: {
      'well.depth': '180 ft',
      'water.staticLevel': '30 ft',
      'water.pumping.flow': '9 gpm',
      'water.pumping.level': '66 ft',
      'well.yieldFrom': 'pump',
    },
    asides: ['noPlace'],
  },
  {
    name: 'a test pump is no pump that hangs there',
    text: `Well depth 260 ft
PUMP TEST
Test pump set at 240 ft
Pumping rate 6 gpm
Static 55 ft
Drawdown 90 ft
Recommended pump depth 220 ft
Recommended pump rate 5 gpm
`,
    read: {
      'well.depth': '260 ft',
      'water.staticLevel': '55 ft',
      'water.pumping.flow': '6 gpm',
      'water.pumping.drawdown': '90 ft',
      'well.yieldFrom': 'pump',
      'pump.setting': '220 ft',
    },
    asides: ['testIntake', 'recommendedRate'],
  },
  {
    name: 'a pump that hangs there beside one that was recommended',
    text: `Depth of well: 310 feet
PUMP DATA
Pump set at 280 feet, 1 HP
Recommended pump setting: 260 feet
`,
    read: { 'well.depth': '310 ft', 'pump.setting': '280 ft', 'pump.power': '1 hp' },
    asides: ['installedInstead'],
  },
  {
    name: 'first water is not static',
    text: `Total depth 160 ft
First water at 95 ft
Static water level 28 ft
`,
    read: { 'well.depth': '160 ft', 'water.staticLevel': '28 ft' },
    asides: ['firstWater'],
  },
  {
    name: 'a level above the ground',
    text: `Well depth 140 ft
Static water level 3 ft above ground surface
`,
    read: { 'well.depth': '140 ft', 'water.staticLevel': '-3 ft' },
  },
  {
    name: 'a plus before a level can be read both ways',
    text: `Well depth 140 ft
Static water level +3 ft
`,
    read: { 'well.depth': '140 ft', 'water.staticLevel': '-3 ft' },
    doubts: { 'water.staticLevel': 'plus' },
  },
  {
    name: 'a well that flows, of which nobody said how high',
    text: `Well depth 140 ft
Static water level: flowing
`,
    read: { 'well.depth': '140 ft' },
    asides: ['flows'],
  },
  {
    name: 'a casing from above the ground with a minus',
    text: `CASING
Diameter   From   To    Material
6 in       -1 ft  84 ft steel
Total depth 200 ft
`,
    read: {
      'well.depth': '200 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '84 ft',
      'well.casing.height': '1 ft',
    },
  },
  {
    name: 'all depths from the casing top',
    text: `All depths measured from top of casing
Well depth 221 ft
Static water level 63 ft
`,
    read: { 'well.depthsFrom': 'casing top', 'well.depth': '221 ft', 'water.staticLevel': '63 ft' },
  },
  {
    name: 'a level from the casing top of unknown height',
    text: `Well depth 221 ft
Static water level 63 ft BTOC
`,
    read: { 'well.depth': '221 ft', 'water.staticLevel': '63 ft' },
    doubts: { 'water.staticLevel': 'fromCasingTop' },
  },
  {
    name: 'a yield by the hour, and a range of levels',
    text: `Depth of well 350 ft
Yield 40 gph
Static level 60-75 ft
`,
    read: { 'well.depth': '350 ft', 'well.yield': '40 gph', 'water.staticLevel': '75 ft' },
    doubts: { 'water.staticLevel': 'range' },
  },
  {
    name: 'less than a gallon',
    text: `Total depth 605 ft
Yield less than 1 gpm
`,
    read: { 'well.depth': '605 ft', 'well.yield': '1 gpm' },
    doubts: { 'well.yield': 'less' },
  },
  {
    name: 'thousands, and feet written with a mark',
    text: `Total depth: 1,205'
Static level: 410'
`,
    read: { 'well.depth': '1205 ft', 'water.staticLevel': '410 ft' },
  },
  {
    name: 'imperial gallons',
    text: `Total depth 61 m
Yield 5 igpm
Static level 9 m
`,
    read: { 'well.depth': '61 m', 'well.yield': '6.005 gpm', 'water.staticLevel': '9 m' },
  },
  {
    name: 'a liner that hangs in rock, perforated at its end',
    text: `Casing: 6 in steel 0 to 60 ft
Liner: 4 in PVC 40 to 300 ft
Liner perforated from 220 to 300 ft
Total depth 300 ft
`,
    read: {
      'well.depth': '300 ft',
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '60 ft' },
        { material: 'PVC', size: '4 in', top: '40 ft', bottom: '300 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '220 ft', bottom: '300 ft' }],
    },
  },
  {
    name: 'a log with columns of depths and words, metric',
    text: `OVERBURDEN AND BEDROCK MATERIALS
General colour   Most common material   From (m)   To (m)
Brown            Clay                   0          4.6
Grey             Clay with stones       4.6        11.3
Grey             Limestone              11.3       44.8
Depth of well 44.8 m
`,
    read: {
      'well.depth': '44.8 m',
      'well.layers': [
        { material: 'brown clay', bottom: '4.6 m' },
        { material: 'grey clay with stones', bottom: '11.3 m' },
        { material: 'grey limestone', bottom: '44.8 m' },
      ],
    },
  },
  {
    name: 'layers with a gap',
    text: `Formation log
0 - 10 ft topsoil and clay
30 - 80 ft shale
Total depth 80 ft
`,
    read: {
      'well.depth': '80 ft',
      'well.layers': [
        { material: 'topsoil and clay', bottom: '10 ft' },
        { material: 'shale', bottom: '80 ft' },
      ],
    },
    doubts: { 'well.layers': 'gap' },
  },
  {
    name: 'columns of a form that came apart: a value under its label',
    text: `Total depth
240 ft
Static water level
35 ft
Yield
6 gpm
`,
    read: { 'well.depth': '240 ft', 'water.staticLevel': '35 ft', 'well.yield': '6 gpm' },
  },
  {
    name: 'several labels on a line',
    text: `Well depth: 325 ft   Casing: 6 in to 41 ft   Static: 55 ft   Yield: 4 gpm (air lift)
`,
    read: {
      'well.depth': '325 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '41 ft',
      'water.staticLevel': '55 ft',
      'well.yield': '4 gpm',
      'well.yieldFrom': 'air lift',
    },
  },
  {
    name: 'a mail about a well with a pump in it',
    text: `Hi, the well is 280 feet deep with a 6" casing. The pump hangs at 240 feet, it is a 1 hp.
Water stands at 90 feet. We pumped it at 8 gpm for 3 hours and it fell to 150 feet.
`,
    read: {
      'well.depth': '280 ft',
      'well.casing.size': '6 in',
      'water.staticLevel': '90 ft',
      'water.pumping.flow': '8 gpm',
      'water.pumping.level': '150 ft',
      'well.yieldFrom': 'pump',
      'pump.setting': '240 ft',
      'pump.power': '1 hp',
    },
    asides: ['noPlace'],
  },
  {
    name: 'a letter in metres',
    text: `The borehole was drilled to a depth of 85 metres and finished with 125 mm PVC casing down to 60 metres.
The static level was 21 metres. It delivers 2.5 m3/h.
`,
    read: {
      'well.depth': '85 m',
      'well.casing.size': '125 mm',
      'well.casing.material': 'PVC',
      'well.casing.bottom': '60 m',
      'water.staticLevel': '21 m',
      'well.yield': '2.5 m3/h',
    },
  },
  {
    name: 'drawdown and pumping level that do not fit',
    text: `Depth of well 200 ft
Static level 40 ft
Pumping rate 10 gpm
Pumping level 90 ft
Drawdown 60 ft
`,
    read: {
      'well.depth': '200 ft',
      'water.staticLevel': '40 ft',
      'water.pumping.flow': '10 gpm',
      'water.pumping.drawdown': '60 ft',
    },
    doubts: { 'water.pumping.drawdown': 'unlike' },
  },
  {
    name: 'a bailer test',
    text: `Depth of well 96 ft
Static level 31 ft
Bailer test: 7 gpm with 12 ft drawdown after 1 hr
`,
    read: {
      'well.depth': '96 ft',
      'water.staticLevel': '31 ft',
      'water.pumping.flow': '7 gpm',
      'water.pumping.drawdown': '12 ft',
      'water.pumping.after': '1 h',
      'well.yieldFrom': 'bailer',
    },
  },
  {
    name: 'grout, stick-up and a hole',
    text: `Borehole diameter: 6 1/8 in
Casing: 6 5/8 in OD steel, 0.188 in wall, to 48 ft
Stick-up: 18 in
Grout: bentonite 0 to 48 ft
Well depth: 405 ft
`,
    read: {
      'well.depth': '405 ft',
      'well.casing.size': '6-5/8 in',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.188 in',
      'well.casing.bottom': '48 ft',
      'well.casing.height': '18 in',
      'well.intake.diameter': '6-1/8 in',
      'well.grout': [{ bottom: '48 ft' }],
    },
  },
  {
    name: 'a dug well with rings of concrete',
    text: `Dug well, 24 ft deep
Concrete tile casing 36 in
Static level 9 ft
`,
    read: {
      'well.depth': '24 ft',
      'well.casing.size': '36 in',
      'well.casing.material': 'concrete',
      'well.intake.kind': 'dug',
      'water.staticLevel': '9 ft',
    },
  },
  {
    name: 'a driven point',
    text: `Drive point well, 2 in
Total depth 28 ft
Screen 24 to 28 ft
`,
    read: {
      'well.depth': '28 ft',
      'well.intake.kind': 'driven point',
      'well.intake.screens': [{ top: '24 ft', bottom: '28 ft' }],
    },
  },
  {
    name: 'a drilled depth alone',
    text: `Drilled depth 410 ft
Static 100 ft
`,
    read: { 'well.depth': '410 ft', 'water.staticLevel': '100 ft' },
  },
  {
    name: 'two depths that differ',
    text: `Well depth 410 ft
Depth of well 401 ft
`,
    read: { 'well.depth': '410 ft' },
    doubts: { 'well.depth': 'two' },
  },
  {
    name: 'no unit anywhere',
    text: `Depth of well: 240
Static level: 35
Yield: 6
`,
    read: { 'well.depth': '240 ft', 'water.staticLevel': '35 ft', 'well.yield': '6 gpm' },
    doubts: { 'well.depth': 'unit', 'water.staticLevel': 'unit' },
  },
  {
    name: 'numbers of the office are nobody’s depth',
    text: `Owner: P. Example, 140 Ridge Road, phone 555-0142
Permit 21-0356, tag 44120, lot 12, elevation 1,240 ft
Latitude 45.21034 Longitude -75.69123
Total depth 150 ft
`,
    read: { 'well.depth': '150 ft' },
  },
  {
    name: 'amounts that are no depths',
    text: `Total depth 150 ft
Grout: 12 bags of bentonite
Chlorine used: 2 lb
Gravel pack 4 sacks
`,
    read: { 'well.depth': '150 ft' },
  },
  {
    name: 'a sounded depth of today',
    text: `Well depth (from report): 220 ft
Sounded depth 209 ft
Static level 61 ft
`,
    read: { 'well.depth': '220 ft', 'well.soundedDepth': '209 ft', 'water.staticLevel': '61 ft' },
  },
  {
    name: 'a log after a table of screens',
    text: `Casing: 5 in PVC 0 to 92 ft
SCREEN
Dia (in)   From (ft)   To (ft)
5          92          107
LOG
0-12 clay
12-107 sand
Water was nice and cold
`,
    read: {
      'well.casing.size': '5 in',
      'well.casing.material': 'PVC',
      'well.casing.bottom': '92 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '92 ft', bottom: '107 ft' }],
      'well.layers': [
        { material: 'clay', bottom: '12 ft' },
        { material: 'sand', bottom: '107 ft' },
      ],
    },
    left: ['Water was nice and cold'],
  },
  {
    name: 'a range of levels under a line of casing',
    text: `Well depth: 350 ft
Casing: 6 in steel 0 to 41 ft
Static level 60-75 ft
Water found 120-140 ft
`,
    read: {
      'well.depth': '350 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '41 ft',
      'water.staticLevel': '75 ft',
      'well.inflows': [{ depth: '120 ft' }],
    },
    doubts: { 'water.staticLevel': 'range' },
  },
  {
    name: 'nothing of a well',
    text: `Thank you for your payment of 120 dollars.
We are closed on Mondays.
`,
    read: {},
    left: ['Thank you for your payment of 120 dollars.', 'We are closed on Mondays.'],
  },
];
