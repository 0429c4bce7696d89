import type { WorkingReport, WorkingStep, WorkingSymbol } from '../../src/report/working/types.ts';

/** Invented, to look at: three figures over four steps, one outside its range, one a balance. */
const symbol = (
  symbol: string,
  says: string,
  [value, si, amount, unit]: readonly [string, string, number, string],
  from: WorkingSymbol['from'] = 'input',
  step: number | null = null,
): WorkingSymbol => ({ symbol, says, value, si, amount, unit, from, step });

const step = (number: number, rest: Partial<WorkingStep>): WorkingStep => ({
  number,
  card: 'airDensity',
  title: 'Density of air',
  where: '',
  equation: 'ρ = p/(R·T)',
  symbols: [],
  result: {
    symbol: 'ρ',
    says: 'density',
    value: '1.16 kg/m³',
    si: '1.161 kg/m³',
    amount: 1.161,
    unit: 'kg/m³',
  },
  source: 'Sample, A book of air, p. 12',
  footnote: 1,
  range: 'temperature 0 °C to 100 °C (source)',
  here: 'temperature 27 °C',
  inside: true,
  scatter: '±0.1 % (textbook)',
  assumes: [{ title: 'Air is an ideal gas.', text: 'At room pressure that is so to 0.1 %.' }],
  ...rest,
});

export const sampleWorking: WorkingReport = {
  sentence:
    'All temperatures and flows were settled together; the steps show how each follows from the others.',
  figures: [
    { id: 'film:1', title: 'Film of resistor 1', value: '61 °C', steps: [1, 3, 4] },
    { id: 'share:fins', title: 'Air through the fins', value: '71 %', steps: [1, 2] },
    { id: 'flow', title: 'Air moved by the fan', value: '12 L/s', steps: [1] },
  ],
  steps: [
    step(1, {
      symbols: [
        symbol('p', 'pressure of the air', ['1013 hPa', '101300 Pa', 101300, 'Pa']),
        symbol(
          'R',
          'gas constant of dry air',
          ['287 J/(kg·K)', '287.1 J/(kg·K)', 287.053, 'J/(kg·K)'],
          'constant',
        ),
        symbol('T', 'temperature', ['27 °C', '300.1 K', 300.1, 'K'], 'settled'),
      ],
    }),
    step(2, {
      title: 'Loss at the entry of the channels',
      where: 'sink 1',
      equation: 'K = 0.42·(1 − σ²); on the channel velocity',
      symbols: [symbol('σ', 'free share of the area', ['0.61', '0.61', 0.61, '1'])],
      result: {
        symbol: 'K',
        says: 'loss coefficient',
        value: '0.264',
        si: '0.2637',
        amount: 0.2637,
        unit: '1',
      },
      range: 'free share 0.7 to 1 (textbook)',
      here: 'free share 0.61',
      inside: false,
    }),
    step(3, {
      title: 'Efficiency of the fins',
      where: 'sink 1',
      equation: 'η = tanh(m·H)/(m·H); m = √(2·h/(k·t))',
      symbols: [
        symbol(
          'h',
          'coefficient of heat transfer',
          ['48 W/(m²·K)', '48.2 W/(m²·K)', 48.2, 'W/(m²·K)'],
          'step',
          1,
        ),
        symbol('k', 'conductivity of the fins', ['180 W/(m·K)', '180 W/(m·K)', 180, 'W/(m·K)']),
        symbol('t', 'thickness of a fin', ['0.8 mm', '0.0008 m', 0.0008, 'm']),
        symbol('H', 'height of a fin', ['20 mm', '0.02 m', 0.02, 'm']),
      ],
      result: { symbol: 'η', says: 'fin efficiency', value: '92 %', si: '0.9188', amount: 0.9188, unit: '1' },
      inside: null,
      here: '–',
      range: 'not stated',
    }),
    step(4, {
      card: null,
      title: 'Balance of heat',
      where: 'film of resistor 1',
      equation: 'T_f = T_p + P·R',
      symbols: [
        symbol('T_p', 'plate', ['41 °C', '314.2 K', 314.2, 'K'], 'settled'),
        symbol('P', 'watts', ['7.5 W', '7.5 W', 7.5, 'W']),
        symbol('R', 'resistance of the way', ['2.65 K/W', '2.653 K/W', 2.653, 'K/W'], 'step', 3),
      ],
      result: {
        symbol: 'T_f',
        says: 'temperature of the film',
        value: '61 °C',
        si: '334.1 K',
        amount: 334.1,
        unit: 'K',
      },
      source: null,
      footnote: null,
      inside: null,
      range: '',
      here: '',
      scatter: '',
      assumes: [],
    }),
  ],
};
