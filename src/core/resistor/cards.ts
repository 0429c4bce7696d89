import { card as derating } from './allowedPower_W.ts';
import { card as lateral } from './chipLateralResistance_KPerW.ts';
import { card as drift } from './resistanceDrift.ts';
import { card as load } from './splitLoad.ts';

export const cards = [derating, lateral, drift, load] as const;
