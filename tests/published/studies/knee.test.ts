import { describe, test } from 'vitest';
import { kneeOf } from '../../../src/studies/gaps/knee.ts';
import { published } from '../../helpers/published.ts';

/**
 * Satopää, Albrecht, Irwin & Raghavan 2011, "Finding a «Kneedle» in a Haystack: Detecting Knee Points in System
 * Behavior", 31st International Conference on Distributed Computing Systems Workshops, 166–171, doi 10.1109/ICDCSW.2011.20.
 * Its figure 2, seen through a public re-computation in the documentation of a general-purpose library for knees, which
 * prints ten points and the knee.
 */
describe('Satopää et al. 2011, figure 2 – ten points of a concave rising curve', () => {
  const xs = ['0.0', '0.111', '0.222', '0.333', '0.444', '0.556', '0.667', '0.778', '0.889', '1.0'].map(
    Number,
  );
  const ys = ['-5.0', '0.263', '1.897', '2.692', '3.163', '3.475', '3.696', '3.861', '3.989', '4.091'].map(
    Number,
  );

  test('knee at 0.222', () => {
    const knee = kneeOf(xs.map((x, i) => ({ x, y: ys[i] as number })));
    const satopaa = published({
      source:
        'Satopää, Albrecht, Irwin & Raghavan 2011, 31st Int. Conf. Distributed Computing Systems Workshops, 166–171',
      where: 'figure 2, through a public re-computation',
      kind: 'worked example',
    });
    satopaa.says('knee, along', knee?.x ?? Number.NaN, '0.222');
    satopaa.says('knee, up', knee?.y ?? Number.NaN, '1.897');
  });
});
