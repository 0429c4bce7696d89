import type { Design } from '../design.ts';
import { dippingCurve } from './dippingCurve.ts';
import { eightResistors } from './eightResistors.ts';
import { onePair } from './onePair.ts';
import { prototype } from './prototype.ts';
import { twoDozen } from './twoDozen.ts';

export type ExampleId = 'eightResistors' | 'onePair' | 'twoDozen' | 'dippingCurve' | 'prototype';

/** Invented scenarios, in the order they are offered. */
export const examples: readonly { readonly id: ExampleId; readonly design: Design }[] = [
  { id: 'eightResistors', design: eightResistors },
  { id: 'onePair', design: onePair },
  { id: 'twoDozen', design: twoDozen },
  { id: 'dippingCurve', design: dippingCurve },
  { id: 'prototype', design: prototype },
];

export function exampleById(id: ExampleId): Design {
  const found = examples.find((example) => example.id === id);
  if (found === undefined) throw new Error(`no example ${id}`);
  return found.design;
}
