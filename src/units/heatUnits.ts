import { type DimensionInfo, unit } from './unit.ts';

/** International Table British thermal unit; per pound and degree Fahrenheit it is 4186.8 J/(kg·K) exactly. */
const btu_J = 1055.05585262;

export const heatUnits = {
  temperature: {
    noun: 'a temperature',
    units: [
      unit('degC', '°C', 'C|celsius|deg celsius', { plus: 273.15 }),
      unit('degF', '°F', 'F|fahrenheit|deg fahrenheit', { plus: 459.67, times: 5, over: 9 }),
      unit('K', 'K', 'kelvin'),
    ],
    metric: 'degC',
    inch: 'degF',
    digits: 4,
    decimals: 2,
    examples: ['40 °C', '104 °F'],
  },
  temperatureDifference: {
    noun: 'a temperature difference',
    units: [
      unit('K', 'K', 'kelvin|kelvins'),
      unit('degC', '°C', 'C|celsius|deg celsius'),
      unit('degF', '°F', 'F|fahrenheit|deg fahrenheit', { times: 5, over: 9 }),
    ],
    metric: 'K',
    inch: 'degF',
    digits: 3,
    examples: ['15 K', '27 °F'],
  },
  conductivity: {
    noun: 'a thermal conductivity',
    units: [
      unit('W/(m K)', 'W/(m·K)', 'W/mK|W/m/K|W/m degC|W/mC|W/m C|W m-1 K-1'),
      unit('W/(cm K)', 'W/(cm·K)', 'W/cmK|W/cm/K', { times: 100 }),
      unit(
        'BTU in/(h ft2 degF)',
        'BTU·in/(h·ft²·°F)',
        'BTUin/hft2F|BTU in/hr ft2 degF|BTU in/hr ft2 F|BTU in/h ft2 F',
        { times: btu_J * 0.0254, over: 0.09290304 * 2000 },
      ),
      unit('BTU/(h ft degF)', 'BTU/(h·ft·°F)', 'BTU/hftF|BTU/hr ft degF|BTU/hr ft F|BTU/h ft F', {
        times: btu_J,
        over: 0.3048 * 2000,
      }),
    ],
    metric: 'W/(m K)',
    inch: 'W/(m K)',
    digits: 3,
    examples: ['200 W/(m·K)', '1400 BTU·in/(h·ft²·°F)'],
  },
  thermalResistance: {
    noun: 'a thermal resistance',
    units: [unit('K/W', 'K/W', 'degC/W|C/W'), unit('degF/W', '°F/W', 'F/W', { times: 5, over: 9 })],
    metric: 'K/W',
    inch: 'K/W',
    digits: 3,
    examples: ['2.5 K/W', '4.5 °F/W'],
  },
  thermalConductance: {
    noun: 'a thermal conductance',
    units: [
      unit('W/K', 'W/K', 'W/degC|W/C'),
      unit('mW/K', 'mW/K', 'mW/degC|mW/C', { over: 1000 }, { exactCase: true }),
    ],
    metric: 'W/K',
    inch: 'W/K',
    digits: 3,
    examples: ['0.4 W/K', '400 mW/K'],
  },
  contactResistance: {
    noun: 'a contact resistance',
    units: [
      unit('m2 K/W', 'm²·K/W', 'm2K/W|K m2/W|m2 degC/W|m2C/W'),
      unit('K cm2/W', 'K·cm²/W', 'cm2 K/W|cm2K/W|Kcm2/W|degC cm2/W|Ccm2/W', { over: 1e4 }),
      unit('mm2 K/W', 'mm²·K/W', 'mm2K/W|K mm2/W|Kmm2/W|degC mm2/W|Cmm2/W', { over: 1e6 }),
      unit('K in2/W', 'K·in²/W', 'in2 K/W|in2K/W|Kin2/W|degC in2/W|Cin2/W|in2 degC/W', {
        times: 16129,
        over: 25e6,
      }),
    ],
    metric: 'K cm2/W',
    inch: 'K in2/W',
    digits: 3,
    examples: ['0.5 K·cm²/W', '0.08 K·in²/W'],
  },
  heatTransferCoefficient: {
    noun: 'a heat transfer coefficient',
    units: [
      unit('W/(m2 K)', 'W/(m²·K)', 'W/m2K|W/m2/K|W/m2 degC|W/m2C'),
      unit('BTU/(h ft2 degF)', 'BTU/(h·ft²·°F)', 'BTU/hft2F|BTU/hr ft2 degF|BTU/hr ft2 F|BTU/h ft2 F', {
        times: btu_J,
        over: 0.09290304 * 2000,
      }),
    ],
    metric: 'W/(m2 K)',
    inch: 'W/(m2 K)',
    digits: 3,
    examples: ['35 W/(m²·K)', '6 BTU/(h·ft²·°F)'],
  },
  heatFlux: {
    noun: 'a heat flux',
    units: [
      unit('W/m2', 'W/m²'),
      unit('kW/m2', 'kW/m²', '', { times: 1000 }),
      unit('W/cm2', 'W/cm²', '', { times: 1e4 }),
      unit('W/in2', 'W/in²', 'W/sq in', { times: 25e6, over: 16129 }),
    ],
    metric: 'W/cm2',
    inch: 'W/in2',
    digits: 3,
    examples: ['5 W/cm²', '30 W/in²'],
  },
  heatPerLength: {
    noun: 'a heat per length',
    units: [unit('W/m', 'W/m'), unit('W/in', 'W/in', '', { times: 5000, over: 127 })],
    metric: 'W/m',
    inch: 'W/in',
    digits: 3,
    examples: ['80 W/m', '2 W/in'],
  },
  energy: {
    noun: 'an energy',
    units: [
      unit('J', 'J', 'joule|joules'),
      unit('mJ', 'mJ', 'mj', { over: 1000 }, { exactCase: true }),
      unit('kJ', 'kJ', '', { times: 1000 }),
      unit('Wh', 'Wh', '', { times: 3600 }),
      unit('BTU', 'BTU', '', { times: btu_J }),
    ],
    metric: 'J',
    inch: 'J',
    digits: 3,
    examples: ['50 J', '0.2 Wh'],
  },
  heatCapacity: {
    noun: 'a heat capacity',
    units: [unit('J/K', 'J/K', 'J/degC|J/C'), unit('kJ/K', 'kJ/K', '', { times: 1000 })],
    metric: 'J/K',
    inch: 'J/K',
    digits: 3,
    examples: ['12 J/K', '0.012 kJ/K'],
  },
  specificHeat: {
    noun: 'a specific heat',
    units: [
      unit('J/(kg K)', 'J/(kg·K)', 'J/kgK|J/kg/K|J/kg degC'),
      unit('kJ/(kg K)', 'kJ/(kg·K)', 'kJ/kgK|kJ/kg/K|J/gK|J/g K', { times: 1000 }),
      unit('BTU/(lb degF)', 'BTU/(lb·°F)', 'BTU/lbF|BTU/lb F', { times: 4186.8 }),
    ],
    metric: 'J/(kg K)',
    inch: 'BTU/(lb degF)',
    digits: 4,
    examples: ['896 J/(kg·K)', '0.214 BTU/(lb·°F)'],
  },
  volumetricHeatCapacity: {
    noun: 'a heat capacity per volume',
    units: [
      unit('J/(m3 K)', 'J/(m³·K)', 'J/m3K|J/m3/K|J/m3 degC'),
      unit('kJ/(m3 K)', 'kJ/(m³·K)', 'kJ/m3K|kJ/m3/K|J/(l K)|J/lK', { times: 1000 }),
      unit('J/(cm3 K)', 'J/(cm³·K)', 'J/cm3K|J/cm3/K|J/cm3 degC|J/ccK', { times: 1e6 }),
      unit('BTU/(ft3 degF)', 'BTU/(ft³·°F)', 'BTU/ft3F|BTU/ft3 F', {
        times: btu_J * 9,
        over: 0.028316846592 * 5,
      }),
    ],
    metric: 'J/(cm3 K)',
    inch: 'BTU/(ft3 degF)',
    digits: 3,
    examples: ['2.42 J/(cm³·K)', '36 BTU/(ft³·°F)'],
  },
} as const satisfies Record<string, DimensionInfo>;
