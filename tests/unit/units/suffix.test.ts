import { describe, expect, test } from 'vitest';
import { dimensions } from '../../../src/units/dimensions.ts';
import { dimensionOfName, suffixes, suffixOfName } from '../../../src/units/suffix.ts';

describe('the suffix of a name', () => {
  test.each([
    ['gap_m', 'length'],
    ['room.listening_m', 'distance'],
    ['fan.soundAt_m', 'distance'],
    ['room.pressure_Pa', 'airPressure'],
    ['fanPressure_Pa', 'pressure'],
    ['tcr2_perK2', 'squareTemperatureCoefficient'],
    ['sheetHeat_JPerM3K', 'volumetricHeatCapacity'],
    ['altitude_m', 'altitude'],
    ['maxAltitude_m', 'altitude'],
    ['room.altitude_m', 'altitude'],
    ['fan.curve[3].flow_m3PerS', 'volumeFlow'],
    ['heat.dT_K', 'temperatureDifference'],
    ['area_m2', 'area'],
    ['T_K', 'temperature'],
    ['TAmbient_K', 'temperature'],
    ['fullPowerUpTo_K', 'temperature'],
    ['dT_K', 'temperatureDifference'],
    ['dTStart_K', 'temperatureDifference'],
    ['rise_K', 'temperatureDifference'],
    ['chainRise_K', 'temperatureDifference'],
    ['margin_K', 'temperatureDifference'],
    ['dtrise_m', 'length'],
    ['sunrises_K', 'temperature'],
    ['flow_m3PerS', 'volumeFlow'],
    ['dp_Pa', 'pressure'],
    ['supply_V', 'voltage'],
    ['supply_A', 'current'],
    ['R_Ohm', 'resistance'],
    ['power_W', 'power'],
    ['neckAngle_rad', 'angle'],
    ['tcr_perK', 'temperatureCoefficient'],
    ['R_KPerW', 'thermalResistance'],
    ['k_WPerMK', 'conductivity'],
    ['contact_m2KPerW', 'contactResistance'],
    ['E_VPerM', 'fieldStrength'],
    ['level_dBA', 'soundLevel'],
    ['fanRotation_PerS', 'rotation'],
    ['decay_PerS', 'rate'],
    ['filterLinear_PaSPerM', 'pressurePerSpeed'],
  ])('makes %s a %s', (name, dimension) => {
    expect(dimensionOfName(name)).toBe(dimension);
  });

  test.each(['reynolds', 'gap_mm', 'gap_', '_', 'x_toString', 'sigma_WPerM2K4', ''])(
    'says nothing about %j',
    (name) => {
      expect(dimensionOfName(name)).toBeNull();
    },
  );

  test('is known though nothing with it is ever typed', () => {
    expect(suffixOfName('sigma_WPerM2K4')).toBe('WPerM2K4');
    expect(suffixOfName('gap_mm')).toBeNull();
    expect(suffixOfName('m')).toBeNull();
  });

  test('has the SI unit of its quantity', () => {
    for (const { unit, dimension } of Object.values(suffixes)) {
      if (dimension === null) continue;
      const si = dimensions[dimension].units.find(
        ({ factor, divisor, offset }) => factor === divisor && offset === 0,
      );
      expect(si?.symbol, dimension).toBe(unit);
    }
  });
});
