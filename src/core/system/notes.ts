import { card as density } from '../air/density_kgPerM3.ts';
import { card as heatCapacity } from '../air/heatCapacity_JPerKgK.ts';
import { card as pressure } from '../air/standardPressure_Pa.ts';
import { type Card, checkRange, type Note } from '../card.ts';
import { card as frictionApparent } from '../channel/frictionApparent.ts';
import { card as nusseltDeveloping } from '../channel/nusseltDeveloping.ts';
import { nusseltPlateFinInletBasis, card as plateFin } from '../channel/nusseltPlateFinInletBasis.ts';
import { card as bond } from '../conduction/bondResistance_KPerW.ts';
import { card as spreading } from '../conduction/spreadingLee.ts';
import { card as fanLaws } from '../fan/fanPressure.ts';
import { card as draught } from '../freeConvection/draught_Pa.ts';
import { elenbaas } from '../freeConvection/elenbaas.ts';
import { buoyancy_PerM3K, rayleigh } from '../freeConvection/rayleigh.ts';
import type { PartInput } from './input.ts';
import { grilleCard } from './methods.ts';
import type { AirOutcome, HeatOutcome } from './outcome.ts';
import type { SinkHeat } from './sinkHeat.ts';
import type { Work } from './work.ts';

/** Where one variable of a method stands at the answer, inside its range or out of it. */
export interface Standing {
  readonly card: string;
  readonly variable: string;
  readonly value: number;
}

export interface Judgement {
  readonly notes: readonly Note[];
  readonly stands: readonly Standing[];
}

type Judge = <V extends string>(card: Card<V>, given: Partial<Record<V, number>>, where?: string) => Note[];

/** Everything that limits trust in this answer: ranges of the methods it used, and what the model cannot see. */
export function collectNotes(work: Work, air: AirOutcome, heat: HeatOutcome): Judgement {
  const { input, bank } = work;
  const notes: Note[] = [];
  const stands: Standing[] = [];
  const judge: Judge = (card, given, where) => {
    for (const variable in card.range) {
      const value = given[variable];
      if (value !== undefined) stands.push({ card: card.id, variable, value });
    }
    return checkRange(card, given, where);
  };
  const range = <V extends string>(card: Card<V>, given: Partial<Record<V, number>>, where?: string) => {
    notes.push(...judge(card, given, where));
  };
  range(density, { T_K: heat.exhaust_K });
  range(heatCapacity, { T_K: heat.exhaust_K });
  if (input.room.pressure_Pa === null) range(pressure, { altitude_m: input.room.altitude_m });
  for (const [grille, where] of [
    [input.inlet.guard, 'inlet guard'],
    [input.outlet, 'outlet grille'],
  ] as const) {
    const card = grilleCard[grille.kind];
    if (card) range(card, { free: grille.freeShare * (1 - grille.blocked) }, where);
  }
  range(bond, { voidShare: input.bond.voidShare });
  work.sinkHeat.forEach((sink, s) => {
    if (sink) notes.push(...sinkNotes(judge, work, sink, s));
  });
  notes.push(...spreadingNotes(judge, work));

  const plenumSpeed = air.massFlow_kgPerS / (work.plenum.rho_kgPerM3 * bank.plenumArea_m2);
  const downstream_Pa = air.stages.reduce(
    (sum, s) => (s.key === 'slot' || s.key === 'bank' ? sum + s.dp_Pa : sum),
    0,
  );
  const feed = (0.5 * work.plenum.rho_kgPerM3 * plenumSpeed * plenumSpeed) / Math.max(downstream_Pa, 1e-12);
  if (feed > 0.5)
    notes.push({
      code: 'unevenFeed',
      severity: 'caution',
      variable: 'feedRatio',
      value: feed,
      low: null,
      high: 0.5,
    });

  const stable = air.intersections.filter((point) => point.stable).length;
  if (stable > 1)
    notes.push({ code: 'severalPoints', severity: 'caution', variable: 'count', value: stable });
  notes.push(...fanNotes(judge, work, air), ...draughtNotes(judge, work, air, heat));
  for (const p of heat.positions) {
    const { part } = input.positions[p.index] as (typeof input.positions)[number];
    const where = `resistor ${p.index + 1}`;
    if (p.bond_K > input.bond.glassTransition_K) {
      notes.push({
        code: 'bondAboveGlass',
        severity: 'caution',
        where,
        variable: 'T_K',
        value: p.bond_K,
        low: null,
        high: input.bond.glassTransition_K,
      });
    }
    if (part.deratedBy === 'film' && p.power_W > part.rated_W) {
      notes.push({
        code: 'aboveRating',
        severity: 'caution',
        where,
        variable: 'power_W',
        value: p.power_W,
        low: null,
        high: part.rated_W,
      });
    }
  }
  if (input.baffle) {
    const gap_m = Math.min(input.baffle.sideClearance_m, input.baffle.endClearance_m);
    if (gap_m < 0.4e-3)
      notes.push({
        code: 'tightGap',
        severity: 'info',
        variable: 'gap_m',
        value: gap_m,
        low: 0.4e-3,
        high: null,
      });
  }
  return { notes, stands };
}

function fanNotes(judge: Judge, work: Work, air: AirOutcome): Note[] {
  const notes: Note[] = [];
  const { fan } = work.input;
  for (const { index, speedRatio, backwards } of air.fans) {
    const where = `fan ${index + 1}`;
    if (speedRatio > 0) notes.push(...judge(fanLaws, { speedRatio }, where));
    if (backwards)
      notes.push({
        code: 'fanBackwards',
        severity: 'caution',
        where,
        variable: 'speedRatio',
        value: speedRatio,
      });
  }
  if (air.bridgedDip) notes.push({ code: 'bridgedDip', severity: 'caution' });
  if (air.running && air.obstructed > 0) {
    notes.push({
      code: 'fanObstructed',
      severity: 'caution',
      variable: 'space_m',
      value: Math.min(fan.inletSpace_m, fan.outletSpace_m),
      low: fan.opening_m,
      high: null,
    });
  }
  return notes;
}

/** Air that warmth moves, and air that moves the wrong way. */
function draughtNotes(judge: Judge, work: Work, air: AirOutcome, heat: HeatOutcome): Note[] {
  const { box, sink } = work.input;
  const notes: Note[] = [];
  const back = air.passages.filter((passage) => passage.share * Math.sign(air.flow_m3PerS || 1) < -1e-3);
  if (back.length > 0) {
    const most = back.reduce((worst, passage) => (passage.share < worst.share ? passage : worst));
    notes.push({ code: 'airRunsBack', severity: 'caution', variable: 'share', value: Math.abs(most.share) });
  }
  if (air.running) return notes;
  if (Math.abs(Math.cos(box.tilt_rad)) < 0.5)
    notes.push({ code: 'lyingFins', severity: 'caution', variable: 'tilt_rad', value: box.tilt_rad });
  const hottest_K = heat.sinks.reduce(
    (most, each) => Math.max(most, each?.before_K ?? 0, each?.after_K ?? 0),
    0,
  );
  const { room } = work;
  const nu = room.mu_PaS / room.rho_kgPerM3;
  const gap_m = work.bank.finGap_m;
  const perKelvin = buoyancy_PerM3K(1 / room.T_K, nu, nu / room.prandtl);
  const ra = rayleigh(perKelvin, Math.max(0, hottest_K - heat.entering_K), gap_m);
  notes.push(...judge(draught, { elenbaas: elenbaas(ra, gap_m, sink.length_m) }));
  return notes;
}

function sinkNotes(judge: Judge, work: Work, sink: SinkHeat, s: number): Note[] {
  const { bank, input } = work;
  const { finHeight_m, length_m } = input.sink;
  const where = `sink ${s + 1}`;
  const properties = work.inSink[s] as Work['room'];
  const { channel, reynolds } = sink;
  const xPlus = channel.lengthOverDiameter / reynolds;
  const notes = judge(frictionApparent, { xPlus }, where);
  const zStar = channel.zStarScale / (reynolds * properties.prandtl);
  const aspect = Math.min(bank.finGap_m, finHeight_m) / Math.max(bank.finGap_m, finHeight_m);
  notes.push(...judge(nusseltDeveloping, { zStar, aspect, prandtl: properties.prandtl }, where));
  if (reynolds > 1500 && reynolds < 4000) {
    notes.push({
      code: 'transition',
      severity: 'caution',
      where,
      variable: 'reynolds',
      value: reynolds,
      low: 1500,
      high: 4000,
    });
  }
  // Second opinion: an independent relation on the entering air, where it holds. Both see the same fins.
  const reynoldsStar =
    (properties.rho_kgPerM3 * sink.velocity_mPerS * bank.finGap_m * bank.finGap_m) /
    (properties.mu_PaS * length_m);
  const [low, high] = plateFin.range.reynoldsStar ?? [null, null];
  if (low !== null && high !== null && reynoldsStar > low && reynoldsStar < high && aspect < 0.5) {
    const h =
      (nusseltPlateFinInletBasis(reynoldsStar, properties.prandtl) * properties.k_WPerMK) / bank.finGap_m;
    const plate_WPerK = (sink.plateToAir_WPerK * sink.plates * h) / sink.h_WPerM2K;
    const series_WPerK = 1 / (1 / (sink.plateToAir_WPerK * sink.plates) + 1 / sink.carry_WPerK);
    const ratio = plate_WPerK / series_WPerK;
    if (ratio < 0.8 || ratio > 1.25)
      notes.push({
        code: 'secondOpinion',
        severity: 'caution',
        where,
        card: plateFin.id,
        variable: 'ratio',
        value: ratio,
        low: 0.8,
        high: 1.25,
      });
  }
  return notes;
}

function spreadingNotes(judge: Judge, work: Work): Note[] {
  const { sink } = work.input;
  const plateArea_m2 = sink.width_m * sink.length_m;
  const plateRadius_m = Math.sqrt(plateArea_m2 / Math.PI);
  const plateAspect = Math.max(sink.width_m, sink.length_m) / Math.min(sink.width_m, sink.length_m);
  const seen = new Set<PartInput>();
  return work.input.positions.flatMap(({ part }, r) => {
    if (seen.has(part)) return [];
    seen.add(part);
    const sourceRadius_m = Math.sqrt((part.length_m * part.width_m) / Math.PI);
    return judge(
      spreading,
      {
        radiusRatio: sourceRadius_m / plateRadius_m,
        thicknessRatio: sink.plate_m / plateRadius_m,
        sourceAspect: Math.max(part.length_m, part.width_m) / Math.min(part.length_m, part.width_m),
        plateAspect,
      },
      `resistor ${r + 1}`,
    );
  });
}
