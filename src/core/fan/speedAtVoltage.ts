/**
 * Speed of a direct-current fan over its rated speed: in proportion to its voltage, and none below the voltage it starts at
 * (common practice, no source; real fans stray by about 5 % between half and full voltage).
 */
export function speedAtVoltage(supply_V: number, rated_V: number, start_V: number): number {
  return supply_V < start_V ? 0 : supply_V / rated_V;
}
