import type { Design } from '../design.ts';
import { supplyKindOf } from '../toCore.ts';

type Rule = readonly [pattern: RegExp, isRead: (design: Design) => boolean];

const sheeted = ({ kind }: Design['outlet']) => kind !== 'none' && kind !== 'ownLoss';

/** Which inputs an answer does not depend on as the design stands; every other it does. */
const rules: readonly Rule[] = [
  [/^positions\[\]\.power_W$/, ({ load }) => load.excitation === 'wattsEach'],
  [/^parts\[\]\.R_Ohm$/, ({ load }) => load.excitation !== 'wattsEach'],
  [/^load\.supply_V$/, ({ load }) => supplyKindOf[load.excitation] === 'volts'],
  [/^load\.supply_A$/, ({ load }) => supplyKindOf[load.excitation] === 'amps'],
  [/^fan\.supplySag$/, ({ fan }) => fan.supplySag > 0],
  [/^baffle\./, ({ baffle }) => baffle.fitted],
  [/^secondFace\./, ({ secondFace }) => secondFace.way === 'tabs'],
  [/^bond\.filament(Length_m|_WPerMK)$/, ({ bond }) => bond.filamentLength_m > 0],
  [/^inlet\.filter/, ({ inlet }) => inlet.filter],
  [/^inlet\.guard\.freeShare$/, ({ inlet }) => sheeted(inlet.guard)],
  [/^inlet\.guard\.loss$/, ({ inlet }) => inlet.guard.kind === 'ownLoss'],
  [/^outlet\.freeShare$/, ({ outlet }) => sheeted(outlet)],
  [/^outlet\.loss$/, ({ outlet }) => outlet.kind === 'ownLoss'],
  [/^moreFans/, ({ moreFans }) => moreFans.length > 0],
  [/^extras\[\]\.(loss|area_m2)$/, ({ extras }) => extras.some(({ points }) => points.length === 0)],
  [/^extras\[\]\.points/, ({ extras }) => extras.some(({ points }) => points.length > 0)],
  [/^room\.altitude_m$/, ({ room }) => room.pressureFrom === 'altitude'],
  [/^room\.pressure_Pa$/, ({ room }) => room.pressureFrom === 'barometer'],
];

/** @param pattern a place with rows left out */
export function isRead(design: Design, pattern: string): boolean {
  return rules.every(([of, read]) => !of.test(pattern) || read(design));
}
