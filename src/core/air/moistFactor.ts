import { defineCard } from '../card.ts';
import { saturationPressure_Pa } from './saturationPressure_Pa.ts';

/** Gas constant of dry air over that of water vapour, from one. */
const lighter = 1 - 287.053 / 461.495;

/**
 * Density of moist air over that of dry air at the same temperature and pressure. The vapour share stays the same when
 * the air is heated, so one factor serves the whole box. Vapour never takes more than half of the pressure here.
 */
export function moistFactor(T_K: number, p_Pa: number, relativeHumidity: number): number {
  return moistFactorAt(saturationPressure_Pa(T_K), p_Pa, relativeHumidity);
}

/** The same from the pressure at which vapour condenses. */
function moistFactorAt(saturation_Pa: number, p_Pa: number, relativeHumidity: number): number {
  const vapour_Pa = Math.min(relativeHumidity * saturation_Pa, 0.5 * p_Pa);
  return 1 - (lighter * vapour_Pa) / p_Pa;
}

export const card = defineCard({
  id: 'moistFactor',
  title: 'Density of moist over dry air',
  equation: 'm = 1 − (1 − 287.053/461.495)·min(φ·p_s, p/2)/p',
  result: { name: 'ratio', unit: '1', symbol: 'm' },
  symbols: { saturation_Pa: 'p_s', p_Pa: 'p', relativeHumidity: 'φ' },
  source: { key: 'alduchovEskridge1996', where: 'vapour pressure; ideal mixture' },
  range: { relativeHumidity: [0, 1] },
  rangeFrom: 'textbook',
  scatter: { sigma: 0.0005, from: 'computed' },
  assumes: ['dryIdealGas'],
  example: {
    given: { saturation_Pa: 3161.74, p_Pa: 101325, relativeHumidity: 0.5 },
    printed: '0.99410',
    kind: 'worked again',
    where: 'computed from ρ = (p − e)/(R_d·T) + e/(R_v·T): 1.17693 over 1.18391',
  },
  evaluate: ({ saturation_Pa, p_Pa, relativeHumidity }) =>
    moistFactorAt(saturation_Pa, p_Pa, relativeHumidity),
});
