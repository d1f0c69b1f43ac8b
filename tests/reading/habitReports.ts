/** Invented reports, a habit or a trap each, and all that may be read from them. */
import type { Report } from './reports.ts';

export const HABIT_REPORTS: readonly Report[] = [
  {
    name: 'adequate',
    text: `Total depth: 150 ft
Yield: adequate
Static: 25 ft
`,
    read: { 'well.depth': '150 ft', 'water.staticLevel': '25 ft' },
  },
  {
    name: 'air pumping level',
    text: `Total depth: 325 ft
Static water level: 40 ft
Test method: air
Yield: 6 gpm
Pumping level: 320 ft
Drawdown: 280 ft
Hours: 1
`,
    read: { 'well.depth': '325 ft', 'water.staticLevel': '40 ft', 'well.yield': '6 gpm', 'well.yieldFrom': 'air lift' },
    asides: ['airLevel'],
  },
  {
    name: 'approximate',
    text: `Well depth: approx. 145 ft
Static: +/- 30 ft
Est. yield 4 gpm
`,
    read: { 'well.depth': '145 ft', 'water.staticLevel': '30 ft', 'well.yield': '4 gpm' },
  },
  {
    name: 'at least',
    text: `Completed depth: 95 ft
Yield: 50+ gpm
Static level: 9 ft
`,
    read: { 'well.depth': '95 ft', 'water.staticLevel': '9 ft', 'well.yield': '50 gpm' },
  },
  {
    name: 'bailer test',
    text: `DEPTH OF COMPLETED WELL: 118 ft.
STATIC LEVEL: 24 ft. below land surface
WELL TESTS
Bailer test 12 gal./min. with 31 ft. drawdown after 1 hrs.
`,
    read: {
      'well.depth': '118 ft',
      'water.staticLevel': '24 ft',
      'water.pumping.flow': '12 gpm',
      'water.pumping.drawdown': '31 ft',
      'water.pumping.after': '1 h',
      'well.yieldFrom': 'bailer',
    },
  },
  {
    name: 'casing top',
    text: `Completed well depth: 200 ft
Casing stickup: 1.5 ft
Static water level: 64 ft below top of casing
`,
    read: { 'well.depth': '200 ft', 'well.casing.height': '1.5 ft', 'water.staticLevel': '62.5 ft' },
    doubts: { 'water.staticLevel': 'takenOff' },
  },
  {
    name: 'cubic metres',
    text: `Total depth: 52 m
SWL: 14.1 m
Well yield: 2.4 m3/h
`,
    read: { 'well.depth': '52 m', 'water.staticLevel': '14.1 m', 'well.yield': '2.4 m3/h' },
  },
  {
    name: 'depth and thousands',
    text: `Total well depth: 1,250 ft
Static water level: 410 ft
Yield: 3 gpm
`,
    read: { 'well.depth': '1250 ft', 'water.staticLevel': '410 ft', 'well.yield': '3 gpm' },
  },
  {
    name: 'depths from casing',
    text: `All depths measured from top of casing
Casing height above ground: 2 ft
Total depth: 202 ft
Static level: 41 ft
`,
    read: {
      'well.depthsFrom': 'casing top',
      'well.depth': '202 ft',
      'well.casing.height': '2 ft',
      'water.staticLevel': '41 ft',
    },
  },
  {
    name: 'does not add up',
    text: `Completed depth: 260 ft
Static water level: 50 ft
Pumping level: 120 ft
Drawdown: 95 ft
Pumped at 10 gpm for 2 hours
`,
    read: {
      'well.depth': '260 ft',
      'water.staticLevel': '50 ft',
      'water.pumping.flow': '10 gpm',
      'water.pumping.drawdown': '95 ft',
      'water.pumping.after': '2 h',
      'well.yieldFrom': 'pump',
    },
    doubts: { 'water.pumping.drawdown': 'unlike' },
  },
  {
    name: 'drilled and completed',
    text: `Depth drilled: 340 ft
Completed depth: 322 ft
Static level: 80 ft
`,
    read: { 'well.depth': '322 ft', 'water.staticLevel': '80 ft' },
    asides: ['drilledDeeper'],
  },
  {
    name: 'first water',
    text: `Water first encountered at 85 ft
Depth to first water: 85 ft
Static water level: 31 ft
Completed depth: 160 ft
`,
    read: { 'well.depth': '160 ft', 'water.staticLevel': '31 ft' },
    asides: ['firstWater'],
  },
  {
    name: 'flowing',
    text: `Completed depth: 130 ft
Static water level: 4 ft above ground
Flowing: yes, 3 gpm
Shut-in pressure: 2 psi
`,
    read: { 'well.depth': '130 ft', 'water.staticLevel': '-4 ft' },
    asides: ['artesianFlow'],
  },
  {
    name: 'gallons an hour',
    text: `Well depth: 420 ft
Static level: 95 ft
Yield: 40 gph by bailer
`,
    read: { 'well.depth': '420 ft', 'water.staticLevel': '95 ft', 'well.yield': '40 gph', 'well.yieldFrom': 'bailer' },
  },
  {
    name: 'imperial gallons',
    text: `Total depth: 160 ft
Static level: 22 ft
Yield: 5 igpm
`,
    read: { 'well.depth': '160 ft', 'water.staticLevel': '22 ft', 'well.yield': '6.005 gpm' },
  },
  {
    name: 'inline form',
    text: `WELL DEPTH 172 FT CASING DEPTH 98 FT STATIC LEVEL 37 FT YIELD 14 GPM
`,
    read: {
      'well.depth': '172 ft',
      'well.casing.bottom': '98 ft',
      'water.staticLevel': '37 ft',
      'well.yield': '14 gpm',
    },
  },
  {
    name: 'labelled metric',
    text: `WATER WELL RECORD
Finished well depth: 67.1 m
Static level: 18.9 m
Pumping level: 31.7 m
Pumping rate: 45 L/min
Duration of test: 2 h
Casing inside diameter: 15.5 cm
Casing material: steel
Casing depth: 27.4 m
Casing stick-up: 0.5 m
`,
    read: {
      'well.depth': '67.1 m',
      'well.casing.insideDiameter': '155 mm',
      'well.casing.material': 'steel',
      'well.casing.bottom': '27.4 m',
      'well.casing.height': '0.5 m',
      'water.staticLevel': '18.9 m',
      'water.pumping.flow': '45 L/min',
      'water.pumping.level': '31.7 m',
    },
    asides: ['noPlace'],
  },
  {
    name: 'labelled us',
    text: `WELL COMPLETION REPORT
Owner: (not given)          County: Invented
Date drilled: 05/14/2018
Well depth: 220 ft
Casing: 6 in steel, 0.250 wall, +1.5 to 90 ft
Grout: cement, 0 - 90 ft
Open hole: 6 in from 90 to 220 ft
Static water level: 62 ft below ground
Pump test: pumped 4 hours at 12 gpm, drawdown 42 ft
Recommended pump setting: 180 ft
`,
    read: {
      'well.depth': '220 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.25 in',
      'well.casing.bottom': '90 ft',
      'well.casing.height': '1.5 ft',
      'well.intake.kind': 'open hole',
      'well.intake.diameter': '6 in',
      'well.grout': [{ bottom: '90 ft' }],
      'water.staticLevel': '62 ft',
      'well.tested': '05/14/2018',
      'water.pumping.flow': '12 gpm',
      'water.pumping.drawdown': '42 ft',
      'water.pumping.after': '4 h',
      'well.yieldFrom': 'pump',
      'pump.setting': '180 ft',
    },
  },
  {
    name: 'layers after',
    text: `GEOLOGIC LOG (feet)
Clay, red          0    22
Decomposed granite 22   70
Granite            70   310
Static water level: 57 ft
`,
    read: {
      'well.layers': [
        { material: 'clay, red', bottom: '22 ft' },
        { material: 'decomposed granite', bottom: '70 ft' },
        { material: 'granite', bottom: '310 ft' },
      ],
      'water.staticLevel': '57 ft',
    },
  },
  {
    name: 'layers lines',
    text: `Total depth 140 ft
0-6 ft topsoil
6-40 ft blue clay
40-90 ft sand and gravel
90-140 ft limestone
Static level 33 ft
`,
    read: {
      'well.depth': '140 ft',
      'well.layers': [
        { material: 'topsoil', bottom: '6 ft' },
        { material: 'blue clay', bottom: '40 ft' },
        { material: 'sand and gravel', bottom: '90 ft' },
        { material: 'limestone', bottom: '140 ft' },
      ],
      'water.staticLevel': '33 ft',
    },
  },
  {
    name: 'letter first water',
    text: `Hi, we hit water at 140 feet and got some more at 210 feet. Total depth is
265 feet. The static water level is 88 feet. Good luck with it.
`,
    read: { 'well.depth': '265 ft', 'water.staticLevel': '88 ft' },
    asides: ['firstWater'],
  },
  {
    name: 'letter installed',
    text: `Your pump is hung at 240 feet on poly pipe. The well is 300 feet deep and
the static level was 66 feet when we left. We tested the well with a pump at
9 gpm for 3 hours and the drawdown was 51 feet. The pitless adapter is at 5 feet.
`,
    read: {
      'well.depth': '300 ft',
      'water.staticLevel': '66 ft',
      'water.pumping.flow': '9 gpm',
      'water.pumping.drawdown': '51 ft',
      'water.pumping.after': '3 h',
      'well.yieldFrom': 'pump',
      'pump.setting': '240 ft',
      'top.kind': 'pitless',
      'top.depth': '5 ft',
    },
  },
  {
    name: 'letter',
    text: `Dear neighbor of the mill,

We finished your well on 3 May 2019. It is drilled to four hundred and five feet,
with 6 inch steel casing set to 62 feet and open hole below that. The water
came up and stands at 48 feet below the ground. We blew the well with air for
two hours and it made about seven gallons per minute.

I recommend that you hang the pump at 340 feet and pump no more than 5 gpm.
`,
    read: {
      'well.depth': '405 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '62 ft',
      'well.intake.kind': 'open hole',
      'water.staticLevel': '48 ft',
      'well.yield': '7 gpm',
      'well.yieldFrom': 'air lift',
      'pump.setting': '340 ft',
    },
    asides: ['noPlace'],
  },
  {
    name: 'liner',
    text: `Completed depth: 360 ft
Casing: 6 in steel 0 to 42 ft
Liner: 4 in PVC from 20 to 360 ft, perforated 280 to 360 ft
Static level: 88 ft
`,
    read: {
      'well.depth': '360 ft',
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '42 ft' },
        { material: 'PVC', size: '4 in', top: '20 ft', bottom: '360 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '280 ft', bottom: '360 ft' }],
      'water.staticLevel': '88 ft',
    },
  },
  {
    name: 'metric table',
    text: `WELL CONSTRUCTION REPORT
Final well depth: 48.8 m
Casing details
From (m)   To (m)   Casing type   Casing material   Diameter (cm)   Wall (mm)
-0.6       21.3     surface       Steel             16.8            6.4
Screen details
From (m)   To (m)   Diameter (cm)   Slot (mm)
42.7       45.7     12.7            0.5
Static water level: 7.9 m below top of casing
Estimated well yield: 30 L/min
`,
    read: {
      'well.depth': '48.8 m',
      'well.casing.size': '168 mm',
      'well.casing.material': 'steel',
      'well.casing.schedule': '6.4 mm',
      'well.casing.bottom': '21.3 m',
      'well.casing.height': '0.6 m',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '42.7 m', bottom: '45.7 m', slot: '0.5 mm' }],
      'water.staticLevel': '7.3 m',
      'well.yield': '30 L/min',
    },
    doubts: { 'water.staticLevel': 'takenOff' },
  },
  {
    name: 'mixed units',
    text: `Completed depth: 244 ft
Static water level: 17.7 m
Casing depth: 80
`,
    read: { 'well.depth': '244 ft', 'well.casing.bottom': '80 ft', 'water.staticLevel': '17.7 m' },
    doubts: { 'well.casing.bottom': 'unit' },
  },
  {
    name: 'no units',
    text: `Completed depth: 244
Static water level: 58
Yield: 11
`,
    read: { 'well.depth': '244 ft', 'water.staticLevel': '58 ft', 'well.yield': '11 gpm' },
    doubts: { 'well.depth': 'unit', 'water.staticLevel': 'unit', 'well.yield': 'unit' },
  },
  {
    name: 'not given',
    text: `Completed depth: 210 ft
Static water level: N/A
Yield: unknown
Drawdown: not measured
Liner: none
`,
    read: { 'well.depth': '210 ft' },
  },
  {
    name: 'number words',
    text: `The well is two hundred sixty feet deep. Static level forty-two feet.
It was tested with a pump at six and a half gallons per minute for one hour.
Drawdown eighty feet.
`,
    read: {
      'well.depth': '260 ft',
      'water.staticLevel': '42 ft',
      'water.pumping.flow': '6.5 gpm',
      'water.pumping.drawdown': '80 ft',
      'water.pumping.after': '1 h',
      'well.yieldFrom': 'pump',
    },
  },
  {
    name: 'od and wall',
    text: `Well depth: 240 ft
Casing 6-5/8" OD x .250" wall steel, set to 61 ft
Static: 35 ft
`,
    read: {
      'well.depth': '240 ft',
      'well.casing.size': '6-5/8 in',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.25 in',
      'well.casing.bottom': '61 ft',
      'water.staticLevel': '35 ft',
    },
  },
  {
    name: 'other flow units',
    text: `Well depth: 40 m
Static level: 6.2 m
Pumped at 0.5 L/s for 90 min
Drawdown 11.4 m
`,
    read: {
      'well.depth': '40 m',
      'water.staticLevel': '6.2 m',
      'water.pumping.flow': '0.5 L/s',
      'water.pumping.drawdown': '11.4 m',
      'water.pumping.after': '90 min',
      'well.yieldFrom': 'pump',
    },
  },
  {
    name: 'other wells and numbers',
    text: `Permit no. 4521-88   Tag: 300 ft
Phone: (555) 010-2000
Lot 12, Section 14, Township 22 N, Range 4 E
Elevation: 1,420 ft
Distance to septic tank: 120 ft
Neighbor's well: 340 ft deep, static 90 ft
Invoice total: 8,450
Completed depth: 185 ft
Static water level: 29 ft
`,
    read: { 'well.depth': '185 ft', 'water.staticLevel': '29 ft' },
  },
  {
    name: 'pump depth only',
    text: `Completed depth: 260 ft
Static level: 70 ft
Pump depth: 210 ft
`,
    read: { 'well.depth': '260 ft', 'water.staticLevel': '70 ft', 'pump.setting': '210 ft' },
    doubts: { 'pump.setting': 'standing' },
  },
  {
    name: 'pump installed',
    text: `Completed depth: 260 ft
Static level: 70 ft
Pump installed at 210 ft, 3/4 hp submersible
`,
    read: { 'well.depth': '260 ft', 'water.staticLevel': '70 ft', 'pump.setting': '210 ft', 'pump.power': '3/4 hp' },
  },
  {
    name: 'ranges',
    text: `Well depth 300 ft
Static level 60-65 ft
Yield 10 to 12 gpm
`,
    read: { 'well.depth': '300 ft', 'water.staticLevel': '65 ft', 'well.yield': '10 gpm' },
    doubts: { 'water.staticLevel': 'range', 'well.yield': 'range' },
  },
  {
    name: 'recommended',
    text: `Depth of completed well: 240 ft
Static level: 55 ft
Well yield: 10 gpm
Recommended pump depth: 200 ft
Recommended pumping rate: 8 gpm
Recommended pump type: submersible
`,
    read: { 'well.depth': '240 ft', 'water.staticLevel': '55 ft', 'well.yield': '10 gpm', 'pump.setting': '200 ft' },
    asides: ['recommendedRate'],
  },
  {
    name: 'ruled',
    text: `| Depth drilled | 260 ft |
| SWL           | 71 ft  |
| Yield         | 5 gpm  |

CASING RECORD
| Size | Kind  | From | To    |
|------|-------|------|-------|
| 6"   | PVC   | 0    | 60 ft |

LITHOLOGY
| From | To  | Material         |
| 0    | 12  | clay             |
| 12   | 55  | weathered schist |
| 55   | 260 | schist           |
`,
    read: {
      'well.depth': '260 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'PVC',
      'well.casing.bottom': '60 ft',
      'well.layers': [
        { material: 'clay', bottom: '12 ft' },
        { material: 'weathered schist', bottom: '55 ft' },
        { material: 'schist', bottom: '260 ft' },
      ],
      'water.staticLevel': '71 ft',
      'well.yield': '5 gpm',
    },
  },
  {
    name: 'sand point',
    text: `Driven point well, 2 in steel casing to 18 ft
Screen from 18 to 21 ft
Static level 9 ft
`,
    read: {
      'well.casing.size': '2 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '18 ft',
      'well.intake.kind': 'driven point',
      'well.intake.screens': [{ top: '18 ft', bottom: '21 ft' }],
      'water.staticLevel': '9 ft',
    },
  },
  {
    name: 'sections',
    text: `GENERAL
Completed depth ........ 305 ft
CASING
  Diameter: 6 5/8 in
  Material: steel
  Depth: 105 ft
GROUT
  From 0 ft to 50 ft
WELL TEST
  Method: air lift
  Yield: 8 gpm
  Drill stem at: 300 ft
  Duration: 1 hour
WATER LEVEL
  Static: 45'6"
`,
    read: {
      'well.depth': '305 ft',
      'well.casing.size': '6-5/8 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '105 ft',
      'well.grout': [{ bottom: '50 ft' }],
      'water.staticLevel': '45.5 ft',
      'well.yield': '8 gpm',
      'well.yieldFrom': 'air lift',
    },
    asides: ['testIntake', 'noPlace'],
  },
  {
    name: 'signed level',
    text: `Completed depth: 130 ft
Static water level: +3 ft
`,
    read: { 'well.depth': '130 ft', 'water.staticLevel': '-3 ft' },
    doubts: { 'water.staticLevel': 'plus' },
  },
  {
    name: 'tables us',
    text: `DRILLER'S REPORT
Total depth 180 feet

CASING
Dia (in)   From (ft)   To (ft)   Material   Wall (in)
6          +2          140       Steel      .250

SCREEN
Dia (in)   Slot    From (ft)   To (ft)
5          .020    140         150

FORMATION LOG
From (ft)  To (ft)   Description
0          3         Topsoil
3          62        Clay, brown, stony
62         118       Hardpan
118        180       Sand & gravel, water bearing

Static water level 38 feet      Tested yield: 20 gpm
`,
    read: {
      'well.depth': '180 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.25 in',
      'well.casing.bottom': '140 ft',
      'well.casing.height': '2 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '140 ft', bottom: '150 ft', slot: '0.02 in' }],
      'well.layers': [
        { material: 'topsoil', bottom: '3 ft' },
        { material: 'clay, brown, stony', bottom: '62 ft' },
        { material: 'hardpan', bottom: '118 ft' },
        { material: 'sand & gravel, water bearing', bottom: '180 ft' },
      ],
      'water.staticLevel': '38 ft',
      'well.yield': '20 gpm',
    },
  },
  {
    name: 'test pump',
    text: `Well depth: 280 ft
PUMP TEST
Test pump intake set at: 240 ft
Static water level: 66 ft
Pumped at 15 gpm for 24 hours
Pumping level: 142 ft
`,
    read: {
      'well.depth': '280 ft',
      'water.staticLevel': '66 ft',
      'water.pumping.flow': '15 gpm',
      'water.pumping.level': '142 ft',
      'well.yieldFrom': 'pump',
    },
    asides: ['testIntake', 'noPlace'],
  },
  {
    name: 'thousands metric',
    text: `Well depth: 1,250 m
Static level: 12,5 m
`,
    read: { 'well.depth': '1250 m', 'water.staticLevel': '12.5 m' },
    doubts: { 'well.depth': 'comma' },
  },
  {
    name: 'ticked boxes',
    text: `Completed depth: 300 ft
Static water level: 75 ft
WELL TEST
Method: [ ] pump  [ ] bailer  [x] air lift
Yield: 15 gpm
Pumping level: 290 ft
`,
    read: {
      'well.depth': '300 ft',
      'water.staticLevel': '75 ft',
      'well.yield': '15 gpm',
      'well.yieldFrom': 'air lift',
    },
    asides: ['airLevel'],
  },
  {
    name: 'two casings',
    text: `Completed depth: 420 ft
CASING
Size    Material   From    To
10 in   steel      0 ft    40 ft
6 in    steel      +2 ft   180 ft
Open hole 6 in 180 to 420 ft
Static 95 ft
`,
    read: {
      'well.depth': '420 ft',
      'well.casings': [
        { material: 'steel', size: '10 in', bottom: '40 ft' },
        { material: 'steel', size: '6 in', bottom: '180 ft', height: '2 ft' },
      ],
      'well.intake.kind': 'open hole',
      'well.intake.diameter': '6 in',
      'water.staticLevel': '95 ft',
    },
  },
  {
    name: 'two levels no dates',
    text: `Completed depth: 260 ft
Static level: 70 ft
Remarks below
Water level at rest: 84 ft
`,
    read: { 'well.depth': '260 ft', 'water.staticLevel': '70 ft' },
    doubts: { 'water.staticLevel': 'two' },
  },
  {
    name: 'two static levels',
    text: `Depth: see log
Well depth: 190 ft
Static water level 52 ft on 2016-06-10
Static water level 61 ft on 2021-09-30
`,
    read: { 'well.depth': '190 ft', 'water.staticLevel': '61 ft' },
    asides: ['earlier'],
  },
  {
    name: 'under a gallon',
    text: `Depth of well: 505 feet
Static water level: 110 feet
Yield: <1 gpm
`,
    read: { 'well.depth': '505 ft', 'water.staticLevel': '110 ft', 'well.yield': '1 gpm' },
    doubts: { 'well.yield': 'less' },
  },
  {
    name: 'unit of the report',
    text: `All depths in feet below ground level
Completed depth: 244
Static water level: 58
Yield: 11 gpm
`,
    read: { 'well.depthsFrom': 'ground', 'well.depth': '244 ft', 'water.staticLevel': '58 ft', 'well.yield': '11 gpm' },
  },
  {
    name: 'units in labels',
    text: `Well Depth (ft): 244
Static Water Level (ft): 58
Pumping Level (ft): 133
Yield (gpm): 11
Hours pumped: 6
Casing Diameter (in): 6
Casing Depth (ft): 81
`,
    read: {
      'well.depth': '244 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '81 ft',
      'water.staticLevel': '58 ft',
      'water.pumping.flow': '11 gpm',
      'water.pumping.level': '133 ft',
      'well.yieldFrom': 'pump',
    },
  },
  {
    name: 'wrapped columns',
    text: `Static level 62 ft          Yield 8 gpm
Depth drilled 240 ft        Casing 6 in steel to 50 ft

FORMATION LOG
From   To    Description
0      50    Clay with cobbles and some
             boulders
50     240   Granite
`,
    read: {
      'well.depth': '240 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '50 ft',
      'well.layers': [
        { material: 'clay with cobbles and some boulders', bottom: '50 ft' },
        { material: 'granite', bottom: '240 ft' },
      ],
      'water.staticLevel': '62 ft',
      'well.yield': '8 gpm',
    },
  },
  {
    name: 'zones cumulative',
    text: `Depth drilled: 400 ft
Static: 50 ft
Total yield: 9 gpm
Water zones: 120 ft 2 gpm, 260 ft 5 gpm, 385 ft 9 gpm
`,
    read: {
      'well.depth': '400 ft',
      'well.inflows': [{ depth: '120 ft' }, { depth: '260 ft' }, { depth: '385 ft' }],
      'water.staticLevel': '50 ft',
      'well.yield': '9 gpm',
    },
  },
  {
    name: 'zones list',
    text: `Well depth 275 ft
Water bearing fractures at 110, 160 and 240 ft
Static water level 44 ft
`,
    read: {
      'well.depth': '275 ft',
      'well.inflows': [{ depth: '110 ft' }, { depth: '160 ft' }, { depth: '240 ft' }],
      'water.staticLevel': '44 ft',
    },
  },
  {
    name: 'zones percent',
    text: `Well depth 275 ft
Fractures at 160 ft (30 %) and 240 ft (70 %)
Static water level 44 ft
`,
    read: {
      'well.depth': '275 ft',
      'well.inflows': [
        { depth: '160 ft', share: '30 %' },
        { depth: '240 ft', share: '70 %' },
      ],
      'water.staticLevel': '44 ft',
    },
  },
];
