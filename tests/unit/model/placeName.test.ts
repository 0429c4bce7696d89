import { expect, test } from 'vitest';
import { defaultAt, defaultDesign, defaultPart } from '../../../src/model/defaults.ts';
import { placeName } from '../../../src/model/placeName.ts';

test.each([
  ['baffle.sideClearance_m', 'Side clearance'],
  ['positions[2].power_W', 'Watts, resistor 3'],
  ['fan.curve[5].dp_Pa', 'Pressure, point 6'],
  ['moreFans[0].curve[0].flow_m3PerS', 'Flow, fan 2, point 1'],
  ['parts[1].R_Ohm', 'Resistance, part 2'],
])('%s is called “%s”', (path, name) => {
  expect(placeName(path)).toBe(name);
});

test('a default is that of a new design, of a new row in a list, and there is none of a point or a name', () => {
  expect(defaultAt('baffle.slotWidth_m')).toBe(defaultDesign.baffle.slotWidth_m);
  expect(defaultAt('parts[3].rated_W')).toBe(defaultPart.rated_W);
  expect(defaultAt('moreFans[1].hub_m')).toBe(defaultDesign.fan.hub_m);
  expect(defaultAt('fan.curve[0].dp_Pa')).toBeUndefined();
  expect(defaultAt('parts[0].name')).toBeUndefined();
});
