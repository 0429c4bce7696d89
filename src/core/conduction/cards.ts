import { card as bondConductivityByVolume } from './bondConductivityByVolume.ts';
import { card as bondConductivityWithFilament } from './bondConductivityWithFilament.ts';
import { card as bondResistance } from './bondResistance_KPerW.ts';
import { card as longLeadResistance } from './longLeadResistance_KPerW.ts';
import { card as narrowGap } from './narrowGap_WPerM2K.ts';
import { card as parallelResistance } from './parallelResistance_KPerW.ts';
import { card as slabResistance } from './slabResistance_KPerW.ts';
import { card as spreadingPeak } from './spreadingLee.ts';
import { card as spreadingMean } from './spreadingMean_KPerW.ts';
import { card as spreadingSeriesMean } from './spreadingSeriesMean_KPerW.ts';
import { card as spreadingSeriesPeak } from './spreadingSeriesPeak_KPerW.ts';

export const cards = [
  slabResistance,
  bondResistance,
  bondConductivityWithFilament,
  bondConductivityByVolume,
  spreadingPeak,
  spreadingMean,
  spreadingSeriesPeak,
  spreadingSeriesMean,
  longLeadResistance,
  parallelResistance,
  narrowGap,
] as const;
