import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../../src/store/designStore.ts';
import { pasteReadings } from '../../../../src/store/paste/pasteReadings.ts';

const design = exampleById('eightResistors');

/** Readings after the paste of a text; or why it was refused. */
function pasted(text: string, into: Design = design): Design['readings'] | string {
  const store = createDesignStore(into);
  const { ok, words } = pasteReadings(store.getState().apply, text);
  return ok ? store.getState().design.readings : words;
}

function taken(text: string): Design['readings'] {
  const readings = pasted(text);
  if (typeof readings === 'string') throw new Error(readings);
  return readings;
}

const kelvin = (celsius: number) => expect.closeTo(celsius + 273.15, 9) as number;
const places = (readings: Design['readings']) =>
  readings.temperatures.map(({ where, number }) => `${where} ${number}`);

describe('one reading a row', () => {
  test('heads may stand in any order, with units; blank conditions are those of the row above', () => {
    const readings = taken(
      [
        'reading\twhere\t±\twatts\troom\tfan volts\ttime',
        '78.4 °C\tfilm 3\t1.5\t32 W\t23 °C\t12\tsettled',
        '61,5 °C\tsink 2\t1.5 K\t\t\t\t',
        '38 °C\texhaust\t\t\t\t9 V\t10 min',
      ].join('\n'),
    );
    expect(readings.temperatures).toEqual([
      {
        where: 'onFilm',
        number: 3,
        reading_K: kelvin(78.4),
        within_K: 1.5,
        load_W: 32,
        room_K: kelvin(23),
        fan_V: 12,
        settled: true,
        time_s: 1800,
      },
      expect.objectContaining({ where: 'onSink', number: 2, reading_K: kelvin(61.5), load_W: 32, fan_V: 12 }),
      expect.objectContaining({
        where: 'inExhaust',
        number: 1,
        reading_K: kelvin(38),
        within_K: 1.5,
        fan_V: 9,
        settled: false,
        time_s: 600,
      }),
    ]);
  });

  test('every quantity finds its list, by the name of its place or by its unit', () => {
    const readings = taken(
      [
        'where;reading;within',
        'plenum pressure;18,5 Pa;1 Pa',
        ';0.004 m³/s;5 %',
        'volts at the fan;11.8;0.1',
        'sound;31 dB(A);',
        ';22 Pa;',
      ].join('\n'),
    );
    expect(readings.pressures).toMatchObject([
      { reading_Pa: 18.5, within_Pa: 1, load_W: 32, fan_V: 12 },
      { reading_Pa: 22, within_Pa: 1 },
    ]);
    expect(readings.flows).toMatchObject([{ reading_m3PerS: 0.004, within_m3PerS: 0.0002 }]);
    expect(readings.voltages).toMatchObject([{ reading_V: 11.8, within_V: 0.1 }]);
    expect(readings.sounds).toMatchObject([{ reading_dBA: 31, within_dBA: 1.5 }]);
  });

  test('without a head the columns are where, reading, within, watts, room, fan volts, time', () => {
    const readings = taken(
      'film 1; 80 °C; 1.5 K; 30 W; 23 °C; 12 V; 0:10\nfilm 2; 82 °C; 1.5 K; 30 W; 23 °C; 12 V; settled',
    );
    expect(readings.temperatures).toMatchObject([
      { where: 'onFilm', number: 1, settled: false, time_s: 600, load_W: 30 },
      { where: 'onFilm', number: 2, settled: true },
    ]);
  });

  test('an uncertainty may stand beside its reading, and degrees Fahrenheit keep theirs', () => {
    const readings = taken('where,reading\nsink 2,150 ± 3 °F\nflow,8 ± 0.5 cfm');
    expect(readings.temperatures[0]).toMatchObject({
      reading_K: expect.closeTo(338.7056, 3) as number,
      within_K: expect.closeTo(1.6667, 3) as number,
    });
    expect(readings.flows[0]?.within_m3PerS).toBeCloseTo(0.5 * 4.719474e-4, 9);
  });

  test.each([
    ['R2 film', 'onFilm 2'],
    ['film of resistor 2', 'onFilm 2'],
    ['Film_2', 'onFilm 2'],
    ['terminal 4', 'onTerminal 4'],
    ['R4 solder joint', 'onTerminal 4'],
    ['sink no. 5', 'onSink 5'],
    ['heat sink 5 plate', 'onSink 5'],
    ['sheet beside sink 3', 'onSheet 3'],
    ['Exhaust air', 'inExhaust 1'],
    ['outlet temperature', 'inExhaust 1'],
  ])('%s is %s', (where, place) => {
    expect(places(taken(`where,reading\n${where},50 °C`))).toEqual([place]);
  });
});

describe('a warm-up', () => {
  test('has one column of times and one for every place', () => {
    const readings = taken(
      [
        'time [min],film 1 [°C],sink 2 [°C],exhaust [°C]',
        '0,23.1,23.0,23.0',
        '2,51.5,38,–',
        '10,78,61.2,34.5',
        'settled,80,63,35',
      ].join('\n'),
    );
    expect(readings.temperatures.map(({ settled, time_s }) => (settled ? null : time_s))).toEqual([
      0,
      0,
      0,
      120,
      120,
      600,
      600,
      600,
      null,
      null,
      null,
    ]);
    expect(places(readings).slice(0, 5)).toEqual([
      'onFilm 1',
      'onSink 2',
      'inExhaust 1',
      'onFilm 1',
      'onSink 2',
    ]);
    expect(readings.temperatures[4]?.reading_K).toEqual(kelvin(38));
  });

  test('may have other quantities beside it where no time stands', () => {
    const readings = taken('film 1 [°C];plenum pressure [Pa];flow [m³/h];watts\n80;18;14;32\n60;19;14;16');
    expect(readings.temperatures.map(({ load_W }) => load_W)).toEqual([32, 16]);
    expect(readings.pressures.map(({ reading_Pa, load_W }) => [reading_Pa, load_W])).toEqual([
      [18, 32],
      [19, 16],
    ]);
    expect(readings.flows[0]?.reading_m3PerS).toBeCloseTo(14 / 3600, 9);
  });
});

describe('a table that does not read is refused whole, with the row and the reason', () => {
  test.each([
    ['where,reading\nfilm 3,80 °C\nS3,70 °C', 'Row 2: “S3” is no place that is known for certain.'],
    ['where,reading\nR2,70 °C', 'Row 1: “R2” is no place that is known for certain.'],
    ['where,reading\nfilm,70 °C', 'Row 1: the film of which resistor? There are film 1 to film 8.'],
    ['where,reading\nfilm 9,70 °C', 'Row 1: there is no film 9. There are film 1 to film 8.'],
    ['where,reading\nfilm 1,18 Pa', 'Row 1: «18 Pa» is a pressure; this field takes a temperature'],
    ['where;reading\nfilm 2;70 °C\nfilm 1;hot', 'Row 2: «hot» is not a number'],
    ['where,reading\nfilm 1,900 °C', 'Row 1: Out of bounds. Allowed is'],
    ['reading\n70 °C', 'Row 1: it is not said where “70 °C” was read.'],
    ['where,reading,time\nfilm 1,70 °C,5', 'Row 1: a time needs a unit: “5 min” or “5 s”'],
    ['where,reading,time\nflow,14 m³/h,5 min', 'Row 1: only temperatures are followed through the warm-up'],
    ['where,reading,colour\nfilm 1,70 °C,3', 'The column “colour” is not known.'],
    ['where,reading,value\nfilm 1,70,71', 'Two columns say the same: “reading” and “value”.'],
    ['film 1,reading\n70,71', 'Readings stand in a column of their own or under the names of their places'],
    ['where,watts\nfilm 1,32', 'No column of readings found'],
    ['where,reading,within\nflow,14 m³/h,0 %', 'Row 1: “0 %” of this reading is nothing.'],
    ['', 'There is nothing in it.'],
  ])('%j: %s', (text, reason) => {
    expect(pasted(text)).toContain(reason);
  });

  test('more than a list holds', () => {
    const rows = Array.from({ length: 101 }, () => 'film 1,70 °C');
    expect(pasted(['where,reading', ...rows].join('\n'))).toBe(
      'That would make 101 temperatures; at most 100 fit.',
    );
  });
});

test('readings go behind those that are there, as one edit, and their boxes show the units of the table', () => {
  const store = createDesignStore(design);
  const paste = (text: string) => pasteReadings(store.getState().apply, text).words;
  expect(paste('where,reading\nfilm 1,150 °F')).toMatch(/^One reading taken over\./);
  expect(paste('where,reading\nfilm 2,160 °F\nfilm 3,170 °F')).toMatch(/^2 readings taken over\./);
  expect(places(store.getState().design.readings)).toEqual(['onFilm 1', 'onFilm 2', 'onFilm 3']);
  expect(store.getState().units['readings.temperatures[2].reading_K']).toBe('degF');
  store.getState().undo();
  expect(places(store.getState().design.readings)).toEqual(['onFilm 1']);
});
