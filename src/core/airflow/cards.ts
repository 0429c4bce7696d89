import { card as airNetwork } from './firstShare.ts';

export const cards = [airNetwork] as const;
