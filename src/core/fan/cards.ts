import { card as fanLaws } from './fanPressure.ts';

export const cards = [fanLaws] as const;
