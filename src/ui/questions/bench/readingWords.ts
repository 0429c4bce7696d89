import type { ReadingList } from '../../../model/readings.ts';

/** What the editor calls each list, one row of it, and the way to another. */
export const listWords: Readonly<
  Record<ReadingList, { readonly many: string; readonly one: string; readonly add: string }>
> = {
  temperatures: { many: 'Temperatures', one: 'Temperature', add: 'Add a temperature' },
  pressures: { many: 'Pressure in the plenum', one: 'Pressure', add: 'Add a pressure' },
  flows: { many: 'Flow through the box', one: 'Flow', add: 'Add a flow' },
  voltages: { many: 'Volts at the fan', one: 'Fan volts', add: 'Add fan volts' },
  sounds: { many: 'Sound', one: 'Sound', add: 'Add a sound' },
};
