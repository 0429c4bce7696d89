import { card as lumpedRise } from './lumpedRise_K.ts';
import { card as lumpedTime } from './lumpedTime_s.ts';
import { card as heatMarch } from './march.ts';
import { card as pulsePeak } from './pulsePeak_K.ts';
import { card as pulseValley } from './pulseValley_K.ts';
import { card as shortPulseRise } from './shortPulseRise_K.ts';
import { card as timeConstant } from './timeConstant_s.ts';
import { card as transient } from './transient.ts';

export const cards = [
  transient,
  heatMarch,
  timeConstant,
  lumpedRise,
  lumpedTime,
  pulsePeak,
  pulseValley,
  shortPulseRise,
] as const;
