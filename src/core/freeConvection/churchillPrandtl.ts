/** 1 + (0.492/Pr)^(9/16): how the fluid bends both plate formulas of Churchill and Chu. Roots only, for speed. */
export function churchillPrandtl(prandtl: number): number {
  const root = Math.sqrt(0.492 / prandtl);
  return 1 + root * Math.sqrt(Math.sqrt(Math.sqrt(root)));
}
