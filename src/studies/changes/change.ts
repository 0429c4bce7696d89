import type { Path } from '../../model/path.ts';

export type ChangeKey =
  | 'sideHalved'
  | 'sideClosed'
  | 'endHalved'
  | 'endClosed'
  | 'leakSealed'
  | 'baffleFitted'
  | 'collarRaised'
  | 'slotWider'
  | 'plenumHigher'
  | 'neckGentler'
  | 'guardWider'
  | 'guardWires'
  | 'guardCleaned'
  | 'filterCleaned'
  | 'outletWider'
  | 'outletWires'
  | 'fanRated'
  | 'fanFaster'
  | 'fanBeside'
  | 'fanBehind'
  | 'fanRenewed'
  | 'sagCured'
  | 'inletFree'
  | 'filamentThinner'
  | 'filamentThinnest'
  | 'voidsHalved'
  | 'adhesiveBetter'
  | 'adhesiveHotter'
  | 'secondBonded'
  | 'secondTabs'
  | 'tabsThicker'
  | 'tabsShorter'
  | 'finsMore'
  | 'finsFewer'
  | 'finsThicker'
  | 'finsThinner'
  | 'finsHigher'
  | 'sinkLonger'
  | 'sinkWider'
  | 'plateThicker'
  | 'plateThinner'
  | 'alloyBetter'
  | 'copper'
  | 'surfaceBlack'
  | 'firstSink'
  | 'lastSink'
  | 'flipAlternate'
  | 'flipOutward'
  | 'flipHottest'
  | 'spreadEvenly'
  | 'moveWatts'
  | 'swapPlaces'
  | 'lessLoad';

/** What a change asks of the maker. `louder` is found by solving, never put down beforehand. */
export type Cost = 'cut' | 'buy' | 'assemble' | 'setting' | 'clean' | 'place' | 'split' | 'less' | 'louder';

/** A rule of the workshop that a set of fins breaks and the present set does not. */
export type FinFault =
  | { readonly rule: 'slot'; readonly gap_m: number; readonly now_m: number; readonly cutter_m: number }
  | { readonly rule: 'depth'; readonly milled: boolean; readonly ratio: number; readonly most: number };

/** Other values at places that a design has, such as a button may put there. */
export type Settings = Readonly<Record<Path, boolean | string | number>>;

/** One thing that could be done to a design. */
export interface Change {
  readonly key: ChangeKey;
  readonly values: Settings;
  readonly costs: readonly Cost[];
  /** Why the workshop cannot make it, where it cannot. */
  readonly fault?: FinFault;
}
