import { test } from 'vitest';
import { airProperties, createAirProperties } from '../../../src/core/air/airProperties.ts';
import { passageDrop } from '../../../src/core/channel/passageDrop.ts';
import { published } from '../../helpers/published.ts';

const out = new Float64Array(2);

const program = published({
  source: 'ownComputation',
  where: 'the same passage in a separate Python program',
  kind: 'worked again',
  methods: ['frictionApparent'],
});

// Our own sink 50 × 50 × 20 mm, ten channels of 3.9 mm, fully ducted, 25 °C; entrance 0.42(1 − σ²) = 0.16447 and
// exit (1 − σ)² = 0.0484 with σ = 0.78.
test.each([
  [101325, 1e-3, 1.2821, 2.1225],
  [101325, 2e-3, 2.5641, 5.8144],
  [101325, 4e-3, 5.1282, 16.764],
  [84556, 2e-3, 2.5641, 5.3269],
])('%d Pa, %f m³/s: %f m/s in the channels and %f Pa', (p_Pa, flow, velocity, dp_Pa) => {
  const air = createAirProperties();
  airProperties(air, 298.15, p_Pa, 1);
  const v = flow / (10 * 3.9e-3 * 20e-3);
  program.says('velocity in the channels [m/s]', v, velocity.toFixed(4));
  passageDrop(out, v, air.rho_kgPerM3, air.mu_PaS, 3.9e-3, 20e-3, 50e-3, 0.16447 + 0.0484, 1);
  program.says('pressure drop [Pa]', out[0] as number, String(dp_Pa), {
    within: 1e-4,
    because: 'five printed digits, worked with rounded properties',
  });
});
