/** How each check of metric.json is computed by the model. */
import { ampacity, conductorResistance, voltageDrop } from '../../../src/model/formulas/wire.ts';
import { findCasing } from '../../../src/model/tables/casings.ts';
import { metricConductorOf } from '../../../src/model/tables/metricConductors.ts';
import { motorCurrent } from '../../../src/model/tables/motors.ts';
import { findPipe } from '../../../src/model/tables/pipes.ts';
import type { PipeQuery } from '../../../src/model/tables/pipes.ts';
import { metricWire } from '../../../src/model/tables/wireSizes.ts';
import type { MetricWire } from '../../../src/model/tables/wireSizes.ts';
import type { Computations, Inputs } from '../checkValues.ts';

const wiresOf = (inputs: Inputs): readonly MetricWire[] => inputs.list<number>('area_mm2').map(metricWire);

const pipeOf = (query: PipeQuery) => {
  const pipe = findPipe(query);
  if (pipe === null) throw new Error(`no pipe ${JSON.stringify(query)}`);
  return pipe;
};
const millimetres = (metres: number) => metres * 1000;
const wallOf = ({ outsideDiameter, insideDiameter }: { outsideDiameter: number; insideDiameter: number }) =>
  millimetres((outsideDiameter - insideDiameter) / 2);

const pePipe = (inputs: Inputs) => {
  const sizes = inputs.list<number>('outside_mm').map((outside) => `${outside} mm`);
  const ratio = inputs.text('ratio');
  const ofResin = (resin: string) => {
    const ratings = sizes.map((size) => pipeOf({ material: 'PE', size, ratio, resin }).rating);
    if (new Set(ratings).size !== 1) throw new Error(`ratings of ${ratio} differ: ${ratings.join(', ')}`);
    return (ratings[0] ?? Number.NaN) / 1e5;
  };
  return {
    wall_mm: sizes.map((size) => wallOf(pipeOf({ material: 'PE', size, ratio }))),
    pn_pe80: ofResin('PE 80'),
    pn_pe100: ofResin('PE 100'),
  };
};

const pvcPipe = (inputs: Inputs) => ({
  wall_mm: inputs
    .list<number>('outside_mm')
    .map((outside) => wallOf(pipeOf({ material: 'PVC', size: `${outside} mm`, ratio: inputs.text('class') }))),
});

const steelTube = (inputs: Inputs) => {
  const tubes = inputs
    .list<string>('size')
    .map((size) => pipeOf({ material: 'galvanized steel', standard: 'EN 10255', size, ratio: inputs.text('series') }));
  return {
    outside_mm: tubes.map(({ outsideDiameter }) => millimetres(outsideDiameter)),
    wall_mm: tubes.map(wallOf),
    kg_per_m: tubes.map(({ massPerLength }) => massPerLength),
  };
};

export const metric: Computations = {
  'CV-M01': (inputs) => ({
    class2_ohm_per_km: wiresOf(inputs).map((size) => metricConductorOf(size).class2OhmsPerKilometre),
    class5_ohm_per_km: wiresOf(inputs).map((size) => metricConductorOf(size).class5OhmsPerKilometre),
  }),
  'CV-M02': (inputs) => ({ ohm_per_km_75: wiresOf(inputs).map((size) => 1000 * conductorResistance(size)) }),
  'CV-M03': (inputs) => ({ ampere: wiresOf(inputs).map((size) => ampacity(size, 60)) }),
  'CV-M04': (inputs) => ({
    drop_v: wiresOf(inputs).map((gauge) =>
      voltageDrop({ phase: 1, current: inputs.number('current_a'), length: inputs.number('length_m'), gauge }),
    ),
  }),
  'CV-M05': pePipe,
  'CV-M06': pePipe,
  'CV-M07': pePipe,
  'CV-M08': pePipe,
  'CV-M09': pePipe,
  'CV-M10': pvcPipe,
  'CV-M11': pvcPipe,
  'CV-M12': pvcPipe,
  'CV-M13': pvcPipe,
  'CV-M14': pvcPipe,
  'CV-M15': steelTube,
  'CV-M16': steelTube,
  'CV-M17': (inputs) => ({
    ampere: inputs
      .list<number>('power_kw')
      .map((kilowatts) => motorCurrent({ power: kilowatts * 1000, phase: 3, voltage: 400 })),
  }),
  'CV-M18': (inputs) => ({
    wall_mm: inputs.list<number>('outside_mm').map((outside) => {
      const casing = findCasing({ material: 'PVC', size: `${outside} mm`, schedule: inputs.text('class') });
      if (casing === null) throw new Error(`no casing of ${outside} mm`);
      return wallOf(casing);
    }),
  }),
};
