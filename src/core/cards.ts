import { cards as air } from './air/cards.ts';
import { cards as airflow } from './airflow/cards.ts';
import type { Card } from './card.ts';
import { cards as channel } from './channel/cards.ts';
import { cards as conduction } from './conduction/cards.ts';
import { cards as fan } from './fan/cards.ts';
import { cards as fins } from './fins/cards.ts';
import { cards as freeConvection } from './freeConvection/cards.ts';
import { cards as heat } from './heat/cards.ts';
import { cards as losses } from './losses/cards.ts';
import { cards as radiation } from './radiation/cards.ts';
import { cards as resistor } from './resistor/cards.ts';
import { cards as sound } from './sound/cards.ts';

/** Every method's record, in the order of an answer's way: air, fan, channels, fins, solids, room, time. */
export const cards: readonly Card[] = [
  ...air,
  ...fan,
  ...airflow,
  ...losses,
  ...channel,
  ...fins,
  ...resistor,
  ...conduction,
  ...freeConvection,
  ...radiation,
  ...heat,
  ...sound,
];
