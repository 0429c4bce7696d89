import type { Card } from '../card.ts';
import { card as friction } from '../channel/frictionApparent.ts';
import { card as frictionTurbulent } from '../channel/frictionTurbulent.ts';
import { card as nusselt } from '../channel/nusseltDeveloping.ts';
import { card as nusseltTurbulent } from '../channel/nusseltTurbulent.ts';
import { card as filamentBond } from '../conduction/bondConductivityWithFilament.ts';
import { card as bond } from '../conduction/bondResistance_KPerW.ts';
import { card as spreading } from '../conduction/spreadingLee.ts';
import { card as fanGroup } from '../fan/fanGroup.ts';
import { card as fanLaws } from '../fan/fanPressure.ts';
import { card as fanSpeed } from '../fan/speedAtVoltage.ts';
import { card as standingFan } from '../fan/standingDrop_Pa.ts';
import { card as outsideWall } from '../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { card as slotTurn } from '../losses/baffleSlotLoss.ts';
import { card as widening } from '../losses/diffuserLoss.ts';
import { card as exit } from '../losses/exitLoss.ts';
import { card as finEntrance } from '../losses/finEntranceLoss.ts';
import { card as mitre } from '../losses/mitreBendLoss.ts';
import { card as neckDown } from '../losses/neckDownLoss.ts';
import { card as punched } from '../losses/punchedPlateLoss.ts';
import { card as square } from '../losses/squareGrillLoss.ts';
import { card as wire } from '../losses/wireGuardLoss.ts';
import { card as emissivity } from '../radiation/channelEmissivity.ts';
import { card as soundAtSpeed } from '../sound/soundAtSpeed_dBA.ts';
import type { Factors } from './input.ts';
import { systemCards } from './methods.ts';

/**
 * The card whose scatter stands for each factor on results of methods. Losses share one factor, and the loss at the fins'
 * entrance gives its scatter. What adhesives scatter is an input of its own; the bond's card here is that of the thread.
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

/** Methods whose scatter a factor of another one, or an input, stands for. */
const alongside: readonly Card[] = [
  frictionTurbulent,
  nusseltTurbulent,
  bond,
  fanGroup,
  fanSpeed,
  widening,
  exit,
  mitre,
  neckDown,
  punched,
  square,
  wire,
];

export interface MethodScatter {
  readonly factor: keyof Factors;
  readonly card: Card;
  /** Of the factor’s logarithm; its middle value is the factor of the box. */
  readonly sigma: number;
  /** Known from readings of a prototype: then `sigma` is what these leave open, not the card’s. */
  readonly fitted: boolean;
}

/** One standard uncertainty of the logarithm of each factor that was fitted to readings. */
export type FittedSigmas = Readonly<Partial<Record<keyof Factors, number>>>;

/** Factors whose methods an answer rests on, by the ids of the cards it used, and those that were fitted. */
export function methodScatter(used: readonly string[], fitted: FittedSigmas = {}): MethodScatter[] {
  return Object.entries(scatterCards).flatMap(([key, card]): MethodScatter[] => {
    const factor = key as keyof Factors;
    const known = fitted[factor];
    if (known !== undefined) return [{ factor, card, sigma: known, fitted: true }];
    const { sigma } = card.scatter;
    if (sigma === null || !used.includes(card.id)) return [];
    return [{ factor, card, sigma: Math.sqrt(Math.log1p(sigma * sigma)), fitted: false }];
  });
}

/** One standard deviation of a fan’s sound at a speed of its own, as a share of its level: no factor of the networks shows it. */
export const soundSigma = soundAtSpeed.scatter.sigma ?? 0;

/** Scatter worth a word; less than this disappears among the others. */
const worthTelling = 0.05;

/** Methods that an answer rests on and whose scatter no factor can show. */
export function withoutFactor(used: readonly string[]): Card[] {
  const shown = new Set([...Object.values(scatterCards), ...alongside]);
  return systemCards.filter(
    (card) => used.includes(card.id) && !shown.has(card) && (card.scatter.sigma ?? 0) >= worthTelling,
  );
}
