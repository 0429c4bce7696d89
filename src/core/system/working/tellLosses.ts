import { card as slotTurn } from '../../losses/baffleSlotLoss.ts';
import { card as widening } from '../../losses/diffuserLoss.ts';
import { card as exit } from '../../losses/exitLoss.ts';
import { card as finEntrance } from '../../losses/finEntranceLoss.ts';
import { card as mitre } from '../../losses/mitreBendLoss.ts';
import { card as neckDown } from '../../losses/neckDownLoss.ts';
import { card as punched } from '../../losses/punchedPlateLoss.ts';
import { card as crack } from '../../losses/slotDischarge.ts';
import { card as square } from '../../losses/squareGrillLoss.ts';
import { card as wire } from '../../losses/wireGuardLoss.ts';
import type { PathLink } from '../airPath.ts';
import type { GrilleInput } from '../input.ts';
import {
  areaRatio,
  crackHeads,
  dustedLoss,
  finGap,
  freeShare,
  lossSum,
  openShare,
  quotient,
} from './balances/pathBalances.ts';
import { always, type Place, type Quantity } from './book.ts';
import { numbered, type Telling } from './telling.ts';

const grilles = { wire, punched, square } as const;

/** Loss of a guard or grille; `null` where there is none. */
function grilleLoss(t: Telling, place: Place, grille: GrilleInput): Quantity | number | null {
  const { kind, freeShare: clean, loss, blocked } = grille;
  if (kind === 'none') return null;
  if (kind === 'ownLoss') return blocked > 0 ? t.balance(dustedLoss, place, { own: loss, blocked }) : loss;
  const free = t.balance(freeShare, place, { clean, blocked });
  return t.card(grilles[kind], place, { free });
}

/** Grilles and the neck, told even where they take nothing, so that the answer names every method it used. */
export function tellGrilles(t: Telling): void {
  const { inlet, outlet } = t.work.input;
  grilleLoss(t, t.at('stage', undefined, 'guard'), inlet.guard);
  grilleLoss(t, t.at('stage', undefined, 'outlet'), outlet);
  neckLoss(t, t.at('stage', undefined, 'neck'));
}

function neckLoss(t: Telling, place: Place): Quantity {
  const { plenumArea_m2, fanArea_m2 } = t.work.bank;
  const angle_rad = t.work.input.plenum.neckAngle_rad;
  const isNeck = plenumArea_m2 < fanArea_m2;
  const [narrow_m2, wide_m2] = isNeck ? [plenumArea_m2, fanArea_m2] : [fanArea_m2, plenumArea_m2];
  const ratio = t.balance(areaRatio, place, { narrow_m2, wide_m2 });
  return t.card(isNeck ? neckDown : widening, place, { angle_rad, ratio });
}

/** Clear gap between two fins. */
export function finGapOf(t: Telling): Quantity {
  const { width_m, finCount, finThickness_m } = t.work.input.sink;
  const given = { width_m, count: finCount, thickness_m: finThickness_m };
  return t.balance(finGap, t.at('box'), given, t.work.bank.finGap_m);
}

/** The velocity heads that a link loses, with what they consist of. */
export function linkLoss(t: Telling, link: PathLink, place: Place): Quantity | number {
  const { law } = link;
  if (law.kind !== 'loss' && law.kind !== 'channels') return always(0);
  const { factors } = t.work.input;
  const factor = link.stage === 'slot' ? factors.slotLoss : factors.minorLoss;
  const parts = partsOf(t, link, place, law.loss / factor);
  if (parts.length === 0) return always(0);
  return t.balance(lossSum, place, { factor, ...numbered('loss', parts) }, law.loss);
}

function partsOf(
  t: Telling,
  { stage, passage, law }: PathLink,
  place: Place,
  own: number,
): (Quantity | number)[] {
  const { input } = t.work;
  if (passage) return passageParts(t, passage.kind, place);
  switch (stage) {
    case 'guard':
      return [grilleLoss(t, place, input.inlet.guard) ?? 0];
    case 'neck':
      return [neckLoss(t, place)];
    case 'plenum':
      return input.baffle ? [] : [t.card(mitre, place, {})];
    case 'slot':
      return [t.card(slotTurn, place, {})];
    case 'outlet':
      return law.kind === 'channels'
        ? []
        : [grilleLoss(t, place, input.outlet) ?? 0, t.card(exit, place, {})];
    default:
      return [own];
  }
}

function passageParts(
  t: Telling,
  kind: NonNullable<PathLink['passage']>['kind'],
  place: Place,
): (Quantity | number)[] {
  const { input } = t.work;
  if (kind === 'leak') {
    const gap_m = input.baffle?.leakGap_m ?? 1;
    const lengthOverGap = t.balance(quotient, place, { length_m: input.box.sheet_m, gap_m });
    return [t.balance(crackHeads, place, { discharge: t.card(crack, place, { lengthOverGap }) })];
  }
  const thickness_m = input.sink.finThickness_m;
  const sigma =
    kind === 'fins' ? t.balance(openShare, place, { gap_m: finGapOf(t), thickness_m }) : always(0);
  return [t.card(finEntrance, place, { sigma }), t.card(exit, place, {})];
}
