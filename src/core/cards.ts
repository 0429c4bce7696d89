import { cards as air } from './air/cards.ts';
import type { Card } from './card.ts';
import { cards as channel } from './channel/cards.ts';
import { cards as conduction } from './conduction/cards.ts';
import { cards as fan } from './fan/cards.ts';
import { cards as freeConvection } from './freeConvection/cards.ts';
import { cards as heat } from './heat/cards.ts';
import { cards as losses } from './losses/cards.ts';
import { cards as radiation } from './radiation/cards.ts';

/** Every method's record, in the order of the answer: air, channels, losses, fan, solids, room, time. */
export const cards: readonly Card[] = [
  ...air,
  ...channel,
  ...losses,
  ...fan,
  ...conduction,
  ...freeConvection,
  ...radiation,
  ...heat,
];
