import { card as soundAtSpeed } from './soundLevel.ts';

export const cards = [soundAtSpeed] as const;
