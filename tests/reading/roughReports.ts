/** Invented reports as they come: letters, invoices, field notes, forms that came apart. */
import type { Report } from './reports.ts';

export const ROUGH_REPORTS: readonly Report[] = [
  {
    name: 'above ground',
    text: `STATIC WATER LEVEL 12' ABOVE GROUND SURFACE
SWL: -12 ft
Depth to static: 18 ft above MSL
Static water elevation 1,204 ft
`,
    read: { 'water.staticLevel': '-12 ft' },
    doubts: { 'water.staticLevel': 'two' },
  },
  {
    name: 'advice on pump',
    text: `Depth: 305 ft        Diameter: 6 in        Casing: 62 ft       Static: 28 ft
Yield: 4 gpm @ 300 ft after 1 hr air lift
Screen: none   Liner: 4 1/2" PVC SDR 26 from 10 ft to 305 ft, slotted 200-300 ft
Pump: 1/2 HP set at 260 ft, recommended
Water quality: iron 0.3 mg/L, hardness 12 gpg, pH 6.8
`,
    read: {
      'well.depth': '305 ft',
      'well.casings': [
        { size: '6 in', bottom: '62 ft' },
        { material: 'PVC', size: '4-1/2 in', schedule: 'SDR 26', top: '10 ft', bottom: '305 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '200 ft', bottom: '300 ft' }],
      'water.staticLevel': '28 ft',
      'well.yield': '4 gpm',
      'well.yieldFrom': 'air lift',
      'pump.setting': '260 ft',
    },
    asides: ['noPlace'],
  },
  {
    name: 'bare figures',
    text: `Well Depth: 300
Static Level: 45
Casing Depth: 60
Casing Size: 6
Yield: 5
`,
    read: {
      'well.depth': '300 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '60 ft',
      'water.staticLevel': '45 ft',
      'well.yield': '5 gpm',
    },
    doubts: { 'well.depth': 'unit', 'well.casing.bottom': 'unit', 'water.staticLevel': 'unit', 'well.yield': 'unit' },
  },
  {
    name: 'blank casing',
    text: `CASING & SCREEN
Blank casing  5 in PVC   +1 - 80 ft
Screen        5 in PVC   80 - 100 ft   0.020 slot
Blank casing  5 in PVC   100 - 105 ft
Total depth 105 ft
`,
    read: {
      'well.depth': '105 ft',
      'well.casings': [
        { material: 'PVC', size: '5 in', bottom: '80 ft', height: '1 ft' },
        { material: 'PVC', size: '5 in', top: '100 ft', bottom: '105 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '80 ft', bottom: '100 ft' }],
    },
  },
  {
    name: 'both units',
    text: `Well depth: 61.0 m (200 ft)
Static water level: 12.2 m (40 ft)
Casing: 168 mm OD x 6.4 mm wall steel to 24.4 m (80 ft)
Yield: 38 L/min (10 USgpm)
Airlifted for 1 hour, water level while pumping at bottom
Bedrock at 22 m (72 ft)
Stick-up 0.45 m
`,
    read: {
      'well.depth': '61 m',
      'well.casing.size': '168 mm',
      'well.casing.material': 'steel',
      'well.casing.bottom': '24.4 m',
      'well.casing.height': '0.45 m',
      'water.staticLevel': '12.2 m',
      'well.yield': '38 L/min',
    },
    asides: ['noPlace'],
  },
  {
    name: 'column form',
    text: `WELL RECORD                                    Measurements recorded in:  [x] Metric [ ] Imperial
Overburden and Bedrock Materials
General Colour  Most Common Material  Other Materials  General Description   Depth (m) From  To
Brown           Clay                  Stones           Hard                  0      5.5
Grey            Limestone             Shale            Layered               5.5    45.7
Annular Space
Depth Set at (m) From  To    Type of Sealant Used   Volume Placed (m3)
0                6.1         Bentonite slurry       0.12
Results of Well Yield Testing
Pumping rate (L/min): 36      Duration of pumping: 1 hrs + 0 min
Final water level end of pumping (m): 18.3
Pump intake set at (m): 40
Recommended pump depth (m): 38
Recommended pump rate (L/min): 30
Well production (L/min): 36
Static level (m): 7.62
Construction Record - Casing
Inside Diameter (cm)  Open Hole OR Material  Wall Thickness (cm)  Depth (m) From   To
15.86                 Steel                  0.48                 -0.6             6.7
15.24                 Open Hole                                   6.7              45.7
Water Details
Water found at Depth: 38.1 (m)   Kind of Water: Fresh
`,
    read: {
      'well.casing.insideDiameter': '158.6 mm',
      'well.casing.material': 'steel',
      'well.casing.schedule': '0.48 cm',
      'well.casing.bottom': '6.7 m',
      'well.casing.height': '0.6 m',
      'well.intake.kind': 'open hole',
      'well.layers': [
        { material: 'brown clay stones hard', bottom: '5.5 m' },
        { material: 'grey limestone shale layered', bottom: '45.7 m' },
      ],
      'well.grout': [{ bottom: '6.1 m' }],
      'water.pumping.flow': '36 L/min',
      'water.pumping.level': '18.3 m',
      'pump.setting': '38 m',
    },
    asides: ['noPlace', 'testIntake', 'recommendedRate'],
  },
  {
    name: 'deepened',
    text: `Well was deepened from 200 ft to 340 ft in 2012.
Original depth 200 ft. New total depth: 340 ft
Static water level before pumping: 40 ft
Water level after 2 hours pumping at 8 gpm: 120 ft
Water level after recovery 1 hour: 45 ft
Maximum pump setting 300 ft
Do not set pump below 310 ft.
Set pump at 280 ft.
`,
    read: { 'well.depth': '340 ft', 'water.staticLevel': '40 ft', 'well.yield': '8 gpm', 'pump.setting': '300 ft' },
    doubts: { 'pump.setting': 'standing' },
    asides: ['noPlace'],
  },
  {
    name: 'depths of',
    text: `Completion date: 5/2/2011
Depth to bedrock 31 ft
Depth of casing 50 ft
Depth of grout 50 ft
Depth of pump 200 ft
Depth of water 45 ft
Depth of well 260 ft
Diameter of casing 6 in
Height of casing above grade 18 in
`,
    read: {
      'well.depth': '260 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '50 ft',
      'well.casing.height': '18 in',
      'well.grout': [{ bottom: '50 ft' }],
      'well.tested': '5/2/2011',
      'pump.setting': '200 ft',
    },
    doubts: { 'pump.setting': 'standing' },
  },
  {
    name: 'driller note',
    text: `The casing stands 2 feet out of the ground and the static level was 64 feet below the top of it.
The driller's note says casing 6", 40'. He drilled through 15 feet of clay and then rock to 260 feet.
They got two gallons per minute at 120 feet and six gallons per minute in all.
`,
    read: {
      'well.casing.size': '6 in',
      'well.casing.height': '2 ft',
      'water.staticLevel': '62 ft',
      'well.yield': '2 gpm',
    },
    doubts: { 'water.staticLevel': 'takenOff', 'well.yield': 'two' },
  },
  {
    name: 'field notes',
    text: `DRILLING LOG / FIELD NOTES
TD 265'   SWL 41'   GPM 7   csg 6" 53'   HP 3/4
0-12 dirt & rock
12-50 brn clay
50-265 blk shale w/ qtz
WB @ 120' 1 gpm, 210' 2 gpm, 250' 4 gpm
Hit H2O 120
`,
    read: {
      'well.layers': [
        { material: 'dirt & rock', bottom: '12 ft' },
        { material: 'brn clay', bottom: '50 ft' },
        { material: 'blk shale w qtz', bottom: '265 ft' },
      ],
      'water.staticLevel': '41 ft',
      'pump.power': '3/4 hp',
    },
  },
  {
    name: 'filled in',
    text: `The static water level was 40 feet and we set the test pump at 200 feet, pumping 10 gpm for 4 hours with the level
drawing down to 95 feet.
Total depth of the hole is 250 feet. The bottom 10 feet filled in with sand so the finished depth is 240 feet.
`,
    read: { 'well.depth': '240 ft', 'water.staticLevel': '40 ft', 'well.yield': '10 gpm', 'well.yieldFrom': 'pump' },
    asides: ['drilledDeeper', 'testIntake', 'noPlace'],
  },
  {
    name: 'fractured',
    text: `WELL LOG
0 - 20' Overburden
20' - 300' Gray granite. Water at 80' (1/2 gpm), 210' (2 gpm), 275' (10 gpm)
Casing 40' of 6" steel, 20' grouted
Yield 12.5 gpm static 18'
Developed by surging 2 hours
Hydrofractured at 2500 psi, yield before 1 gpm, yield after 12.5 gpm
`,
    read: {
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.casing.bottom': '40 ft',
      'well.layers': [
        { material: 'overburden', bottom: '20 ft' },
        { material: 'gray granite', bottom: '300 ft' },
      ],
      'well.grout': [{ bottom: '20 ft' }],
      'water.staticLevel': '18 ft',
      'well.yield': '12.5 gpm',
    },
    doubts: { 'well.casing.bottom': 'length' },
  },
  {
    name: 'inches and feet',
    text: `Static 6' 3" below grade, yield 20-25 gpm.
Casing: 5 in. I.D. PVC Sch 40 glued, 112'
Screen: 4" x 10' #12 slot PVC, 112' to 122'
Total 122'
`,
    read: {
      'well.casing.size': '5 in',
      'well.casing.material': 'PVC',
      'well.casing.schedule': 'schedule 40',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '112 ft', bottom: '122 ft' }],
      'water.staticLevel': '6.25 ft',
      'well.yield': '20 gpm',
    },
    doubts: { 'well.yield': 'range' },
  },
  {
    name: 'invoice',
    text: `INVOICE 2231
Drilling 340 ft @ 22.00 ............ 7,480.00
6" steel casing 84 ft @ 18.00 ...... 1,512.00
Drive shoe 1 @ 150.00
Grout 20 ft
Well development 2 hours
1 hp pump, 10 gpm, set 280 ft
1-1/4" drop pipe 280 ft
86 gal pressure tank
Static 75', yield 9 gpm
`,
    read: {
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.grout': [{ bottom: '20 ft' }],
      'water.staticLevel': '75 ft',
      'well.yield': '9 gpm',
      'pump.setting': '280 ft',
      'pump.power': '1 hp',
    },
    doubts: { 'pump.setting': 'standing' },
  },
  {
    name: 'letter two dates',
    text: `The well is 6 inches in diameter and 425 feet deep. Casing was driven to 41 feet. Water was found at 180 and 390 feet.
The yield is 3 to 4 gallons per minute. The static level was measured at 55 feet on June 2, 2020 and at 71 feet on
September 9, 2020. The pump hangs at 380 feet. It is a 1 hp pump.
The tank holds 80 gallons. The house is 150 feet from the well.
Frost goes down 48 inches.
`,
    read: {
      'well.depth': '425 ft',
      'well.casing.bottom': '41 ft',
      'water.staticLevel': '71 ft',
      'well.yield': '3 gpm',
      'pump.setting': '380 ft',
      'pump.power': '1 hp',
    },
    doubts: { 'well.yield': 'range' },
    asides: ['earlier'],
  },
  {
    name: 'loose levels',
    text: `depth 200 ft static 50 ft casing 60 ft yield 5 gpm pump 180 ft
first water 85 ft second water 140 ft
The static is 50 feet, give or take.
Water level 50 ft below pump
`,
    read: { 'well.depth': '200 ft', 'water.staticLevel': '50 ft', 'well.yield': '5 gpm' },
    asides: ['firstWater'],
  },
  {
    name: 'mixed columns',
    text: `Casing diameter: 6 in    Casing length: 62 ft     Casing wall: 0.188 in
Grouted from surface to 20 ft with bentonite
Well yields 6 gpm after 1 hour of pumping with 200 ft of drawdown
Static water level 34 ft below land surface on 11-02-2015
Depth 300 ft
Pump intake: 280 ft
`,
    read: {
      'well.depth': '300 ft',
      'well.casing.size': '6 in',
      'well.casing.schedule': '0.188 in',
      'well.casing.bottom': '62 ft',
      'well.grout': [{ bottom: '20 ft' }],
      'water.staticLevel': '34 ft',
      'water.pumping.flow': '6 gpm',
      'water.pumping.drawdown': '200 ft',
      'water.pumping.after': '1 h',
      'pump.setting': '280 ft',
    },
    doubts: { 'well.casing.bottom': 'length', 'pump.setting': 'standing' },
  },
  {
    name: 'narrowing hole',
    text: `Hole: 10 in to 40 ft, 6 in to 300 ft
Open hole below casing
Surface casing: 6 in steel, 40 ft
Static 33 ft Depth 300 ft
Fractures: 88' - 1 gpm; 150' - 2 gpm; 280' - 7 gpm
Total yield 10 gpm
`,
    read: {
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'well.intake.kind': 'open hole',
      'well.inflows': [{ depth: '88 ft' }, { depth: '150 ft' }, { depth: '280 ft' }],
      'water.staticLevel': '33 ft',
      'well.yield': '10 gpm',
    },
  },
  {
    name: 'not flowing',
    text: `Flowing artesian well? No
Artesian: N
Flowing: [ ] yes [x] no
Static water level 20 ft
`,
    read: { 'water.staticLevel': '20 ft' },
  },
  {
    name: 'numbered form',
    text: `WATER WELL REPORT                      Start Card No. W123456
(1) OWNER: Name ___________  Address ____________
(2) LOCATION OF WELL: County Invented  - SW 1/4 NE 1/4 Sec 14 T 22 N R 4 E
(4) TYPE OF WORK: New well  Method: Rotary
(5) DIMENSIONS: Diameter of well 6 inches. Drilled 245 feet. Depth of completed well 240 ft.
(6) CONSTRUCTION DETAILS
    Casing installed: 6" Diam. from +2 ft. to 98 ft.   Welded
                      4" Diam. from 90 ft. to 240 ft.  Liner, PVC
    Perforations: Yes  Type of perforator used: saw   SIZE of perfs 1/8 in. by 6 in.
       60 perforations from 200 ft. to 240 ft.
    Screens: No
    Gravel packed: No
    Surface seal: Yes  To what depth? 20 ft.  Material used in seal: bentonite
(7) PUMP: Manufacturer's name: none    Type:      H.P.
(8) WATER LEVELS: Land-surface elevation above mean sea level 560 ft.
    Static level 47 ft. below top of well   Date 06/12/2009
    Artesian pressure ___ lbs. per square inch
(9) WELL TESTS: Drawdown is amount water level is lowered below static level
    Was a pump test made? No
    Yield: ___ gal./min. with ___ ft. drawdown after ___ hrs.
    Bailer test ___ gal./min. with ___ ft. drawdown after ___ hrs.
    Airtest 14 gal./min. with stem set at 230 ft. for 1 hrs.
    Artesian flow ___ g.p.m.
(10) WELL LOG
    MATERIAL                     FROM   TO
    Top soil                     0      2
    Brown clay & gravel          2      34
    Blue clay                    34     91
    Fractured basalt, H2O        91     245
`,
    read: {
      'well.depth': '240 ft',
      'well.casings': [
        { size: '6 in', bottom: '98 ft', height: '2 ft' },
        { material: 'PVC', size: '4 in', top: '90 ft', bottom: '240 ft' },
      ],
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '200 ft', bottom: '240 ft' }],
      'well.layers': [
        { material: 'top soil', bottom: '2 ft' },
        { material: 'brown clay & gravel', bottom: '34 ft' },
        { material: 'blue clay', bottom: '91 ft' },
        { material: 'fractured basalt, h2o', bottom: '245 ft' },
      ],
      'water.staticLevel': '45 ft',
      'well.tested': '06/12/2009',
      'well.yield': '14 gpm',
      'well.yieldFrom': 'air lift',
    },
    doubts: { 'water.staticLevel': 'takenOff' },
    asides: ['testIntake', 'noPlace'],
  },
  {
    name: 'one line',
    text: `Drilled: 2004
Depth: 300 ft; 6 in casing: 60 ft; static: 45 ft; yield: 5 gpm; pump: 3/4 hp at 240 ft
Screen 250 ft - 260 ft
Static water level not measured; estimated 45 ft
Yield tested? No
`,
    read: {
      'well.depth': '300 ft',
      'well.casing.size': '6 in',
      'well.casing.bottom': '60 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '250 ft', bottom: '260 ft' }],
      'water.staticLevel': '45 ft',
      'well.yield': '5 gpm',
      'pump.power': '3/4 hp',
    },
  },
  {
    name: 'pump to come',
    text: `Pump will be installed at 200 ft next week. Pump: 10 gpm 3/4 hp, set at 190 ft, installed 4/12/2016
Well capacity 22 gpm measured with a bucket.
Depth of well 230 feet from top of casing. Water level 41 ft 3 in from top of casing, May 3 2021
Casing extends 1 ft above grade.
`,
    read: {
      'well.depth': '229 ft',
      'well.casing.height': '1 ft',
      'water.staticLevel': '40.25 ft',
      'well.yield': '22 gpm',
    },
    doubts: { 'well.depth': 'takenOff', 'water.staticLevel': 'takenOff' },
  },
  {
    name: 'record form',
    text: `Static Level: 45 Ft.   Date: 7/8/2012
Pumping Level: 120 Ft. After: 4 Hrs. Pumping At: 10 GPM
Well Depth: 200 Ft.
Casing: Steel [X]  Plastic [ ]  Diameter 6 In. To 60 Ft.
Screen: Make: none
Wellhead completion: pitless adapter; casing 12 in above grade
Grouted: yes, neat cement, from 0 to 60 ft
Nearest source of contamination: septic 100 feet north
Pump: Not installed  HP 3/4 Volts 230 Length of drop pipe 160 ft capacity 10 gpm
`,
    read: {
      'well.depth': '200 ft',
      'well.casing.material': 'steel',
      'well.casing.bottom': '60 ft',
      'well.casing.height': '12 in',
      'well.grout': [{ bottom: '60 ft' }],
      'water.staticLevel': '45 ft',
      'well.tested': '7/8/2012',
      'water.pumping.flow': '10 gpm',
      'water.pumping.level': '120 ft',
    },
    asides: ['noPlace'],
  },
  {
    name: 'second hand',
    text: `Hello again. The man who drilled it told me the well is 480 deep and he cased it 60 feet with 6 and 5/8 casing. He got
1/2 gallon a minute at 200 feet and then 3 gallons a minute more at 430. Static came up to 35 feet overnight.
He said to put the pump at 450 ft. The last owner had a 3/4 hp pump at 300 feet and it sucked air. Our neighbor's
well is 200 feet deep and makes 10 gpm.
We pulled the old pump in 2014 at 310 feet.
`,
    read: { 'water.staticLevel': '35 ft', 'well.yield': '0.5 gpm', 'pump.setting': '450 ft' },
    doubts: { 'well.yield': 'two' },
  },
  {
    name: 'sheet labels',
    text: `Water level, static, measured from top of casing (ft): 33.5
Screen interval (ft below grade): 80-90
Screen slot size: 0.010"
Casing stick-up (ft): 2.5
Yield (gpm): 7.5 by pumping 3 hr
Maximum drawdown (ft): 21
Total depth (ft): 90
`,
    read: {
      'well.depth': '90 ft',
      'well.casing.height': '2.5 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '80 ft', bottom: '90 ft' }],
      'water.staticLevel': '31 ft',
      'water.pumping.flow': '7.5 gpm',
      'water.pumping.drawdown': '21 ft',
    },
    doubts: { 'water.staticLevel': 'takenOff' },
  },
  {
    name: 'short habits',
    text: `Depth 250' +/-
Static: 35' 7/12/2010
Casing 6" x 40' steel
Yield 2-1/2 gpm
Pitless adapter at 48 in
`,
    read: {
      'well.depth': '250 ft',
      'well.casing.size': '6 in',
      'well.casing.material': 'steel',
      'water.staticLevel': '35 ft',
      'well.yield': '2.5 gpm',
      'top.kind': 'pitless',
      'top.depth': '48 in',
    },
  },
  {
    name: 'stem and screen',
    text: `Estimated yield by air lift at 300 ft: 15 gpm
Static 40 ft, dynamic water level 110 ft @ 12 gpm after 2 hrs
Depth to water 35 ft below top of casing (stick up 2 ft)
Well screen: 5 ft of 4 in stainless steel 15 slot, set 95-100 ft
Filter pack 85 - 100 ft
Bentonite seal 0-20 ft
Bottom of casing 95 ft
Completed depth 100 ft
`,
    read: {
      'well.depth': '100 ft',
      'well.casing.bottom': '95 ft',
      'well.casing.height': '2 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '95 ft', bottom: '100 ft' }],
      'well.grout': [{ bottom: '20 ft' }],
      'water.staticLevel': '40 ft',
    },
    doubts: { 'water.staticLevel': 'two' },
    asides: ['airLevel'],
  },
  {
    name: 'telegram',
    text: `Drilled a 6 1/8" hole to 505'. Set 43 ft of 6" PVC SDR-21 casing. Static ~ 80'. Airlifted 1.5 gpm for 1 hour. Hydrofracked.
After fracking 4 gpm. Recommend 10 gpm 1 hp pump at 460'.
`,
    read: { 'well.depth': '505 ft', 'well.intake.diameter': '6-1/8 in', 'water.staticLevel': '80 ft' },
    asides: ['recommendedRate'],
  },
  {
    name: 'test table',
    text: `Total depth 61 m
Static water level 9.1 m
PUMP TEST DATA
Time (min)   Water Level (m)   Rate (L/min)
0            9.1               0
10           12.0              40
60           15.2              40
240          17.8              40
RECOVERY
Time (min)   Level (m)
10           12.2
60           9.5
`,
    read: { 'well.depth': '61 m', 'water.staticLevel': '9.1 m' },
  },
  {
    name: 'told thrice',
    text: `Static water level 62 ft
Static water level 62 feet
Static water level 18.9 m
Yield 10 gpm, yield 38 L/min
Depth of well 67 m / 220 ft
`,
    read: { 'well.depth': '67 m', 'water.staticLevel': '62 ft', 'well.yield': '10 gpm' },
  },
  {
    name: 'two casing tables',
    text: `STATE OF INVENTED
WELL CONSTRUCTION AND TEST REPORT
5. GEOLOGIC LOG:
Depth (ft)   Type               Color     Water Loc.
0-4          topsoil            brown
4-36         sand & gravel      tan
36-400       granite            pink      180, 355
6. HOLE DIAM. (in.)   From (ft)   To (ft)
9                     0           40
6                     40          400
7. PLAIN CASING
OD (in)   Kind    Wall Size   From (ft)   To (ft)
7         Steel   .240        +1          40
4.5       PVC     .237        20          400
PERFORATED CASING: Screen Slot Size (in): 0.032
4.5       PVC     .237        300         400
10. GROUTING RECORD
Material   Amount    Density   Interval   Placement
cement     6 sacks   6 gal/sk  10-40      poured
12. WELL TEST DATA
TESTING METHOD: Air compressor
Static Level: 62 ft     Date/Time measured: 10/03/2011 3:30 PM
Pumping Level: Total ft  Production Rate: 5 gpm
Test Length (hrs): 2
TOTAL DEPTH 400 feet   DEPTH COMPLETED 400 feet
`,
    read: {
      'well.depth': '400 ft',
      'well.casings': [
        { material: 'steel', size: '7 in', schedule: '0.24 in', bottom: '40 ft', height: '1 ft' },
        { material: 'PVC', size: '4.5 in', schedule: '0.237 in', top: '20 ft', bottom: '400 ft' },
      ],
      'well.intake.diameter': '6 in',
      'well.layers': [
        { material: 'topsoil brown', bottom: '4 ft' },
        { material: 'sand & gravel tan', bottom: '36 ft' },
        { material: 'granite pink', bottom: '400 ft' },
      ],
      'well.grout': [{ bottom: '40 ft' }],
      'water.staticLevel': '62 ft',
      'well.tested': '10/03/2011',
      'well.yield': '5 gpm',
      'well.yieldFrom': 'air lift',
    },
    asides: ['noPlace'],
  },
  {
    name: 'uncle',
    text: `Water well at 1200 Mill Road, drilled in 1988 by my uncle.
Pump was set at 160 feet but we raised it to 140 feet.
Static level used to be 30 feet, now it is 48 feet.
The well has 25 ft of casing and is uncased below. It is about 180 feet deep.
In August the water drops to 90 feet.
`,
    read: { 'well.depth': '180 ft', 'well.casing.bottom': '25 ft', 'pump.setting': '160 ft' },
    doubts: { 'well.casing.bottom': 'length', 'pump.setting': 'standing' },
  },
  {
    name: 'well data sheet',
    text: `Static Water Level                42.0 ft bgs
Casing Stickup                     2.0 ft
Total Depth                      160.0 ft bgs
Screened Interval         140.0 - 160.0 ft bgs
Borehole Diameter                  8.0 in
Casing Diameter                    4.0 in, Sch 40 PVC
Top of Screen                    140.0 ft
Bottom of Screen                 160.0 ft
`,
    read: {
      'well.depth': '160 ft',
      'well.casing.size': '4 in',
      'well.casing.material': 'PVC',
      'well.casing.schedule': 'schedule 40',
      'well.casing.height': '2 ft',
      'well.intake.kind': 'screen',
      'well.intake.screens': [{ top: '140 ft', bottom: '160 ft' }],
      'water.staticLevel': '42 ft',
    },
  },
];
