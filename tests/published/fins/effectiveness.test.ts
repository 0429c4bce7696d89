import { describe, test } from 'vitest';
import { isothermalSinkResistance_KPerW } from '../../../src/core/fins/isothermalSinkResistance_KPerW.ts';
import { sinkAirConductance_WPerK } from '../../../src/core/fins/sinkAirConductance_WPerK.ts';
import { published } from '../../helpers/published.ts';

// One stream past a wall at one temperature.
describe('a sink at one temperature', () => {
  const program = published({
    source: 'incropera',
    where: 'ch. 11, effectiveness of one stream, in a separate program',
    kind: 'worked again',
    methods: ['isothermalSinkResistance', 'sinkAirConductance'],
  });
  const rows = [
    [0.8, 2.38, '0.28547', '1.47183'],
    [2, 2, '0.63212', '0.79099'],
    [5, 1, '0.99326', '1.00678'],
  ] as const;

  test.each(rows)('UA %f, ṁc_p %f W/K: effectiveness %s, %s K/W', (UA, capacity, effectiveness, R) => {
    const found = isothermalSinkResistance_KPerW(UA, capacity);
    program.says('thermal resistance [K/W]', found, R);
    program.says('effectiveness', 1 / (found * capacity), effectiveness);
  });

  test.each(rows)('UA %f, ṁc_p %f W/K: the same by way of the mean air', (UA, capacity, _, R) => {
    const found = 1 / UA + 1 / sinkAirConductance_WPerK(UA, capacity);
    program.says('thermal resistance [K/W]', found, R);
  });
});
