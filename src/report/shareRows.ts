import type { AirOutcome, PassageKind } from '../core/system/outcome.ts';
import { quantity } from './format.ts';
import type { ShareRow, UnitSystem } from './types.ts';
import { passageLabels } from './wording.ts';
import { percent } from './words.ts';

export const passageKinds: readonly PassageKind[] = ['fins', 'side', 'end', 'between', 'leak'];

/** Where the fans' air goes; ways that nothing takes are left out, the fins never. */
export function shareRows(air: AirOutcome, system: UnitSystem): ShareRow[] {
  return passageKinds
    .filter((kind) => kind === 'fins' || Math.abs(air.share[kind]) > 1e-9)
    .map((kind) => ({
      kind,
      label: passageLabels[kind],
      share: air.share[kind],
      percent: percent(air.share[kind]),
      flow: quantity(air.flow_m3PerS * air.share[kind], 'volumeFlow', system, 3),
    }));
}
