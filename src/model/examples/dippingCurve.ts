import type { Design } from '../design.ts';
import { eightResistors } from './eightResistors.ts';

/** Invented: a fan whose curve dips, so that it meets the box at three flows; it can stay at two of them. */
export const dippingCurve: Design = {
  ...eightResistors,
  title: 'Fan with a dip in its curve',
  variant: '',
  revision: 'A',
  remark: 'Invented example: this fan meets the box at three flows and can stay at two of them.',
  positions: eightResistors.positions.map((position) => ({ ...position, power_W: 3 })),
  fan: {
    ...eightResistors.fan,
    name: 'Invented 60 mm fan with a dip, 12 V',
    curve: [
      { flow_m3PerS: 0, dp_Pa: 52 },
      { flow_m3PerS: 0.002, dp_Pa: 40 },
      { flow_m3PerS: 0.0038, dp_Pa: 20 },
      { flow_m3PerS: 0.0046, dp_Pa: 14 },
      { flow_m3PerS: 0.0056, dp_Pa: 33 },
      { flow_m3PerS: 0.0075, dp_Pa: 31 },
      { flow_m3PerS: 0.01, dp_Pa: 18 },
      { flow_m3PerS: 0.0128, dp_Pa: 0 },
    ],
  },
};
