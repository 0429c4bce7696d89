import { card as filamentBond } from '../../conduction/bondConductivityWithFilament.ts';
import { card as bondCard } from '../../conduction/bondResistance_KPerW.ts';
import { card as slab } from '../../conduction/slabResistance_KPerW.ts';
import { card as spreading } from '../../conduction/spreadingLee.ts';
import { card as lateral } from '../../resistor/chipLateralResistance_KPerW.ts';
import type { PlateContact, PositionPath } from '../heatPath.ts';
import type { PartInput } from '../input.ts';
import {
  biotNumber,
  conductance,
  contactConductance,
  filamentInBond,
  fittedConductivity,
  inSeries,
  manyFaces,
  plateDepth,
  rectangle,
  sourceRatio,
} from './balances/contactBalances.ts';
import { always, type Place, type Quantity } from './book.ts';
import type { Telling } from './telling.ts';
import type { SinkTold } from './tellSinks.ts';

/** One way from a chip into a plate. */
export interface ContactTold {
  readonly ahead_KPerW: Quantity | number;
  readonly bond_KPerW: Quantity;
  readonly plate_KPerW: Quantity;
  readonly spreading_KPerW: Quantity;
  readonly G_WPerK: Quantity;
}

export interface ChipTold {
  readonly through_WPerK: Quantity;
  readonly along_WPerK: Quantity;
  readonly film: ContactTold | null;
  readonly second: ContactTold | null;
}

/** A chip with its ways out: through and along its ceramic, and into the plates beside it. */
export function tellChip(t: Telling, r: number, sinks: readonly (SinkTold | null)[]): ChipTold {
  const { input, heat } = t.work;
  const { part } = input.positions[r] as (typeof input.positions)[number];
  const path = heat.positions[r] as PositionPath;
  const place = t.at('resistor', r);
  const { length_m, width_m, thickness_m, ceramic_WPerMK: k_WPerMK } = part;
  const area_m2 = t.balance(rectangle, place, { length_m, width_m });
  const through_KPerW = t.card(slab, place, { thickness_m, k_WPerMK, area_m2 });
  const along_KPerW = t.card(lateral, place, { length_m, k_WPerMK, width_m, thickness_m });
  const contact = (way: PlateContact | null, of: (way: PlateContact, sink: SinkTold) => ContactTold) => {
    const sink = way && sinks[way.sink];
    return way && sink ? of(way, sink) : null;
  };
  return {
    through_WPerK: t.balance(conductance, place, { R_KPerW: through_KPerW }),
    along_WPerK: t.balance(conductance, place, { R_KPerW: along_KPerW }),
    film: contact(path.filmContact, (way, sink) => {
      const coating = { thickness_m: part.coating_m, k_WPerMK: part.coating_WPerMK, area_m2 };
      const ahead_KPerW = t.card(slab, place, coating, way.ahead_KPerW);
      return tellContact({ t, place, part, way, sink, ahead_KPerW, area_m2 });
    }),
    second: contact(path.secondContact, (way, sink) =>
      input.secondFace.way === 'tabs'
        ? tellTabs({ t, place, part, way, sink })
        : tellContact({ t, place, part, way, sink, ahead_KPerW: always(0), area_m2 }),
    ),
  };
}

interface Way {
  readonly t: Telling;
  readonly place: Place;
  readonly part: PartInput;
  readonly way: PlateContact;
  readonly sink: SinkTold;
}

function tellTabs(given: Way): ContactTold {
  const { t, place, part, way } = given;
  const face = t.work.input.secondFace;
  const section_m2 = t.balance(manyFaces, place, {
    count: face.tabCount,
    length_m: face.tabWidth_m,
    width_m: face.tabThickness_m,
  });
  const terminals_m2 = t.balance(manyFaces, place, {
    count: 2,
    length_m: part.width_m,
    width_m: face.terminalLength_m,
  });
  const first_KPerW = t.card(slab, place, {
    thickness_m: face.tabLength_m,
    k_WPerMK: face.tab_WPerMK,
    area_m2: section_m2,
  });
  const second_KPerW = t.card(slab, place, {
    thickness_m: face.solder_m,
    k_WPerMK: face.solder_WPerMK,
    area_m2: terminals_m2,
  });
  const ahead_KPerW = t.balance(inSeries, place, { first_KPerW, second_KPerW }, way.ahead_KPerW);
  const area_m2 = t.balance(manyFaces, place, {
    count: face.tabCount,
    length_m: face.tabWidth_m,
    width_m: face.tabLanding_m,
  });
  return tellContact({ ...given, ahead_KPerW, area_m2 });
}

function tellContact(
  given: Way & { readonly ahead_KPerW: Quantity | number; readonly area_m2: Quantity },
): ContactTold {
  const { t, place, way, ahead_KPerW } = given;
  const { sink, factors } = t.work.input;
  const { plate_m: thickness_m, k_WPerMK, length_m, width_m } = sink;
  const plate_m2 = t.balance(rectangle, t.at('box'), { length_m, width_m });
  const plate_KPerW = t.card(
    slab,
    t.at('box'),
    { thickness_m, k_WPerMK, area_m2: plate_m2 },
    way.plate_KPerW,
  );
  const bond_KPerW = tellBond(given);
  const spreading_KPerW = tellSpreading(given, plate_m2);
  const parts = { ahead_KPerW, bond_KPerW, plate_KPerW, factor: factors.spreading, spreading_KPerW };
  const known = t.work.heat.network.G_WPerK[way.conductance] as number;
  return { ...parts, G_WPerK: t.balance(contactConductance, place, parts, known) };
}

function tellBond({ t, place, way, area_m2 }: Way & { readonly area_m2: Quantity }): Quantity {
  const { bond, factors } = t.work.input;
  const factor = factors.bondConductivity;
  const adhesive_WPerMK =
    factor === 1
      ? bond.k_WPerMK
      : t.balance(fittedConductivity, t.at('box'), { factor, k_WPerMK: bond.k_WPerMK });
  const { filament_m, filament_WPerMK, filamentLength_m: laid_m } = bond;
  const k_WPerMK =
    laid_m > 0
      ? t.card(filamentBond, place, {
          adhesive_WPerMK,
          filament_WPerMK,
          filament_m,
          filamentLength_m: t.balance(filamentInBond, place, { laid_m, area_m2, filament_m }),
          area_m2,
        })
      : adhesive_WPerMK;
  const layer = { thickness_m: filament_m, k_WPerMK, area_m2, voidShare: bond.voidShare };
  return t.card(bondCard, place, { ...layer, contactPerFace_m2KPerW: bond.contact_m2KPerW }, way.bond_KPerW);
}

function tellSpreading(
  { t, place, part, sink: told, area_m2 }: Way & { readonly area_m2: Quantity },
  plate_m2: Quantity,
): Quantity {
  const { sink } = t.work.input;
  const { k_WPerMK, plate_m: thickness_m } = sink;
  const ratio = (a: number, b: number) => Math.max(a, b) / Math.min(a, b);
  return t.card(spreading, place, {
    radiusRatio: t.balance(sourceRatio, place, { source_m2: area_m2, plate_m2 }),
    thicknessRatio: t.balance(plateDepth, t.at('box'), { thickness_m, plate_m2 }),
    biot: t.balance(biotNumber, place, { h_WPerM2K: told.plateH_WPerM2K, plate_m2, k_WPerMK }),
    sourceAspect: ratio(part.length_m, part.width_m),
    plateAspect: ratio(sink.width_m, sink.length_m),
    plateArea_m2: plate_m2,
    k_WPerMK,
  });
}
