import { card as bladePass } from './bladePassFrequency_Hz.ts';
import { card as soundAtDistance } from './soundAtDistance_dBA.ts';
import { card as soundAtSpeed } from './soundAtSpeed_dBA.ts';
import { card as soundSum } from './soundSum_dBA.ts';

export const cards = [soundAtSpeed, soundSum, soundAtDistance, bladePass] as const;
