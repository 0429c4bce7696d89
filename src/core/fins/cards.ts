import { card as between } from './finBetweenPlates.ts';
import { card as efficiency } from './finEfficiency.ts';
import { card as isothermal } from './isothermalSinkResistance_KPerW.ts';
import { card as optimum } from './optimumForcedGap_m.ts';
import { card as warming } from './sinkAirConductance_WPerK.ts';

export const cards = [efficiency, between, warming, isothermal, optimum] as const;
