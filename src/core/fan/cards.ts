import { card as fanGroup } from './fanGroup.ts';
import { card as fanHeat } from './fanHeatRise_K.ts';
import { card as fanLaws } from './fanPressure.ts';
import { card as obstructed } from './obstructedShare.ts';
import { card as fanSpeed } from './speedAtVoltage.ts';
import { card as standingFan } from './standingDrop_Pa.ts';

export const cards = [fanLaws, fanSpeed, fanGroup, standingFan, fanHeat, obstructed] as const;
