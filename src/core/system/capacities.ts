import type { BankGeometry } from './geometry.ts';
import type { HeatPath } from './heatPath.ts';
import type { PartInput, SystemInput } from './input.ts';

/** Heat that a cubic metre takes up per kelvin, of the solids nobody enters: handbook values, from memory. */
const adhesive_JPerM3K = 1.8e6;
const coat_JPerM3K = 2e6;
const copper_JPerM3K = 3.43e6;
const solder_JPerM3K = 1.7e6;

/**
 * Heat capacity of every node of the heat network, J/K, from the parts' own dimensions: half of a chip sits at its film and
 * half at its back, fins go half to each plate, a bond to what it holds. The air holds nothing beside the metal.
 */
export function heatCapacities_JPerK(input: SystemInput, bank: BankGeometry, heat: HeatPath): Float64Array {
  const { sink, box, positions } = input;
  const capacity = new Float64Array(heat.network.nodeCount);
  const add = (node: number, value: number) => {
    if (node >= 0) capacity[node] = (capacity[node] as number) + value;
  };
  const plate = sink.plate_m * sink.width_m * sink.length_m * sink.heat_JPerM3K;
  const fins = sink.finCount * sink.finThickness_m * sink.finHeight_m * sink.length_m * sink.heat_JPerM3K;
  heat.sinks.forEach((nodes, s) => {
    const shell = heat.shells[s];
    const faces = heat.faces[s];
    if (!nodes || !shell || !faces) return;
    const own = plate + fins / (Number(bank.plateBefore[s]) + Number(bank.plateAfter[s]));
    add(nodes.before, own);
    add(nodes.after, own);
    const { area_m2, collared_m2, collarSheet_m } = faces;
    const sheet_m3 = area_m2 * box.sheet_m + collared_m2 * collarSheet_m;
    add(shell.wall, sheet_m3 * box.sheetHeat_JPerM3K);
  });
  heat.positions.forEach((nodes, r) => {
    const { part } = positions[r] as SystemInput['positions'][number];
    const chip = chipCapacity_JPerK(part);
    const bond = part.length_m * part.width_m * input.bond.filament_m * adhesive_JPerM3K;
    const coat = part.length_m * part.width_m * part.coating_m * coat_JPerM3K;
    add(nodes.film, chip / 2 + coat + bond / 2);
    if (nodes.filmContact) add(nodes.filmContact.plateNode, bond / 2);
    add(nodes.body, chip / 2);
    const { terminal, landing } = secondFace(input, part);
    add(nodes.joint, terminal);
    if (nodes.secondContact) add(nodes.secondContact.plateNode, landing);
  });
  return capacity;
}

export function chipCapacity_JPerK({
  length_m,
  width_m,
  thickness_m,
  ceramicHeat_JPerM3K,
}: PartInput): number {
  return length_m * width_m * thickness_m * ceramicHeat_JPerM3K;
}

/** What sits at the terminals, and what at the plate, of the way out of the second face. */
function secondFace(
  { secondFace: face, bond }: SystemInput,
  part: PartInput,
): { terminal: number; landing: number } {
  const solder = 2 * part.width_m * face.terminalLength_m * face.solder_m * solder_JPerM3K;
  const least = 0.05 * chipCapacity_JPerK(part);
  if (face.way !== 'tabs') return { terminal: Math.max(least, solder), landing: 0 };
  const across_m2 = face.tabCount * face.tabWidth_m * face.tabThickness_m;
  const free = across_m2 * face.tabLength_m * copper_JPerM3K;
  const landed = across_m2 * face.tabLanding_m * copper_JPerM3K;
  const glue = face.tabCount * face.tabWidth_m * face.tabLanding_m * bond.filament_m * adhesive_JPerM3K;
  return { terminal: Math.max(least, solder + landed + free / 2), landing: free / 2 + glue };
}
