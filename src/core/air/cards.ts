import { card as conductivity } from './conductivity_WPerMK.ts';
import { card as density } from './density_kgPerM3.ts';
import { card as heatCapacity } from './heatCapacity_JPerKgK.ts';
import { card as moist } from './moistFactor.ts';
import { card as saturation } from './saturationPressure_Pa.ts';
import { card as pressure } from './standardPressure_Pa.ts';
import { card as viscosity } from './viscosity_PaS.ts';

export const cards = [density, viscosity, conductivity, heatCapacity, pressure, saturation, moist] as const;
