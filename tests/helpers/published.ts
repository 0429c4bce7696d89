import { expect, TestRunner } from 'vitest';
import type { CheckRecord, Provenance } from '../../src/report/evidence/checkRecord.ts';

/** Either side alike, or how far below and above. */
type Reach = number | readonly [low: number, high: number];

/** Another tolerance than the printed digits: relative to the printed value, or off by so much; `because` is why. */
export type Allowance =
  | { readonly within: Reach; readonly because: string }
  | { readonly off: Reach; readonly because: string };

/** A check as a test leaves it for the record of all of them. */
export interface KeptCheck extends Provenance {
  readonly check: Omit<CheckRecord, 'test'>;
  /** Where the file's folder is not the subject. */
  readonly subject?: string;
  /** Where the title of the test does not name the case. */
  readonly title?: string;
}

declare module 'vitest' {
  interface TaskMeta {
    checks?: KeptCheck[];
  }
}

/** Half a unit of the last digit of a number as printed: 0.05 for `12.3`, 5e-10 for `1.8460e-5`. */
export function halfUnitOfLastDigit(printed: string): number {
  const parts = /^[-+−]?(\d+)(?:\.(\d+))?(?:[eE]([-+]?\d+))?$/.exec(printed);
  if (parts === null) throw new Error(`«${printed}» is not a number as printed`);
  const [, , decimals = '', exponent = '0'] = parts;
  return 0.5 * 10 ** (Number(exponent) - decimals.length);
}

/** The number that a text prints. */
export const printedValue = (printed: string) => Number(printed.replace('−', '-'));

/** How far a result may be below and above a number as printed, absolute. */
export function allowedDeviation(printed: string, other?: Allowance): readonly [low: number, high: number] {
  const value = Math.abs(printedValue(printed));
  const half = halfUnitOfLastDigit(printed);
  if (other !== undefined && other.because.trim() === '')
    throw new Error('another tolerance needs its reason');
  const reach = other === undefined ? half : 'off' in other ? other.off : other.within;
  const scale = other !== undefined && 'within' in other ? value : 1;
  const [low, high] = typeof reach === 'number' ? [-reach, reach] : reach;
  return [low * scale, high * scale];
}

/**
 * Numbers of one source. Who holds a result against them says once from where they are and of what kind; each check is
 * kept for the page of evidence, which is made by the run itself.
 */
export function published(from: Omit<KeptCheck, 'check'>) {
  /**
   * Expects a number that the source prints, as it prints it: its digits are the tolerance unless another is told.
   * @param quantity what it is, its unit in brackets: `pressure [Pa]`
   */
  function says(quantity: string, computed: number, printed: string, other?: Allowance): void {
    const allowed = allowedDeviation(printed, other);
    const off = computed - printedValue(printed);
    const [low, high] = allowed.map((each) => each.toPrecision(3));
    const tells = `${quantity}: ${computed} is to agree with the printed ${printed} to ${low} … ${high}`;
    // A hair is added to the printed digits, because 0.05 and the like are not exact in binary.
    const hair =
      other === undefined ? halfUnitOfLastDigit(printed) * 1e-9 + Math.abs(printedValue(printed)) * 1e-15 : 0;
    expect(Number.isFinite(computed), `${quantity}: ${computed} is not a number`).toBe(true);
    keep(from, checkOf(quantity, computed, printed, allowed, other?.because));
    expect(off, tells).toBeGreaterThanOrEqual(allowed[0] - hair);
    expect(off, tells).toBeLessThanOrEqual(allowed[1] + hair);
  }
  return { says };
}

/** Kept with the test that runs, by which the reporter finds it. */
function keep(from: Omit<KeptCheck, 'check'>, check: KeptCheck['check']): void {
  const test = TestRunner.getCurrentTest();
  if (test === undefined) throw new Error('a check belongs into a test');
  test.meta.checks ??= [];
  test.meta.checks.push({ ...from, check });
}

function checkOf(
  said: string,
  computed: number,
  printed: string,
  allowed: readonly [number, number],
  because: string | undefined,
): KeptCheck['check'] {
  const [, quantity = '', unit] = /^(.*?)(?: \[(.+)\])?$/.exec(said) ?? [];
  const value = printedValue(printed);
  const basis = Math.abs(value) || 1;
  return {
    quantity,
    ...(unit === undefined ? {} : { unit }),
    printed,
    computed: Number(computed.toPrecision(6)),
    deviation: Number(((computed - value) / basis).toFixed(8)) + 0,
    allowed: allowed.map((each) => Number((each / basis).toPrecision(3))) as [number, number],
    ...(because === undefined ? {} : { because }),
  };
}
