import { describe, expect, test } from 'vitest';
import type { Limit } from '../../../src/core/system/outcome.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { limitClause, limitRows, whereOf } from '../../../src/report/limitRows.ts';

const design = exampleById('eightResistors');
const plain = (text: string) => text.replaceAll('\u202f', ' ');

const hot: Limit = {
  key: 'film',
  where: 4,
  quantity: 'temperature',
  value: 363.15,
  limit: 353.15,
  margin_K: -10,
  loadFactor: 0.8,
  state: 'fails',
  source: 'chipConvention',
  confirm: true,
};
const loud: Limit = {
  ...hot,
  key: 'sound',
  where: null,
  quantity: 'sound',
  value: 48.2,
  limit: 45,
  margin_K: null,
  loadFactor: null,
  confirm: false,
};

describe('a limit as a row', () => {
  test('has value, allowance, margin and how far the load may go, in the reader’s units', () => {
    const row = (system: 'metric' | 'inch') => limitRows([hot], system)[0];
    const { value = '', limit = '', margin = '', loadFactor = '' } = row('metric') ?? {};
    expect([value, limit, margin, loadFactor].map(plain)).toEqual(['90 °C', '80 °C', '10 K over', '0.80 ×']);
    expect(plain(row('inch')?.margin ?? '')).toBe('18 °F over');
    expect(row('metric')?.used).toBeCloseTo(1.25, 12);
  });

  test('of the sound is a level at the fan, with no margin in kelvin and no load to answer for', () => {
    const [row] = limitRows([loud], 'metric');
    expect([row?.value, row?.limit].map((text) => plain(text ?? ''))).toEqual(['48 dB(A)', '45 dB(A)']);
    expect(row).toMatchObject({ where: 'fan', part: 'fan', margin: '–', loadFactor: '–', used: null });
  });
});

test('the place is a resistor, a sink, the fan or the whole box, as the limit has it', () => {
  const where = (key: Limit['key'], place: number | null) => whereOf({ ...hot, key, where: place });
  expect(where('pulse', 4)).toBe('resistor 5');
  expect(where('bond', 0)).toBe('resistor 1');
  expect([where('touch', 1), where('sheet', 1), where('wall', 1)]).toEqual(['sink 2', 'sink 2', 'sink 2']);
  expect([where('sound', null), where('stall', null), where('exhaust', null)]).toEqual([
    'fan',
    'fan',
    'whole box',
  ]);
});

describe('a limit in a clause', () => {
  test.each<[Partial<Limit>, string]>([
    [
      { key: 'pulse' },
      'the film of resistor 5 reaches 90 °C at the end of a pulse, 10 K above its 80 °C limit',
    ],
    [
      { key: 'derating' },
      'the terminals of resistor 5 reach 90 °C, 10 K above the 80 °C at which its watts are still allowed',
    ],
    [{ key: 'bond' }, 'the bond line of resistor 5 reaches 90 °C, 10 K above its 80 °C service limit'],
    [{ key: 'touch' }, 'sink 5, which a finger can reach, stands at 90 °C, 10 K above the 80 °C touch limit'],
    [{ key: 'sheet' }, 'sink 5 stands at 90 °C, 10 K above the 80 °C that the plastic beside it may have'],
    [{ key: 'wall' }, 'the outside of the box at sink 5 reaches 90 °C, 10 K above its 80 °C touch limit'],
    [{ key: 'exhaust', where: null }, 'the air leaves at 90 °C, 10 K above its 80 °C limit'],
    [loud, 'the sound at the listener is 48 dB(A) and may be 45 dB(A)'],
    [
      { key: 'stall', where: null, quantity: 'flow', value: 0.005, limit: 0.006, margin_K: null },
      'the fan delivers 18 m³/h, and its curve has a dip below 21.6 m³/h',
    ],
  ])('%o', (change, words) => {
    expect(plain(limitClause({ ...hot, ...change }, design, 'metric'))).toBe(words);
  });

  test('says the surroundings of a part that is derated over the air', () => {
    const air = { ...design, parts: design.parts.map((part) => ({ ...part, deratedBy: 'air' as const })) };
    expect(limitClause({ ...hot, key: 'derating' }, air, 'metric')).toMatch(
      /^the surroundings of resistor 5 /,
    );
  });
});
