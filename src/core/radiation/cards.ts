import { card as channelEmissivity } from './channelEmissivity.ts';
import { card as channelEmissivityGroove } from './channelEmissivityGroove.ts';
import { card as channelEmissivityQuick } from './channelEmissivityQuick.ts';
import { card as facingEmissivity } from './facingEmissivity.ts';
import { card as radiationCoefficient } from './radiationCoefficient_WPerM2K.ts';
import { card as radiationCoefficientAtMean } from './radiationCoefficientAtMean_WPerM2K.ts';
import { card as radiationFlux } from './radiationFlux_WPerM2.ts';

export const cards = [
  radiationFlux,
  radiationCoefficient,
  radiationCoefficientAtMean,
  channelEmissivity,
  channelEmissivityQuick,
  channelEmissivityGroove,
  facingEmissivity,
] as const;
