import { defaultDesign, defaultPart, defaultPosition } from '../defaults.ts';
import type { Design } from '../design.ts';

/** Invented: one precision resistor between two sinks, cooled by a small fan and hardly warm. */
export const onePair: Design = {
  ...defaultDesign,
  title: 'One resistor, two sinks',
  variant: '',
  revision: 'A',
  remark: 'Invented example: a reference resistor that should stay cool.',
  invented: true,
  room: { ...defaultDesign.room, T_K: 298.15 },
  load: { ...defaultDesign.load, excitation: 'seriesAmps', supply_A: 0.4, supplyTolerance: 0.01 },
  parts: [{ ...defaultPart, name: 'Invented chip 6 × 3, 10 Ω', tolerance: 0.001, tcr_perK: 5e-6 }],
  positions: [{ ...defaultPosition, power_W: 1.6 }],
  sink: { ...defaultDesign.sink, length_m: 0.02, width_m: 0.02, finCount: 7 },
  fan: {
    ...defaultDesign.fan,
    name: 'Invented 40 mm fan, 12 V',
    start_V: 5,
    power_W: 0.8,
    rotation_PerS: 95,
    size_m: 0.04,
    opening_m: 0.037,
    hub_m: 0.02,
    depth_m: 0.02,
    sound_dBA: 28,
    curve: [
      { flow_m3PerS: 0, dp_Pa: 35 },
      { flow_m3PerS: 0.001, dp_Pa: 26 },
      { flow_m3PerS: 0.002, dp_Pa: 17 },
      { flow_m3PerS: 0.003, dp_Pa: 7 },
      { flow_m3PerS: 0.0036, dp_Pa: 0 },
    ],
  },
  plenum: { height_m: 0.025, neckAngle_rad: 0.6, neckLength_m: 0.02 },
  baffle: { ...defaultDesign.baffle, slotWidth_m: 0.016, collar_m: 0.015 },
  box: { ...defaultDesign.box, length_m: 0.04, width_m: 0.035 },
};
