import { card as between } from './finBetweenPlates.ts';
import { card as efficiency } from './finEfficiency.ts';
import { card as isothermal } from './isothermalSinkResistance_KPerW.ts';
import { card as optimum } from './optimumForcedGap_m.ts';
import { card as optimumCrossing } from './optimumForcedGapCrossing_m.ts';
import { card as overall } from './overallEfficiency.ts';
import { card as warming } from './sinkAirConductance_WPerK.ts';

export const cards = [efficiency, overall, between, warming, isothermal, optimum, optimumCrossing] as const;
