import { card as airNetwork } from './parallelPassages.ts';

export const cards = [airNetwork] as const;
