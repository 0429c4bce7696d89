import { defaultDesign, defaultPart, defaultPosition } from '../defaults.ts';
import type { Design } from '../design.ts';

/** Invented: a decade of a load bank, three kinds of chip, each switched across the supply by itself, some of them off. */
export const twoDozen: Design = {
  ...defaultDesign,
  title: 'Two dozen, partly off',
  variant: '',
  revision: 'C',
  remark: 'Invented example: a switched load bank; every fifth step is off.',
  invented: true,
  room: { ...defaultDesign.room, T_K: 303.15 },
  load: { ...defaultDesign.load, excitation: 'switched', supply_V: 12, supplyTolerance: 0.02 },
  parts: [
    { ...defaultPart, name: 'Invented chip 6 × 3, 47 Ω', R_Ohm: 47, rated_W: 5 },
    { ...defaultPart, name: 'Invented chip 6 × 3, 68 Ω', R_Ohm: 68, rated_W: 4 },
    {
      ...defaultPart,
      name: 'Invented chip 5 × 2.5, 150 Ω',
      R_Ohm: 150,
      rated_W: 2,
      length_m: 0.005,
      width_m: 0.0025,
      thickness_m: 0.00055,
    },
  ],
  positions: Array.from({ length: 24 }, (_, index) => ({
    ...defaultPosition,
    part: index % 3,
    on: index % 5 !== 4,
    flipped: index >= 12,
  })),
  secondFace: { ...defaultDesign.secondFace, tabWidth_m: 0.0025 },
  fan: {
    ...defaultDesign.fan,
    name: 'Invented 80 mm fan, 12 V',
    power_W: 3,
    rotation_PerS: 45,
    size_m: 0.08,
    opening_m: 0.076,
    hub_m: 0.035,
    sound_dBA: 35,
    curve: [
      { flow_m3PerS: 0, dp_Pa: 62 },
      { flow_m3PerS: 0.004, dp_Pa: 53 },
      { flow_m3PerS: 0.008, dp_Pa: 43 },
      { flow_m3PerS: 0.012, dp_Pa: 31 },
      { flow_m3PerS: 0.016, dp_Pa: 16 },
      { flow_m3PerS: 0.0195, dp_Pa: 0 },
    ],
  },
  plenum: { height_m: 0.07, neckAngle_rad: 0.8, neckLength_m: 0.04 },
  box: { ...defaultDesign.box, length_m: 0.41, width_m: 0.06 },
};
