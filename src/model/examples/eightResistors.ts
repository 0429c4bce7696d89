import { defaultDesign, defaultPart, defaultPosition } from '../defaults.ts';
import type { Design } from '../design.ts';

/** Invented: eight power resistors across a bench supply, a 60 mm fan, a tight baffle that decides the matter. */
export const eightResistors: Design = {
  ...defaultDesign,
  title: 'Eight in a row',
  variant: '',
  revision: 'B',
  remark: 'Invented example: eight resistors of 4 W between nine sinks. The baffle decides: try it without.',
  invented: true,
  room: { ...defaultDesign.room, T_K: 313.15 },
  load: { ...defaultDesign.load, atWorst: false },
  parts: [{ ...defaultPart, name: 'Invented chip 6 × 3, 22 Ω', R_Ohm: 22, rated_W: 5 }],
  positions: Array.from({ length: 8 }, () => ({ ...defaultPosition, power_W: 4 })),
  bond: { ...defaultDesign.bond, glassTransition_K: 373.15 },
  fan: {
    ...defaultDesign.fan,
    name: 'Invented 60 mm fan, 12 V',
    curve: [
      { flow_m3PerS: 0, dp_Pa: 46 },
      { flow_m3PerS: 0.002, dp_Pa: 40 },
      { flow_m3PerS: 0.004, dp_Pa: 33 },
      { flow_m3PerS: 0.006, dp_Pa: 24 },
      { flow_m3PerS: 0.008, dp_Pa: 12.5 },
      { flow_m3PerS: 0.0098, dp_Pa: 0 },
    ],
  },
  box: { ...defaultDesign.box, length_m: 0.15 },
};
