import { card as baffleSlotLoss } from './baffleSlotLoss.ts';
import { card as channelExitDucted } from './channelExitDucted.ts';
import { card as diffuserLoss } from './diffuserLoss.ts';
import { card as exitLoss } from './exitLoss.ts';
import { card as finEntranceLoss } from './finEntranceLoss.ts';
import { card as mitreBendLoss } from './mitreBendLoss.ts';
import { card as neckDownLoss } from './neckDownLoss.ts';
import { card as punchedPlateLoss } from './punchedPlateLoss.ts';
import { card as slotDischarge } from './slotDischarge.ts';
import { card as squareGrillLoss } from './squareGrillLoss.ts';
import { card as suddenContraction } from './suddenContraction.ts';
import { card as suddenExpansion } from './suddenExpansion.ts';
import { card as venaContracta } from './venaContracta.ts';
import { card as wireGuardLoss } from './wireGuardLoss.ts';

export const cards = [
  baffleSlotLoss,
  channelExitDucted,
  diffuserLoss,
  exitLoss,
  finEntranceLoss,
  mitreBendLoss,
  neckDownLoss,
  punchedPlateLoss,
  slotDischarge,
  squareGrillLoss,
  suddenContraction,
  suddenExpansion,
  venaContracta,
  wireGuardLoss,
] as const;
