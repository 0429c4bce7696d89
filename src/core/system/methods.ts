import { card as conductivity } from '../air/conductivity_WPerMK.ts';
import { card as density } from '../air/density_kgPerM3.ts';
import { card as heatCapacity } from '../air/heatCapacity_JPerKgK.ts';
import { card as moist } from '../air/moistFactor.ts';
import { card as saturation } from '../air/saturationPressure_Pa.ts';
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
import { card as rayleigh } from '../freeConvection/rayleigh.ts';
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
import { carriesDraught, type Work } from './work.ts';

/** Of every answer, whatever the box. */
const always: readonly Card[] = [
  density,
  viscosity,
  heatCapacity,
  saturation,
  moist,
  frictionDeveloped,
  frictionApparent,
  finEntrance,
  exit,
  airNetwork,
  slab,
  lateral,
];

/** Where at least one sink stands in the row. */
const besideSinks: readonly Card[] = [
  conductivity,
  nusseltDeveloping,
  finBetweenPlates,
  warming,
  narrowGap,
  facing,
  radiation,
  channelEmissivity,
  rayleigh,
  outsideWall,
];

/** While the fans turn; time runs from there, too. */
const blowing: readonly Card[] = [
  heatMarch,
  drift,
  fanLaws,
  fanSpeed,
  fanHeat,
  soundAtSpeed,
  soundAtDistance,
  bladePass,
];

/** Every method that an answer of the fan box can rest on. */
export const systemCards: readonly Card[] = [
  ...always,
  ...besideSinks,
  ...blowing,
  pressure,
  draught,
  spreading,
  bond,
  load,
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

/** Card of a guard or grille, `null` where it follows no method of ours. */
export const grilleCard: Readonly<Record<GrilleInput['kind'], Card | null>> = {
  none: null,
  ownLoss: null,
  wire,
  punched,
  square,
};

/** Ids of the cards that this answer rests on, each once, in the order of `systemCards`. */
export function usedCards(work: Work): string[] {
  const used = new Set<Card>([...always, ...pathCards(work), ...bankCards(work)]);
  const { input } = work;
  if (work.path.fans) {
    for (const card of blowing) used.add(card);
    const count = boxFans(input).reduce((sum, { sideBySide, inARow }) => sum + sideBySide * inARow, 0);
    if (count > 1) used.add(fanGroup).add(soundSum);
    if (obstruction(input) > 0) used.add(obstructed);
  } else {
    used.add(standingFan);
  }
  if (input.room.pressure_Pa === null) used.add(pressure);
  return systemCards.flatMap((card) => (used.has(card) ? [card.id] : []));
}

function pathCards(work: Work): Card[] {
  const { input, bank, path, flow } = work;
  const used: Card[] = [];
  if (path.links.some(({ air }) => carriesDraught(work, air))) used.push(draught);
  for (const grille of [input.inlet.guard, input.outlet]) {
    const card = grilleCard[grille.kind];
    if (card) used.push(card);
  }
  used.push(bank.plenumArea_m2 < bank.fanArea_m2 ? neckDown : widening);
  used.push(input.baffle ? slotTurn : mitre);
  if (input.baffle && input.baffle.leakGap_m > 0) used.push(crack);
  const isTurbulent = path.links.some(({ law }, i) => {
    if (law.kind !== 'channels') return false;
    const speed = Math.abs(flow.massFlow[i] as number) / (law.count * law.gap_m * law.height_m);
    const hydraulic_m = (2 * law.gap_m * law.height_m) / (law.gap_m + law.height_m);
    return (speed * hydraulic_m) / (flow.mu[i] as number) > laminarUpTo;
  });
  if (isTurbulent) used.push(frictionTurbulent);
  return used;
}

function bankCards({ input, heat, sinkHeat, load: split, power_W }: Work): Card[] {
  const used: Card[] = [];
  if (sinkHeat.some((sink) => sink !== null)) used.push(...besideSinks);
  if (heat.positions.some(({ filmContact, secondContact }) => filmContact || secondContact)) {
    used.push(spreading, bond);
    if (input.bond.filamentLength_m > 0) used.push(filamentBond);
  }
  if (sinkHeat.some((sink) => sink && sink.reynolds > laminarUpTo)) used.push(nusseltTurbulent);
  const isOn = input.positions.some(({ on }) => on);
  if (isOn && input.load.excitation !== 'wattsEach') used.push(load);
  const { duty } = input.load;
  if (duty < 1 && duty > 0 && split.total_W > 0) used.push(shortPulse);
  if (input.positions.some(({ part }, r) => part.deratedBy !== 'film' && (power_W[r] as number) > 0))
    used.push(derating);
  return used;
}
