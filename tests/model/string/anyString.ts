/** Strings as anyone might hang them: valves, splices, guards and ties at any height, long and short. */
import fc from 'fast-check';
import type { Plan } from '../../../src/model/index.ts';
import { rockWell } from '../../plans/build.ts';

const feetUp = (most: number) => fc.integer({ min: 0, max: most * 4 }).map((n) => `${n / 4} ft`);

export const anyString: fc.Arbitrary<Plan> = fc
  .record({
    setting: fc.integer({ min: 8, max: 700 }),
    pipe: fc.constantFrom(
      { material: 'PE', size: '1 in', rating: '200 psi' },
      { material: 'PVC', size: '1-1/4 in' },
      { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' },
    ),
    top: fc.constantFrom(
      { kind: 'pitless', depth: '5 ft' },
      { kind: 'pitless', depth: '5 ft', thread: '1-1/4 in' },
      { kind: 'pitless', depth: '5 ft', thread: 'Rp 1' },
      { kind: 'seal' },
    ),
    outlet: fc.constantFrom('1-1/4 in', '1-1/4 NPT', 'Rp 1 1/4', '2 in'),
    checkValves: fc.array(feetUp(400), { maxLength: 4 }),
    splices: fc.array(feetUp(200), { maxLength: 3 }),
    torqueArrestor: fc.oneof(fc.constant('none'), feetUp(20)),
    guards: fc.option(fc.constantFrom('10 ft', '40 ft', '50 ft', '12 m'), { nil: undefined }),
    ties: fc.constantFrom('5 ft', '10 ft', '20 ft', '3 m', '1 ft'),
  })
  .map(({ setting, pipe, top, outlet, guards, ...string }) =>
    rockWell({
      well: {
        depth: '720 ft',
        casing: { material: 'steel', size: '6 in', bottom: '100 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
      top,
      pump: { setting: `${setting} ft`, power: '1 hp', outlet, curve: { kind: 'generic', flow: '10 gpm' } },
      dropPipe: pipe,
      string: { ...string, ...(guards === undefined ? {} : { guards }) },
    }),
  );
