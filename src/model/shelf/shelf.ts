import { alloys } from './alloys.ts';
import { bonds } from './bonds.ts';
import { ceramics } from './ceramics.ts';
import { chips } from './chips.ts';
import type { ShelfEntry } from './entry.ts';
import { filaments } from './filaments.ts';
import { finishes } from './finishes.ts';
import type { KindId } from './kinds.ts';
import { sheets } from './sheets.ts';
import { solders } from './solders.ts';
import { tabs } from './tabs.ts';
import { thicknesses } from './thicknesses.ts';

/** All that comes with the program, by kind. Generic materials and standard sizes only; no maker's product. */
export const shelf: Readonly<Record<KindId, readonly ShelfEntry[]>> = {
  alloy: alloys,
  finish: finishes,
  bond: bonds,
  filament: filaments,
  sheet: sheets,
  thickness: thicknesses,
  chip: chips,
  ceramic: ceramics,
  solder: solders,
  tab: tabs,
};
