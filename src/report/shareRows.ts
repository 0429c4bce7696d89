import type { AirOutcome, PassageKind } from '../core/system/outcome.ts';
import { saidPercent, saidQuantity, withAmounts, worked } from './said.ts';
import type { ShareRow, UnitSystem } from './types.ts';
import { passageLabels } from './wording.ts';
import { shareFigure } from './working/headlineIds.ts';

export const passageKinds: readonly PassageKind[] = ['fins', 'side', 'end', 'between', 'leak'];

/** Where the fans' air goes; ways that nothing takes are left out, the fins never. */
export function shareRows(air: AirOutcome, system: UnitSystem): ShareRow[] {
  return passageKinds
    .filter((kind) => kind === 'fins' || Math.abs(air.share[kind]) > 1e-9)
    .map((kind) => ({
      kind,
      label: passageLabels[kind],
      share: air.share[kind],
      ...withAmounts({
        percent: worked(saidPercent(air.share[kind]), shareFigure(kind)),
        flow: worked(
          saidQuantity(air.flow_m3PerS * air.share[kind], 'volumeFlow', system, 3),
          shareFigure(kind),
        ),
      }),
    }));
}
