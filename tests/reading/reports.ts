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
      'well.casing.insideDiameter': '5 in',
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
    doubts: { 'well.depth': 'unit', 'water.staticLevel': 'unit', 'well.yield': 'unit' },
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
    name: 'a log whose words wrap',
    text: `Log
0 - 28 ft   brown clay with
            some gravel
28 - 90 ft  limestone, hard and
            broken
Total depth 90 ft
`,
    read: {
      'well.depth': '90 ft',
      'well.layers': [
        { material: 'brown clay with some gravel', bottom: '28 ft' },
        { material: 'limestone, hard and broken', bottom: '90 ft' },
      ],
    },
  },
  {
    name: 'a mail that knows the size without its unit, and a neighbour’s well',
    text: `Your well is 405 feet deep, cased to 40 ft with 6 5/8 steel. Blown with air it made less than 1 gpm.
I would set the pump at 380 ft.
The neighbor has 5 gpm at 200 feet.
`,
    read: {
      'well.depth': '405 ft',
      'well.casing.size': '6-5/8 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '40 ft',
      'well.yield': '1 gpm',
      'well.yieldFrom': 'air lift',
      'pump.setting': '380 ft',
    },
    doubts: { 'well.yield': 'less' },
    left: ['The neighbor has 5 gpm at 200 feet.'],
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
    name: 'a state report with numbered parts, an air test and a liner',
    text: `STATE WELL REPORT
(1) OWNER Name: A. Nobody   Address: 12 Hill Rd
(2) WELL: Depth drilled 303 ft.  Depth of completed well 298 ft.
(3) CONSTRUCTION  Casing installed: 6 in. Diam. from +1 ft. to 39 ft.
    Liner installed: 4 in. Diam. from 0 ft. to 298 ft.
    Perforations: Yes   Size of perforations 1/8 in. by 6 in.  from 238 ft. to 298 ft.
(4) Surface seal: Yes  To what depth? 19 ft.  Material used in seal: bentonite
(5) WATER LEVELS: Land-surface elevation above mean sea level 540 ft.
    Static level 112 ft. below top of well   Date 08/21/2006
(6) WELL TESTS: Drawdown is amount water level is lowered below static level
    Yield: ___ gal./min. with ___ ft. drawdown after ___ hrs.
    Airtest 12 gal./min. with stem set at 290 ft. for 1 hrs.
(7) WELL LOG  FORMATION: MATERIAL  FROM  TO
    Topsoil                      0    2
    Brown clay                   2    33
    Basalt, black, hard          33   298
    Basalt, broken, water bearing 240  262
`,
    read: {
      'well.depth': '298 ft',
      'well.casings': [
        { size: '6 in', bottom: '39 ft', height: '1 ft' },
        { size: '4 in', bottom: '298 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '238 ft', bottom: '298 ft' }],
      'well.layers': [
        { material: 'topsoil', bottom: '2 ft' },
        { material: 'brown clay', bottom: '33 ft' },
        { material: 'basalt, black, hard', bottom: '298 ft' },
      ],
      'water.staticLevel': '111 ft',
      'well.tested': '08/21/2006',
      'well.yield': '12 gpm',
      'well.yieldFrom': 'air lift',
    },
    doubts: { 'well.layers': 'gap', 'water.staticLevel': 'takenOff' },
    asides: ['drilledDeeper', 'testIntake', 'noPlace'],
    left: [
      'Surface seal: Yes  To what depth? 19 ft.  Material used in seal: bentonite',
      'Yield:   gal./min. with   ft. drawdown after   hrs.',
    ],
  },
  {
    name: 'a metric record with the intake of the test pump',
    text: `Water Well Record (metric)
Casing: Diameter 15.9 cm, Steel, wall 0.48 cm, +0.6 m to 18.3 m
Open hole 15.2 cm from 18.3 m to 91.4 m
Water found at 54.9 m and 85.3 m, fresh
Pump intake set at 82 m
Pumping rate 18 L/min  Duration 1 hr
Static level 7.6 m
Final water level end of pumping 48.2 m
Recommended pump depth 76 m
Recommended pump rate 15 L/min
`,
    read: {
      'well.casing.size': '159 mm',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.48 cm',
      'well.casing.bottom': '18.3 m',
      'well.casing.height': '0.6 m',
      'well.intake.kind': 'open hole',
      'well.intake.diameter': '152 mm',
      'well.inflows': [{ depth: '54.9 m' }, { depth: '85.3 m' }],
      'water.staticLevel': '7.6 m',
      'water.pumping.flow': '18 L/min',
      'water.pumping.level': '48.2 m',
      'pump.setting': '76 m',
    },
    asides: ['noPlace', 'testIntake', 'recommendedRate'],
    left: [],
  },
  {
    name: 'a note of three lines in one',
    text: `we finished at 180', got 7 gpm on air, SWL 46. 6" casing to 22'. set the pump at 160 if you want my opinion.
`,
    read: {
      'well.depth': '180 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '22 ft',
      'water.staticLevel': '46 ft',
      'well.yield': '7 gpm',
      'well.yieldFrom': 'air lift',
    },
    left: [],
  },
  {
    name: 'a report with a test in one line and a production casing',
    text: `Total Depth Drilled: 500 FT  Completed Depth: 500 FT
Static Water Level: 157.5 FT BGL  Artesian Flow: NO
Pump Test: 24 HR @ 15 GPM  Drawdown: 83 FT
Production Casing: 5" SDR 17 PVC 0' - 400'
Screen: 5" 0.020 slot PVC 400' to 480'
Gravel Pack: 380' to 500'
Annular Seal: Cement 0 to 50'
`,
    read: {
      'well.depth': '500 ft',
      'well.casing.size': '5 in',
      'well.casing.material': 'PVC',
      'well.casing.schedule': 'SDR 17',
      'well.casing.bottom': '400 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '400 ft', bottom: '480 ft' }],
      'well.grout': [{ bottom: '50 ft' }],
      'water.staticLevel': '157.5 ft',
      'water.pumping.flow': '15 gpm',
      'water.pumping.drawdown': '83 ft',
      'water.pumping.after': '24 h',
      'well.yieldFrom': 'pump',
    },
    left: [],
  },
  {
    name: 'a report of sizes and lengths',
    text: `Hole size: 8 3/4 inches to 40 feet, 6 inches to 225 feet
Casing: 40 feet of 6 5/8 inch OD, 17 lb/ft steel, 2 feet above ground
The static water level was measured at 31 feet 4 inches below land surface on June 3, 2019.
Test: bailed at 10 gpm for 2 hours with a drawdown of 60 feet.
`,
    read: {
      'well.casing.size': '6-5/8 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '40 ft',
      'well.casing.height': '2 ft',
      'well.intake.diameter': '6 in',
      'water.staticLevel': '31.333 ft',
      'water.pumping.flow': '10 gpm',
      'water.pumping.drawdown': '60 ft',
      'water.pumping.after': '2 h',
      'well.yieldFrom': 'bailer',
    },
    doubts: { 'well.casing.bottom': 'length', 'well.intake.diameter': 'two' },
    left: ['Hole size: 8 3/4 inches to 40 feet, 6 inches to 225 feet'],
  },
  {
    name: 'values that say nothing',
    text: `Depth: 52 m
Niveau: n/a
SWL: N/A
Yield: unknown
`,
    read: { 'well.depth': '52 m' },
    left: [],
  },
  {
    name: 'a log without a unit',
    text: `LITHOLOGY
FROM TO DESCRIPTION
0 3 Fill
3 18 Silty sand, brown
18 44 Limestone grey
44 90 Limestone, water at 71 and 83
`,
    read: {
      'well.layers': [
        { material: 'fill', bottom: '3 ft' },
        { material: 'silty sand, brown', bottom: '18 ft' },
        { material: 'limestone grey', bottom: '44 ft' },
        { material: 'limestone, water at and', bottom: '90 ft' },
      ],
    },
    doubts: { 'well.layers': 'unit' },
    left: [],
  },
  {
    name: 'one of three wells, with levels of two years',
    text: `Well 2 of 3. Depth 410'. Static 38' (2003), 52' (2020).
`,
    read: { 'well.depth': '410 ft', 'water.staticLevel': '38 ft' },
    doubts: { 'water.staticLevel': 'two' },
    left: ['Well 2 of 3.'],
  },
  {
    name: 'a pump in one line',
    text: `Pump: 1/2 HP submersible, 3 wire, set 120 ft on 1" poly
Well depth 140 ft, water at 30 ft, recovers 2 gpm
`,
    read: { 'well.depth': '140 ft', 'pump.setting': '120 ft', 'pump.power': '1/2 hp' },
    doubts: { 'pump.setting': 'standing' },
    left: ['Well depth 140 ft, water at 30 ft, recovers 2 gpm'],
  },
  {
    name: 'a letter with a half',
    text: `The well is one hundred eighty feet deep, cased to twenty-one feet with six-inch pipe. It yields three and a half gallons per minute. The water stands at twenty feet.
`,
    read: {
      'well.depth': '180 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '21 ft',
      'water.staticLevel': '20 ft',
      'well.yield': '3.5 gpm',
    },
    left: [],
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
