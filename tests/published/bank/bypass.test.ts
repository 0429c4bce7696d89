import { describe, expect, test } from 'vitest';
import { published } from '../../helpers/published.ts';
import { driven, fanA, fins, imposed, slot } from './referenceSink.ts';

const program = published({
  source: 'ownComputation',
  where: 'parallel passages with their own dynamic head and a common outlet, Python library scipy 1.10.1',
  kind: 'computed elsewhere',
  methods: ['airNetwork'],
});
const pressures = { within: 0.01, because: 'composite apparent friction, air properties rounded' };
const shares = { off: 0.002, because: 'one part in five hundred of the flow' };
const of = { flow: 'flow [m³/s]', pressure: 'pressure [Pa]', share: 'share that slips past' };

describe('one sink in a slot, flow imposed (independent computation, K entrance 0.4, K exit 1)', () => {
  const rows = [
    // flow m³/s, gap mm, bypass share, Δp Pa
    [1e-3, 0.5, 0.0035, 3.259],
    [1e-3, 1, 0.0262, 3.14],
    [1e-3, 2, 0.1331, 2.605],
    [1e-3, 4, 0.3442, 1.682],
    [2e-3, 0.5, 0.0056, 10.335],
    [2e-3, 1, 0.0383, 9.758],
    [2e-3, 2, 0.1527, 7.863],
    [2e-3, 4, 0.3409, 5.156],
    [4e-3, 0.5, 0.0092, 34.668],
    [4e-3, 1, 0.0539, 31.922],
    [4e-3, 2, 0.1672, 25.438],
    [4e-3, 4, 0.3384, 16.961],
  ] as const;
  test.each(rows)('%f m³/s with a gap of %f mm lets %f past at %f Pa', (flow, gap_mm, bypass, dp) => {
    const found = imposed([fins(1.4), slot(gap_mm * 1e-3, 1.4)], flow);
    expect(found.converged).toBe(true);
    program.says(of.share, found.share[1] as number, bypass.toFixed(4), shares);
    program.says(of.pressure, found.dp_Pa, String(dp), pressures);
  });
});

describe('the same sink behind fan A and a guard of K 3 on 2500 mm² (independent computation)', () => {
  const guard = { kind: 'loss', loss: 3, area_m2: 2500e-6, size_m: 0.05 } as const;
  const rho = 1.1839;
  const rows = [
    // gap mm, flow, fan Pa, bypass, fin velocity
    [0.5, 3.6626e-3, 33.463, 0.0086, 4.655],
    [1, 3.7855e-3, 33.076, 0.0526, 4.598],
    [2, 4.1449e-3, 31.944, 0.1678, 4.422],
    [4, 4.7963e-3, 29.918, 0.3378, 4.072],
  ] as const;
  test.each(rows)('a gap of %f mm settles at %f m³/s and %f Pa', (gap_mm, flow, fan_Pa, bypass, velocity) => {
    const found = driven(fanA(rho), guard, [fins(1.4), slot(gap_mm * 1e-3, 1.4)]);
    expect(found.converged).toBe(true);
    program.says(of.flow, found.flow_m3PerS, String(flow), pressures);
    program.says(of.pressure, found.fan_Pa, String(fan_Pa), pressures);
    program.says(of.share, found.share[1] as number, bypass.toFixed(4), shares);
    program.says('speed between the fins [m/s]', found.finVelocity_mPerS, String(velocity), pressures);
  });

  test('at three quarters of the speed it settles at 2.7458e-3 m³/s and 18.826 Pa', () => {
    const found = driven(fanA(rho, 0.75), guard, [fins(1.4), slot(1e-3, 1.4)]);
    program.says(of.flow, found.flow_m3PerS, '2.7458e-3', pressures);
    program.says(of.pressure, found.fan_Pa, '18.826', pressures);
  });

  test('at 1500 m (84 556 Pa) the volume falls by 2 % and the pressure to 27.804 Pa', () => {
    const found = driven(fanA(rho), guard, [fins(1.4), slot(1e-3, 1.4)], 84556);
    program.says(of.flow, found.flow_m3PerS, '3.7087e-3', pressures);
    program.says(of.pressure, found.fan_Pa, '27.804', pressures);
  });
});
