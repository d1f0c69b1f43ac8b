/** On the ground beside the well: all that is joined to the pump before it is lifted. */
import type { Metres } from '../si.ts';
import type { Solved } from '../solution.ts';
import { takenFrom, threadAt } from '../string/threads.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { feet } from '../units.ts';
import { step, type Draft, type Job } from './making.ts';
import { spliceStep } from './spliceStep.ts';
import type { WayUp } from './wayUp.ts';

/** A splice no higher than this over the discharge is made before the pump is lifted. Common practice, no source. */
export const SPLICED_ON_THE_GROUND = feet(12);

export function atPumpSteps({ solved, pieces }: Job, { first, splices }: WayUp): readonly Draft[] {
  const { facts } = solved;
  const { pump, dropPipe, string } = facts;
  const at = { view: 'pump' } as const;
  return [
    step(
      'insulation',
      {},
      { puts: pieces.ofKinds('motor', 'intake', 'pump'), about: ['motor', 'pump'], ...at, cautions: ['electric'] },
    ),
    ...(pump.shroudDiameter === null
      ? []
      : [
          step(
            'sleeve',
            { diameter: pump.shroudDiameter },
            { puts: pieces.ofKinds('shroud'), about: ['shroud'], ...at },
          ),
        ]),
    step(
      'outlet',
      {
        bushing: pieces.named('bushing').length > 0 ? takenFrom('pump', facts) : null,
        thread: threadAt('pump', facts).pipe.size,
        limiter: pieces.has('flowLimiter'),
      },
      { puts: pieces.named('bushing', 'nipple', 'flowLimiter'), about: ['nipple', 'flowLimiter'], ...at },
    ),
    ...(pieces.named('checkValve').length > 0 && lowValve(solved)
      ? [step('lowValve', { arrow: string.arrow }, { puts: ['checkValve'], about: ['checkValve'], ...at })]
      : []),
    step(
      'leads',
      { strip: pieces.has('cableGuardStrip'), whole: splices.length === 0 },
      {
        puts: [...pieces.ofKinds('cable').slice(-1), ...pieces.ofKinds('cableGuardStrip')],
        about: ['cableGuardStrip', 'cable'],
        ...at,
      },
    ),
    ...splices
      .filter(({ height }) => height <= SPLICED_ON_THE_GROUND)
      .map((each) => spliceStep({ solved, pieces }, each, true)),
    ...(pieces.has('rope')
      ? [
          step(
            'ropeOn',
            { material: facts.rope?.material ?? '' },
            { puts: pieces.ofKinds('rope'), about: ['rope'], ...at },
          ),
        ]
      : []),
    step(
      'pumpJoint',
      {
        way: isBarbed(dropPipe) ? 'barb' : 'thread',
        clamps: string.clampsPerJoint,
        arrestor: first === null || first.joint.includes('torqueArrestor') ? string.torqueArrestor : null,
        guards: pieces.has('guard'),
        section: first === null ? null : lengthOf(first.pipe, { solved, pieces }),
      },
      {
        puts: [
          ...pieces.withClamps('pump', 'coupling/pump', 'insertFitting/pump'),
          ...(first === null ? pieces.ofKinds('torqueArrestor') : [...first.joint, first.pipe]),
        ],
        about: ['insertFitting/pump', 'coupling/pump', 'torqueArrestor', 'dropPipe'],
        ...at,
        cautions: isBarbed(dropPipe) ? ['coil'] : ['lifting'],
      },
    ),
  ];
}

function lengthOf(key: string, { pieces }: Job): Metres | null {
  return pieces.piece(key).cut;
}

/** The one on the pump's nipple; a single one that stands higher has the same name. */
function lowValve({ parts }: Solved): boolean {
  const valve = parts.find(({ key }) => key === 'checkValve');
  const nipple = parts.find(({ key }) => key === 'nipple');
  return valve !== undefined && nipple !== undefined && Math.abs(valve.bottom - nipple.top) < 1e-6;
}
