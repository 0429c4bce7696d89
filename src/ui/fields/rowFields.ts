/** Inputs of one row of each list, in the order of its editor; they come with the editors, after the first paint. */
export const partFields = [
  'name',
  'R_Ohm',
  'tolerance',
  'rated_W',
  'deratedBy',
  'fullPowerUpTo_K',
  'zeroPowerAt_K',
  'elementLimit_V',
  'tcr_perK',
  'tcr2_perK2',
  'length_m',
  'width_m',
  'thickness_m',
  'ceramic_WPerMK',
  'ceramicHeat_JPerM3K',
  'coating_m',
  'coating_WPerMK',
] as const;

export const otherFanFields = [
  'name',
  'curveSource',
  'place',
  'supply_V',
  'rated_V',
  'start_V',
  'power_W',
  'rotation_PerS',
  'opening_m',
  'hub_m',
  'blades',
  'standingLoss',
  'sound_dBA',
  'soundAt_m',
] as const;

export const positionFields = ['part', 'on', 'flipped', 'power_W'] as const;
export const extraFields = ['name', 'place', 'loss', 'area_m2'] as const;
