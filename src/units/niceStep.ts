/** The least of 1, 2, 2.5 and 5 times a power of ten that is not less than `least`. @param least above zero */
export function niceStep(least: number): number {
  const decade = 10 ** Math.floor(Math.log10(least) + 1e-9);
  const factor = [1, 2, 2.5, 5, 10].find((each) => each * decade >= least * (1 - 1e-9)) ?? 10;
  return Number((factor * decade).toPrecision(3));
}
