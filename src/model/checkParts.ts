import type { Design } from './design.ts';
import { type Problem, problem } from './problem.ts';

const exceeds = (value: number, most: number) => value > most * (1 + 1e-9);

/** Chips, their bonds and tabs against the sinks they sit on. */
export function checkParts(design: Design): Problem[] {
  const missing = design.positions.flatMap(({ part }, index) =>
    part < design.parts.length
      ? []
      : [problem(`positions[${index}].part`, 'partMissing', { parts: design.parts.length })],
  );
  const reversed = design.parts.flatMap(({ fullPowerUpTo_K, zeroPowerAt_K }, index) =>
    zeroPowerAt_K > fullPowerUpTo_K + 0.1
      ? []
      : [problem(`parts[${index}].zeroPowerAt_K`, 'deratingReversed', { fullPowerUpTo_K })],
  );
  return [...missing, ...reversed, ...checkChips(design), ...checkFilament(design), ...checkTabs(design)];
}

/** Parts that sit somewhere in the row; one that lies unused in the list hinders nobody. */
function usedParts({ parts, positions }: Design): { part: Design['parts'][number]; index: number }[] {
  return parts
    .map((part, index) => ({ part, index }))
    .filter(({ index }) => positions.some((position) => position.part === index));
}

function checkChips(design: Design): Problem[] {
  const { sink } = design;
  return usedParts(design).flatMap(({ part, index }) => [
    ...(exceeds(part.length_m, sink.width_m)
      ? [problem(`parts[${index}].length_m`, 'chipTooLong', { most_m: sink.width_m })]
      : []),
    ...(exceeds(part.width_m, sink.length_m)
      ? [problem(`parts[${index}].width_m`, 'chipTooWide', { most_m: sink.length_m })]
      : []),
  ]);
}

function checkFilament(design: Design): Problem[] {
  const { bond } = design;
  const area_m2 = smallest(design, (part) => part.length_m * part.width_m);
  const most_m = area_m2 / bond.filament_m;
  return exceeds(bond.filamentLength_m, most_m)
    ? [problem('bond.filamentLength_m', 'filamentTooLong', { most_m })]
    : [];
}

function checkTabs(design: Design): Problem[] {
  const { secondFace: face, sink } = design;
  if (face.way !== 'tabs') return [];
  const found: Problem[] = [];
  const beside = Math.ceil(face.tabCount / 2);
  const widest_m = smallest(design, (part) => part.width_m) / beside;
  if (exceeds(face.tabWidth_m, widest_m))
    found.push(problem('secondFace.tabWidth_m', 'tabsTooWide', { most_m: widest_m, beside }));
  const terminal_m = smallest(design, (part) => part.length_m) / 2;
  if (exceeds(face.terminalLength_m, terminal_m)) {
    found.push(problem('secondFace.terminalLength_m', 'terminalTooLong', { most_m: terminal_m }));
  }
  const landing_m = (sink.width_m * sink.length_m) / (face.tabCount * face.tabWidth_m);
  if (exceeds(face.tabLanding_m, landing_m))
    found.push(problem('secondFace.tabLanding_m', 'landingTooLarge', { most_m: landing_m }));
  return found;
}

function smallest(design: Design, measure: (part: Design['parts'][number]) => number): number {
  return usedParts(design).reduce(
    (least, { part }) => Math.min(least, measure(part)),
    Number.POSITIVE_INFINITY,
  );
}
