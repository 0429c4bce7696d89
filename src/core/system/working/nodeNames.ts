import type { Work } from '../work.ts';

/** What each node of the heat network is, by its number, to stand behind "conductance to the …". */
export function nodeNames({ heat }: Work): string[] {
  const names: string[] = [];
  heat.sinks.forEach((nodes, s) => {
    if (!nodes) return;
    if (nodes.before >= 0) names[nodes.before] = `first plate of sink ${s + 1}`;
    if (nodes.after >= 0) names[nodes.after] = `second plate of sink ${s + 1}`;
    names[nodes.air] = `air in sink ${s + 1}`;
    const shell = heat.shells[s];
    if (shell) names[shell.wall] = `sheet facing sink ${s + 1}`;
  });
  heat.positions.forEach(({ film, body, joint }, r) => {
    names[film] = `film of resistor ${r + 1}`;
    names[body] = `back of resistor ${r + 1}`;
    names[joint] = `terminals of resistor ${r + 1}`;
  });
  return names;
}
