/** Variables of both closed forms as they stand in the equations, and those that only bound them. */
export const leeSymbols = {
  radiusRatio: 'ε',
  thicknessRatio: 'τ',
  biot: 'Bi',
  sourceAspect: 'a_s',
  plateAspect: 'a_p',
  plateArea_m2: 'A',
  k_WPerMK: 'k',
} as const;
export const leeAside = {
  sourceAspect: 'says how long the source is; judged, not reckoned with',
  plateAspect: 'says how long the plate is; judged, not reckoned with',
} as const;
