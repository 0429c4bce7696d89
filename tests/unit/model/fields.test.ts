import { describe, expect, test } from 'vitest';
import { anotherFan, defaultDesign, defaultExtra } from '../../../src/model/defaults.ts';
import type { Design } from '../../../src/model/design.ts';
import { fieldAt, fields, findField, rowLimits } from '../../../src/model/fields.ts';
import { labelOfOption } from '../../../src/model/options.ts';
import { oneReadingEach } from '../../helpers/readings.ts';

/** Patterns of all single values in a design, but for the two that are no input. */
function leaves(value: unknown, path = ''): string[] {
  if (Array.isArray(value)) return value.slice(0, 1).flatMap((item) => leaves(item, `${path}[]`));
  if (typeof value === 'object' && value !== null) {
    return Object.entries(value).flatMap(([key, item]) => leaves(item, path === '' ? key : `${path}.${key}`));
  }
  return path === 'format' || path === 'version' ? [] : [path];
}

const full: Design = {
  ...defaultDesign,
  moreFans: [anotherFan(defaultDesign.fan, 0)],
  extras: [{ ...defaultExtra, points: [{ flow_m3PerS: 1, dp_Pa: 1 }] }],
  readings: oneReadingEach,
  spreads: [{ path: 'room.T_K', kind: 'normal', relative: false, size: 1 }],
};

describe('the fields', () => {
  test('are exactly the single values of a design', () => {
    expect(fields.map(({ pattern }) => pattern).toSorted()).toEqual(leaves(full).toSorted());
  });

  test('all have a label and a help text', () => {
    for (const { label, help, pattern } of fields) {
      expect(label, pattern).not.toBe('');
      expect(help, pattern).not.toBe('');
    }
  });

  test('keep their usual range within their hard limits', () => {
    for (const field of fields) {
      if (field.kind !== 'quantity' && field.kind !== 'count') continue;
      expect(field.hard[0], field.pattern).toBeLessThan(field.hard[1]);
      if (field.usual === null) continue;
      expect(field.usual[0], field.pattern).toBeGreaterThanOrEqual(field.hard[0]);
      expect(field.usual[1], field.pattern).toBeLessThanOrEqual(field.hard[1]);
      expect(field.usual[0], field.pattern).toBeLessThan(field.usual[1]);
    }
  });

  test('take their kind from the schema and their dimension from the suffix', () => {
    expect(fieldAt('sink.length_m')).toMatchObject({
      kind: 'quantity',
      dimension: 'length',
      hard: [0.002, 0.5],
    });
    expect(fieldAt('room.T_K')).toMatchObject({ kind: 'quantity', dimension: 'temperature' });
    expect(fieldAt('room.altitude_m')).toMatchObject({ kind: 'quantity', dimension: 'altitude' });
    expect(fieldAt('positions[7].power_W')).toMatchObject({ kind: 'quantity', dimension: 'power' });
    expect(fieldAt('fan.curve[3].flow_m3PerS')).toMatchObject({ kind: 'quantity', dimension: 'volumeFlow' });
    expect(fieldAt('moreFans[2].curve[3].dp_Pa')).toMatchObject({ kind: 'quantity', dimension: 'pressure' });
    expect(fieldAt('room.pressure_Pa')).toMatchObject({ kind: 'quantity', dimension: 'airPressure' });
    expect(fieldAt('fan.rotation_PerS')).toMatchObject({ kind: 'quantity', dimension: 'rotation' });
    expect(fieldAt('fan.soundAt_m')).toMatchObject({ kind: 'quantity', dimension: 'distance' });
    expect(fieldAt('parts[0].tcr2_perK2')).toMatchObject({ dimension: 'squareTemperatureCoefficient' });
    expect(fieldAt('box.sheetHeat_JPerM3K')).toMatchObject({ dimension: 'volumetricHeatCapacity' });
    expect(fieldAt('sink.finCount')).toMatchObject({ kind: 'count', hard: [2, 200] });
    expect(fieldAt('baffle.fitted')).toMatchObject({ kind: 'flag' });
    expect(fieldAt('title')).toMatchObject({ kind: 'text', longest: 80 });
    expect(fieldAt('secondFace.way')).toMatchObject({ kind: 'choice', options: ['tabs', 'bonded', 'free'] });
  });

  test('without a suffix are shares in percent, but for the few that are plain numbers', () => {
    for (const share of ['fan.supplySag', 'fan.speedLoss', 'inlet.guardBlocked', 'limits.settled'])
      expect(fieldAt(share), share).toMatchObject({ dimension: 'ratio' });
    for (const number of [
      'fan.standingLoss',
      'moreFans[].standingLoss',
      'box.sheetEmissivity',
      'outlet.loss',
    ])
      expect(fieldAt(number), number).toMatchObject({ dimension: 'number' });
  });

  test('are the same for the first fan and any other', () => {
    for (const field of fields) {
      const key = /^moreFans\[\]\.(.+)$/.exec(field.pattern)?.[1];
      if (key === undefined || key === 'name' || key === 'place') continue;
      expect({ ...field, pattern: `fan.${key}` }).toEqual(fieldAt(`fan.${key}`));
    }
  });

  test('have plain words for every option', () => {
    for (const field of fields) {
      if (field.kind === 'choice')
        for (const option of field.options) expect(labelOfOption(option)).not.toBe('');
    }
    expect(() => labelOfOption('toString')).toThrow();
  });

  test('know how many rows a list may have', () => {
    expect(rowLimits('positions')).toEqual({ least: 1, most: 64 });
    expect(rowLimits('fan.curve')).toEqual({ least: 2, most: 200 });
    expect(rowLimits('moreFans')).toEqual({ least: 0, most: 7 });
    expect(rowLimits('moreFans[4].curve')).toEqual({ least: 2, most: 200 });
    expect(rowLimits('extras[4].points')).toEqual({ least: 0, most: 100 });
    expect(() => rowLimits('sink')).toThrow();
  });

  test('are not found under another name', () => {
    expect(findField('sink')).toBeNull();
    expect(findField('version')).toBeNull();
    expect(() => fieldAt('sink.colour')).toThrow('no input sink.colour');
  });
});
