import { card as fanGroup } from './fanGroupPressure.ts';
import { card as fanLaws } from './fanPressure.ts';

export const cards = [fanLaws, fanGroup] as const;
