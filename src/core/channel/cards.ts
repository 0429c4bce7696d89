import { card as apparent } from './frictionApparent.ts';
import { card as apparentShah } from './frictionApparentShah1978.ts';
import { card as friction } from './frictionDeveloped.ts';
import { card as frictionSeries } from './frictionDevelopedSeries.ts';
import { card as turbulent } from './frictionTurbulent.ts';
import { card as momentum } from './momentumFactor.ts';
import { card as h1 } from './nusseltDevelopedH1.ts';
import { card as t } from './nusseltDevelopedT.ts';
import { card as threeWalls } from './nusseltDevelopedThreeWalls.ts';
import { card as developing } from './nusseltDeveloping.ts';
import { card as plateFin } from './nusseltPlateFinInletBasis.ts';
import { card as plates } from './nusseltPlatesDeveloping.ts';
import { card as stephan } from './nusseltPlatesStephan1959.ts';
import { card as nusseltTurbulent } from './nusseltTurbulent.ts';

export const cards = [
  friction,
  frictionSeries,
  apparent,
  apparentShah,
  turbulent,
  momentum,
  t,
  h1,
  threeWalls,
  developing,
  plates,
  stephan,
  plateFin,
  nusseltTurbulent,
] as const;
