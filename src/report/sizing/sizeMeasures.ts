import type { SizerId } from '../../studies/sizing/sizers.ts';
import type { Dimension } from '../format.ts';

/** How a measure that can be sized is asked for, and what it is measured in. */
export interface SizeMeasure {
  readonly label: string;
  readonly dimension: Dimension;
  /** Of a difference, where that is another thing than the measure itself. */
  readonly difference?: Dimension;
  /** A value of it within a sentence: "a load of 28 W". */
  readonly says: (value: string) => string;
}

export const sizeMeasures: Readonly<Record<SizerId, SizeMeasure>> = {
  load: { label: 'Largest load', dimension: 'power', says: (v) => `a load of ${v}` },
  fanSupply: { label: 'Lowest fan supply', dimension: 'voltage', says: (v) => `${v} at the fan` },
  speedLoss: { label: 'Most speed the fan may lose', dimension: 'ratio', says: (v) => `a fan ${v} slower` },
  clearance: {
    label: 'Widest clearance all round',
    dimension: 'length',
    says: (v) => `${v} of clearance all round`,
  },
  sideClearance: {
    label: 'Widest side clearance',
    dimension: 'length',
    says: (v) => `${v} of clearance at the sides`,
  },
  endClearance: {
    label: 'Widest end clearance',
    dimension: 'length',
    says: (v) => `${v} of clearance at the ends`,
  },
  leak: { label: 'Widest leak under the baffle', dimension: 'length', says: (v) => `a leak of ${v}` },
  slot: { label: 'Narrowest baffle slot', dimension: 'length', says: (v) => `a baffle slot of ${v}` },
  bond: { label: 'Thickest bond line', dimension: 'length', says: (v) => `a bond line of ${v}` },
  finLength: { label: 'Shortest fins', dimension: 'length', says: (v) => `fins ${v} long` },
  plenum: { label: 'Lowest plenum', dimension: 'length', says: (v) => `a plenum ${v} high` },
  guardDust: {
    label: 'Most dust on the guard',
    dimension: 'ratio',
    says: (v) => `${v} of dust on the guard`,
  },
  filterDust: {
    label: 'Most dust in the filter',
    dimension: 'ratio',
    says: (v) => `${v} of dust in the filter`,
  },
  room: {
    label: 'Hottest room',
    dimension: 'temperature',
    difference: 'temperatureDifference',
    says: (v) => `a room of ${v}`,
  },
  altitude: { label: 'Highest place', dimension: 'altitude', says: (v) => `a place ${v} high` },
  pressure: { label: 'Thinnest air', dimension: 'pressure', says: (v) => `air of ${v}` },
};
