import { card as draught } from './draught_Pa.ts';
import { card as elenbaas } from './elenbaas.ts';
import { card as nusseltChannelBarCohenRohsenow1984 } from './nusseltChannelBarCohenRohsenow1984.ts';
import { card as nusseltChannelElenbaas1942 } from './nusseltChannelElenbaas1942.ts';
import { card as nusseltChannelOneSideBarCohenRohsenow1984 } from './nusseltChannelOneSideBarCohenRohsenow1984.ts';
import { card as nusseltHorizontalDown } from './nusseltHorizontalDown.ts';
import { card as nusseltHorizontalUp } from './nusseltHorizontalUp.ts';
import { card as nusseltHorizontalUpLaminar } from './nusseltHorizontalUpLaminar.ts';
import { card as nusseltHorizontalUpTurbulent } from './nusseltHorizontalUpTurbulent.ts';
import { card as nusseltVerticalPlateChurchillChu1975 } from './nusseltVerticalPlateChurchillChu1975.ts';
import { card as nusseltVerticalPlateLaminarChurchillChu1975 } from './nusseltVerticalPlateLaminarChurchillChu1975.ts';
import { card as optimumGap } from './optimumGap_m.ts';
import { card as rayleigh } from './rayleigh.ts';

export const cards = [
  rayleigh,
  elenbaas,
  nusseltChannelBarCohenRohsenow1984,
  nusseltChannelOneSideBarCohenRohsenow1984,
  nusseltChannelElenbaas1942,
  optimumGap,
  nusseltVerticalPlateChurchillChu1975,
  nusseltVerticalPlateLaminarChurchillChu1975,
  nusseltHorizontalUp,
  nusseltHorizontalUpLaminar,
  nusseltHorizontalUpTurbulent,
  nusseltHorizontalDown,
  draught,
] as const;
