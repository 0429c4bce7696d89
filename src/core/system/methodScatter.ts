import type { Card } from '../card.ts';
import { card as friction } from '../channel/frictionApparent.ts';
import { card as nusselt } from '../channel/nusseltDeveloping.ts';
import { card as filamentBond } from '../conduction/bondConductivityWithFilament.ts';
import { card as spreading } from '../conduction/spreadingLee.ts';
import { card as fanLaws } from '../fan/fanPressure.ts';
import { card as standingFan } from '../fan/standingDrop_Pa.ts';
import { card as outsideWall } from '../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { card as slotTurn } from '../losses/baffleSlotLoss.ts';
import { card as finEntrance } from '../losses/finEntranceLoss.ts';
import { card as emissivity } from '../radiation/channelEmissivity.ts';
import type { Factors } from './input.ts';

/**
 * The card whose scatter stands for each factor on results of methods. Losses share one factor, and the loss at the fins'
 * entrance, which is most of it, gives its scatter. What adhesives scatter is an input of its own; the bond's card here is
 * that of the thread within it.
 */
export const scatterCards: Readonly<Record<keyof Factors, Card>> = {
  channelHeat: nusselt,
  channelFriction: friction,
  minorLoss: finEntrance,
  slotLoss: slotTurn,
  bondConductivity: filamentBond,
  fanFlow: fanLaws,
  spreading,
  standingFan,
  outsideHeat: outsideWall,
  emissivity,
};

export interface MethodScatter {
  readonly factor: keyof Factors;
  readonly card: Card;
  /** Of the factor's logarithm; its middle value is 1. */
  readonly sigma: number;
}

/** Factors whose methods an answer rests on, by the ids of the cards it used. */
export function methodScatter(used: readonly string[]): MethodScatter[] {
  return Object.entries(scatterCards).flatMap(([factor, card]) => {
    const { sigma } = card.scatter;
    if (sigma === null || !used.includes(card.id)) return [];
    return [{ factor: factor as keyof Factors, card, sigma: Math.sqrt(Math.log1p(sigma * sigma)) }];
  });
}
