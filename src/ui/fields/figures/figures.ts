import type { DrawnPart } from '../drawnParts.ts';
import { baffle } from './baffle.ts';
import { bonds } from './bonds.ts';
import { box } from './box.ts';
import { fan } from './fan.ts';
import type { FigureOf } from './figure.ts';
import { guard, outlet } from './grille.ts';
import { neck } from './neck.ts';
import { plenum } from './plenum.ts';
import { resistors } from './resistors.ts';
import { secondFace } from './secondFace.ts';
import { sinks } from './sinks.ts';

/** The figures of all parts that have one. */
export const figures: Readonly<Record<DrawnPart, FigureOf>> = {
  fan,
  guard,
  neck,
  plenum,
  baffle,
  sinks,
  resistors,
  bonds,
  secondFace,
  box,
  outlet,
};
