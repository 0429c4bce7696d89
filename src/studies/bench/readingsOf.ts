import type { Design } from '../../model/design.ts';
import type { Reading } from './types.ts';

/** All readings of a design in one list: temperatures, pressures, flows, volts, sounds, each in the order of the design. */
export function readingsOf({ readings }: Design): Reading[] {
  const found: Omit<Reading, 'index'>[] = [];
  const add = (list: keyof Design['readings'], row: number, reading: Omit<Reading, 'index' | 'path'>) =>
    found.push({ path: `readings.${list}[${row}]`, ...reading });
  const elsewhere = { where: null, number: 0, time_s: null } as const;
  readings.temperatures.forEach((row, i) => {
    const { where, number, reading_K, within_K, load_W, room_K, fan_V, settled, time_s } = row;
    const said = { kind: 'temperature', where, number, value: reading_K, within: within_K } as const;
    add('temperatures', i, { ...said, load_W, room_K, fan_V, time_s: settled ? null : time_s });
  });
  readings.pressures.forEach(({ reading_Pa, within_Pa, ...conditions }, i) => {
    add('pressures', i, {
      kind: 'pressure',
      ...elsewhere,
      value: reading_Pa,
      within: within_Pa,
      ...conditions,
    });
  });
  readings.flows.forEach(({ reading_m3PerS, within_m3PerS, ...conditions }, i) => {
    add('flows', i, {
      kind: 'flow',
      ...elsewhere,
      value: reading_m3PerS,
      within: within_m3PerS,
      ...conditions,
    });
  });
  readings.voltages.forEach(({ reading_V, within_V, ...conditions }, i) => {
    add('voltages', i, {
      kind: 'voltage',
      ...elsewhere,
      value: reading_V,
      within: within_V,
      ...conditions,
    });
  });
  readings.sounds.forEach(({ reading_dBA, within_dBA, ...conditions }, i) => {
    add('sounds', i, {
      kind: 'sound',
      ...elsewhere,
      value: reading_dBA,
      within: within_dBA,
      ...conditions,
    });
  });
  return found.map((reading, index) => ({ index, ...reading }));
}

/** Whether a reading tells of the box: volts at the fan tell of leads and diodes before it, whatever the box does. */
export function tellsOfBox({ kind }: Reading): boolean {
  return kind !== 'voltage';
}

/** Whether any of the unknowns could move it: what is heard is the fan’s data sheet, its volts and the distance. */
export function tellsOfUnknowns({ kind }: Reading): boolean {
  return kind === 'temperature' || kind === 'pressure' || kind === 'flow';
}
