/** Which lengths and weights rest on a depth or a height that nobody said: a figure to the inch does not look like it. */
import { assumedPaths } from '../rules/assumed.ts';
import type { Solution, ValueName } from '../solution.ts';

const SETTING = 'pump.setting';
const CASING = 'well.casing.height';
/** From a seal the string hangs at the casing's top. */
const OUTLET = ['top.kind', 'top.depth'] as const;

const ON_SEAL: Partial<Readonly<Record<ValueName, readonly string[]>>> = {
  intakeDepth: [SETTING],
  dropPipeToCut: [SETTING, 'top.kind', CASING],
  dropPipeCutLength: [SETTING, 'top.kind', CASING],
  wireLength: [SETTING, CASING],
  ropeLength: [SETTING, CASING],
  hangLoadLowering: [SETTING, 'top.kind', CASING],
  hangLoadAtRest: [SETTING, 'top.kind', CASING],
  hangLoadPumping: [SETTING, 'top.kind', CASING],
  hangLoadDry: [SETTING, 'top.kind', CASING],
};

const ON_ADAPTER: typeof ON_SEAL = {
  ...ON_SEAL,
  dropPipeToCut: [SETTING, ...OUTLET],
  dropPipeCutLength: [SETTING, ...OUTLET],
  liftPipeLength: [...OUTLET, CASING],
  hangLoadLowering: [SETTING, ...OUTLET],
  hangLoadAtRest: [SETTING, ...OUTLET],
  hangLoadPumping: [SETTING, ...OUTLET],
  hangLoadDry: [SETTING, ...OUTLET],
};

/** Whether a length, a depth or a weight would be another had one said a depth that was assumed. False for other figures. */
export function restsOnAssumedDepth(
  { assumed, facts, lowest }: Pick<Solution, 'assumed' | 'facts' | 'lowest'>,
  name: ValueName,
): boolean {
  const paths = assumedPaths({ assumed });
  // Water that falls until the pump draws air falls to where the pump hangs.
  if (name === 'lowestPumpingWaterLevel') return lowest?.by === 'intake' && paths.has(SETTING);
  const under = (facts.top.kind === 'pitless' ? ON_ADAPTER : ON_SEAL)[name] ?? [];
  return under.some((path) => paths.has(path));
}
