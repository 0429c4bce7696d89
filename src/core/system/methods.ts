import { card as conductivity } from '../air/conductivity_WPerMK.ts';
import { card as density } from '../air/density_kgPerM3.ts';
import { card as heatCapacity } from '../air/heatCapacity_JPerKgK.ts';
import { card as moist } from '../air/moistFactor.ts';
import { card as pressure } from '../air/standardPressure_Pa.ts';
import { card as viscosity } from '../air/viscosity_PaS.ts';
import { card as airNetwork } from '../airflow/firstShare.ts';
import type { Card } from '../card.ts';
import { card as frictionApparent } from '../channel/frictionApparent.ts';
import { card as frictionDeveloped } from '../channel/frictionDeveloped.ts';
import { card as frictionTurbulent } from '../channel/frictionTurbulent.ts';
import { card as nusseltDeveloping } from '../channel/nusseltDeveloping.ts';
import { card as plateFin } from '../channel/nusseltPlateFinInletBasis.ts';
import { card as nusseltTurbulent } from '../channel/nusseltTurbulent.ts';
import { laminarUpTo } from '../channel/passageDrop.ts';
import { card as filamentBond } from '../conduction/bondConductivityWithFilament.ts';
import { card as bond } from '../conduction/bondResistance_KPerW.ts';
import { card as narrowGap } from '../conduction/narrowGap_WPerM2K.ts';
import { card as slab } from '../conduction/slabResistance_KPerW.ts';
import { card as spreading } from '../conduction/spreadingLee.ts';
import { card as fanGroup } from '../fan/fanGroup.ts';
import { card as fanHeat } from '../fan/fanHeatRise_K.ts';
import { card as fanLaws } from '../fan/fanPressure.ts';
import { card as obstructed } from '../fan/obstructedShare.ts';
import { card as fanSpeed } from '../fan/speedAtVoltage.ts';
import { card as standingFan } from '../fan/standingDrop_Pa.ts';
import { card as finBetweenPlates } from '../fins/finBetweenPlates.ts';
import { card as warming } from '../fins/sinkAirConductance_WPerK.ts';
import { card as draught } from '../freeConvection/draught_Pa.ts';
import { card as outsideWall } from '../freeConvection/nusseltVerticalPlateChurchillChu1975.ts';
import { card as heatMarch } from '../heat/march.ts';
import { card as shortPulse } from '../heat/shortPulseRise_K.ts';
import { card as slotTurn } from '../losses/baffleSlotLoss.ts';
import { card as widening } from '../losses/diffuserLoss.ts';
import { card as exit } from '../losses/exitLoss.ts';
import { card as finEntrance } from '../losses/finEntranceLoss.ts';
import { card as mitre } from '../losses/mitreBendLoss.ts';
import { card as neckDown } from '../losses/neckDownLoss.ts';
import { card as punched } from '../losses/punchedPlateLoss.ts';
import { card as crack } from '../losses/slotDischarge.ts';
import { card as square } from '../losses/squareGrillLoss.ts';
import { card as wire } from '../losses/wireGuardLoss.ts';
import { card as channelEmissivity } from '../radiation/channelEmissivity.ts';
import { card as facing } from '../radiation/facingEmissivity.ts';
import { card as radiation } from '../radiation/radiationCoefficient_WPerM2K.ts';
import { card as derating } from '../resistor/allowedPower_W.ts';
import { card as lateral } from '../resistor/chipLateralResistance_KPerW.ts';
import { card as drift } from '../resistor/resistanceDrift.ts';
import { card as load } from '../resistor/splitLoad.ts';
import { card as bladePass } from '../sound/bladePassFrequency_Hz.ts';
import { card as soundAtDistance } from '../sound/soundAtDistance_dBA.ts';
import { card as soundAtSpeed } from '../sound/soundAtSpeed_dBA.ts';
import { card as soundSum } from '../sound/soundSum_dBA.ts';
import { boxFans, obstruction } from './fans.ts';
import type { GrilleInput } from './input.ts';
import type { Work } from './work.ts';

const always: readonly Card[] = [
  density,
  viscosity,
  conductivity,
  heatCapacity,
  pressure,
  moist,
  frictionDeveloped,
  frictionApparent,
  nusseltDeveloping,
  finEntrance,
  exit,
  draught,
  airNetwork,
  finBetweenPlates,
  warming,
  spreading,
  bond,
  slab,
  lateral,
  load,
  narrowGap,
  facing,
  radiation,
  channelEmissivity,
  outsideWall,
  heatMarch,
  drift,
];

/** While the fans turn. */
const blowing: readonly Card[] = [fanLaws, fanSpeed, fanHeat, soundAtSpeed, soundAtDistance, bladePass];

/** Every method that an answer of the fan box can rest on. */
export const systemCards: readonly Card[] = [
  ...always,
  ...blowing,
  fanGroup,
  soundSum,
  obstructed,
  standingFan,
  shortPulse,
  wire,
  punched,
  square,
  neckDown,
  widening,
  slotTurn,
  mitre,
  crack,
  filamentBond,
  derating,
  frictionTurbulent,
  nusseltTurbulent,
  plateFin,
];

const alwaysIds = always.map((card) => card.id);

/** Card of a guard or grille, `null` where it follows no method of ours. */
export const grilleCard: Readonly<Record<GrilleInput['kind'], Card | null>> = {
  none: null,
  ownLoss: null,
  wire,
  punched,
  square,
};

/** Ids of the cards that this answer rests on, each once. */
export function usedCards(work: Work): string[] {
  const { input, bank } = work;
  const used = new Set<Card>();
  for (const grille of [input.inlet.guard, input.outlet]) {
    const card = grilleCard[grille.kind];
    if (card) used.add(card);
  }
  if (work.path.fans) {
    for (const card of blowing) used.add(card);
    const count = boxFans(input).reduce((sum, { sideBySide, inARow }) => sum + sideBySide * inARow, 0);
    if (count > 1) used.add(fanGroup).add(soundSum);
    if (obstruction(input) > 0) used.add(obstructed);
  } else {
    used.add(standingFan);
  }
  if (input.load.duty < 1) used.add(shortPulse);
  used.add(bank.plenumArea_m2 < bank.fanArea_m2 ? neckDown : widening);
  used.add(input.baffle ? slotTurn : mitre);
  if (input.baffle && input.baffle.leakGap_m > 0) used.add(crack);
  if (input.bond.filamentLength_m > 0) used.add(filamentBond);
  if (input.positions.some(({ part }) => part.deratedBy !== 'film')) used.add(derating);
  if (work.sinkHeat.some((sink) => sink && sink.reynolds > laminarUpTo)) {
    used.add(frictionTurbulent);
    used.add(nusseltTurbulent);
  }
  return [...alwaysIds, ...Array.from(used, (card) => card.id)];
}
