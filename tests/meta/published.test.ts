import { describe, expect, test } from 'vitest';
import { type Allowance, halfUnitOfLastDigit, published } from '../helpers/published.ts';

describe('a number as printed', () => {
  test.each([
    ['147', 0.5],
    ['12.65', 0.005],
    ['0.0342', 0.00005],
    ['-3.0', 0.05],
    ['−3.0', 0.05],
    ['1.8460e-5', 5e-10],
    ['2.31E4', 50],
    ['1e+3', 500],
  ])('%s stands for itself give or take half a unit of its last digit', (printed, half) => {
    expect(halfUnitOfLastDigit(printed)).toBeCloseTo(half, 15);
  });

  test.each(['', 'NaN', '1,5', '0x10', '1.', '12 W', '--1'])('refuses «%s»', (printed) => {
    expect(() => halfUnitOfLastDigit(printed)).toThrow('not a number as printed');
  });
});

describe('agreement with a printed number', () => {
  const { says } = published({ source: 'commonPractice', kind: 'worked again' });
  const expectPrinted = (actual: number, printed: string, other?: Allowance) =>
    says('number', actual, printed, other);

  test('reaches to half a unit of the last digit on both sides', () => {
    expectPrinted(0.03425, '0.0342');
    expectPrinted(0.03415, '0.0342');
    expectPrinted(1.84604e-5, '1.8460e-5');
    expectPrinted(-3.04, '−3.0');
  });

  test.each([
    [0.034251, '0.0342'],
    [0.034149, '0.0342'],
    [1.84606e-5, '1.8460e-5'],
    [3.0, '-3.0'],
    [Number.NaN, '0.0'],
    [Number.POSITIVE_INFINITY, '1'],
  ])('ends there: %d is not %s', (actual, printed) => {
    expect(() => expectPrinted(actual, printed)).toThrow();
  });

  test('is wider only as far as its reason says', () => {
    const slack = { within: 0.01, because: 'the source rounds its inputs' };
    expectPrinted(101, '100', slack);
    expect(() => expectPrinted(101.1, '100', slack)).toThrow('printed 100 to -1.00 … 1.00');
    expect(() => expectPrinted(100, '100', { within: 0.01, because: ' ' })).toThrow('reason');
  });

  test('is narrower too where a reason says so', () => {
    const exact = { off: 1e-12, because: 'exact' };
    expectPrinted(0.25, '0.25', exact);
    expect(() => expectPrinted(0.2501, '0.25', exact)).toThrow('0.2501 is to agree');
  });

  test('may reach farther to one side', () => {
    const high = { within: [0, 0.06], because: 'known to be high' } as const;
    expectPrinted(106, '100', high);
    expect(() => expectPrinted(99.9, '100', high)).toThrow();
    const below = { off: [-2, 1], because: 'a band' } as const;
    expectPrinted(-101.9, '−100', below);
    expect(() => expectPrinted(-98.9, '−100', below)).toThrow();
  });
});

describe('a check', () => {
  const { says } = published({
    source: 'lienhard',
    where: 'ex. 2.8',
    kind: 'worked example',
    methods: ['m'],
  });

  test('is kept with its test, also one that fails', ({ task }) => {
    says('temperature [°C]', 72.3141592, '72.3');
    expect(() => says('temperature [°C]', 70, '72.3')).toThrow();
    expect(task.meta.checks).toHaveLength(2);
    expect(task.meta.checks?.[0]).toEqual({
      source: 'lienhard',
      where: 'ex. 2.8',
      kind: 'worked example',
      methods: ['m'],
      check: {
        quantity: 'temperature',
        unit: '°C',
        printed: '72.3',
        computed: 72.3142,
        deviation: 0.00019584,
        allowed: [-0.000692, 0.000692],
      },
    });
  });

  test('of nil is told as it stands, and one without a unit has none', ({ task }) => {
    says('share', 0.004, '0', { off: 0.01, because: 'draws' });
    expect(task.meta.checks?.[0]?.check).toEqual({
      quantity: 'share',
      printed: '0',
      computed: 0.004,
      deviation: 0.004,
      allowed: [-0.01, 0.01],
      because: 'draws',
    });
  });
});
