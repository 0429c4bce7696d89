import type { Design } from '../../model/design.ts';
import type { Change, ChangeKey } from './change.ts';
import { openestGuard, rounded, tightest_m } from './practice.ts';

/** Less than this is no change that anybody would notice. */
const hair = 1.02;

/** What can be done about the ways of the air: gaps, baffle, slot, plenum, guards. */
export function airChanges(design: Design): Change[] {
  return [...gapChanges(design), ...baffleChanges(design), ...wayChanges(design), ...grilleChanges(design)];
}

function gapChanges(design: Design): Change[] {
  const { baffle } = design;
  if (!baffle.fitted) return [];
  const tight_m = tightest_m(design);
  const gap = (halved: ChangeKey, closed: ChangeKey, path: string, now_m: number): Change[] => [
    ...(now_m / 2 > tight_m * hair ? [cut(halved, { [path]: now_m / 2 })] : []),
    ...(now_m > tight_m * hair ? [cut(closed, { [path]: tight_m })] : []),
  ];
  return [
    ...gap('sideHalved', 'sideClosed', 'baffle.sideClearance_m', baffle.sideClearance_m),
    ...gap('endHalved', 'endClosed', 'baffle.endClearance_m', baffle.endClearance_m),
    ...(baffle.leakGap_m > 0
      ? [{ key: 'leakSealed', values: { 'baffle.leakGap_m': 0 }, costs: ['assemble'] } as const]
      : []),
  ];
}

function baffleChanges({ baffle, sink, box }: Design): Change[] {
  if (!baffle.fitted) return [cut('baffleFitted', { 'baffle.fitted': true })];
  const slot_m = Math.min(rounded(1.25 * baffle.slotWidth_m, 5e-4), sink.width_m, box.width_m);
  return [
    ...(sink.length_m > hair * baffle.collar_m
      ? [cut('collarRaised', { 'baffle.collar_m': sink.length_m })]
      : []),
    ...(slot_m > hair * baffle.slotWidth_m ? [cut('slotWider', { 'baffle.slotWidth_m': slot_m })] : []),
  ];
}

function wayChanges({ plenum }: Design): Change[] {
  const higher_m = rounded(1.25 * plenum.height_m, 1e-3);
  return [
    ...(higher_m > hair * plenum.height_m ? [cut('plenumHigher', { 'plenum.height_m': higher_m })] : []),
    ...neckChange(plenum),
  ];
}

const degree_rad = Math.PI / 180;

/** Walls that slope less, over a neck-down that is longer for it. */
function neckChange({ neckAngle_rad, neckLength_m }: Design['plenum']): Change[] {
  const gentler_rad = rounded(0.6 * neckAngle_rad, degree_rad);
  if (neckLength_m < 1e-3 || gentler_rad < 5 * degree_rad || neckAngle_rad > 170 * degree_rad) return [];
  const length_m = (neckLength_m * Math.tan(neckAngle_rad / 2)) / Math.tan(gentler_rad / 2);
  const values = { 'plenum.neckAngle_rad': gentler_rad, 'plenum.neckLength_m': rounded(length_m, 1e-3) };
  return [cut('neckGentler', values)];
}

function grilleChanges({ inlet, outlet }: Design): Change[] {
  const { guard, guardBlocked, filter, filterBlocked } = inlet;
  const clean = (key: ChangeKey, path: string): Change => ({ key, values: { [path]: 0 }, costs: ['clean'] });
  return [
    ...(guard.kind !== 'none' && guardBlocked > 0 ? [clean('guardCleaned', 'inlet.guardBlocked')] : []),
    ...(filter && filterBlocked > 0 ? [clean('filterCleaned', 'inlet.filterBlocked')] : []),
    ...openings(guard, 'inlet.guard', 'guardWider', 'guardWires'),
    ...openings(outlet, 'outlet', 'outletWider', 'outletWires'),
  ];
}

/** A guard with more open area, or of round wires, which the air passes more easily than edges. */
function openings(grille: Design['outlet'], place: string, wider: ChangeKey, wires: ChangeKey): Change[] {
  const { kind, freeShare, loss } = grille;
  const buy = (key: ChangeKey, values: Change['values']): Change => ({ key, values, costs: ['buy'] });
  if (kind === 'none') return [];
  if (kind === 'ownLoss') return loss > 0 ? [buy(wider, { [`${place}.loss`]: loss / 2 })] : [];
  const share = Math.min(openestGuard, rounded(freeShare + 0.15, 0.01));
  return [
    ...(share > hair * freeShare ? [buy(wider, { [`${place}.freeShare`]: share })] : []),
    ...(kind === 'wire' ? [] : [buy(wires, { [`${place}.kind`]: 'wire' })]),
  ];
}

function cut(key: ChangeKey, values: Change['values']): Change {
  return { key, values, costs: ['cut'] };
}
