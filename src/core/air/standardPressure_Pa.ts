import { defineCard } from '../card.ts';

/** Air pressure over altitude in the standard atmosphere, lowest layer. Weather moves it by about 3 %. */
export function standardPressure_Pa(altitude_m: number): number {
  return 101325 * ((288.15 - 0.0065 * altitude_m) / 288.15) ** 5.255876;
}

export const card = defineCard({
  id: 'standardPressure',
  title: 'Air pressure over altitude',
  equation: 'p = 101325·((288.15 − 0.0065·H)/288.15)^5.255876',
  result: { name: 'pressure', unit: 'Pa', symbol: 'p' },
  symbols: { altitude_m: 'H' },
  source: { key: 'iso2533', where: 'troposphere, geopotential altitude' },
  range: { altitude_m: [-2000, 11000] },
  rangeFrom: 'memory',
  scatter: { sigma: 0.015, from: 'common practice' },
  assumes: ['dryIdealGas'],
  example: {
    given: { altitude_m: 1500 },
    printed: '84556.0',
    kind: 'worked again',
    where: 'computed from the standard’s formula',
  },
  evaluate: ({ altitude_m }) => standardPressure_Pa(altitude_m),
});
