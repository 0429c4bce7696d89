import { defineCard } from '../card.ts';

/** Largest change of a strip, as a share of black emission, at which the radiosity counts as settled. */
const SETTLED = 1e-10;

interface Strips {
  readonly x: Float64Array;
  readonly z: Float64Array;
  readonly firstOfBase: number;
  readonly firstOfRight: number;
}

/**
 * Apparent emissivity of the opening of a long rectangular groove of one temperature, by radiosity between strips with
 * crossed strings. The reference for the closed form; too slow for the solver. Strips are finer towards the corners.
 * @param depthRatio groove depth over gap
 * @param strips strips along the two walls and the base together
 */
export function channelEmissivityGroove(emissivity: number, depthRatio: number, strips = 360): number {
  if (depthRatio === 0) return emissivity;
  const edges = edgesOf(depthRatio, strips);
  const widths = edges.x.subarray(1).map((_, i) => distance(edges, i, i + 1));
  const views = viewsBetween(edges, widths.length);
  const radiosity = settle(views, widths, emissivity);
  // What does not meet another strip leaves through the opening.
  let leaving = 0;
  for (let i = 0; i < widths.length; i++) {
    let open = widths[i] ?? 0;
    for (let j = 0; j < widths.length; j++) open -= views[i * widths.length + j] ?? 0;
    leaving += open * (radiosity[i] ?? 0);
  }
  return leaving;
}

/** Edges of the strips from the left rim down, across and up to the right rim; gap 1, cosine-spaced on each side. */
function edgesOf(depthRatio: number, strips: number): Strips {
  const wall = Math.max(1, Math.round(strips * 0.4));
  const base = Math.max(1, strips - 2 * wall);
  const x = new Float64Array(2 * wall + base + 1);
  const z = new Float64Array(2 * wall + base + 1);
  for (let i = 0; i <= wall; i++) z[i] = depthRatio * (1 - spaced(i, wall));
  for (let i = 0; i <= base; i++) x[wall + i] = spaced(i, base);
  for (let i = 0; i <= wall; i++) {
    x[wall + base + i] = 1;
    z[wall + base + i] = depthRatio * spaced(i, wall);
  }
  return { x, z, firstOfBase: wall, firstOfRight: wall + base };
}

function spaced(i: number, count: number): number {
  return (1 - Math.cos((Math.PI * i) / count)) / 2;
}

function distance(edges: Strips, i: number, j: number): number {
  return Math.hypot((edges.x[i] ?? 0) - (edges.x[j] ?? 0), (edges.z[i] ?? 0) - (edges.z[j] ?? 0));
}

function sideOf(edges: Strips, i: number): number {
  return i < edges.firstOfBase ? 0 : i < edges.firstOfRight ? 1 : 2;
}

/** Strip width × view factor, by crossed strings; strips of one side do not see one another. */
function viewsBetween(edges: Strips, count: number): Float64Array {
  const views = new Float64Array(count * count);
  for (let i = 0; i < count; i++) {
    for (let j = i + 1; j < count; j++) {
      if (sideOf(edges, i) === sideOf(edges, j)) continue;
      // Walking round the groove, the strings i→j and i+1→j+1 cross.
      const crossed = distance(edges, i, j) + distance(edges, i + 1, j + 1);
      const uncrossed = distance(edges, i, j + 1) + distance(edges, i + 1, j);
      const view = Math.max(0, (crossed - uncrossed) / 2);
      views[i * count + j] = view;
      views[j * count + i] = view;
    }
  }
  return views;
}

/** Radiosity over black emission, strip after strip until nothing moves (Gauss–Seidel: reflections only fade). */
function settle(views: Float64Array, widths: Float64Array, emissivity: number): Float64Array {
  const count = widths.length;
  const radiosity = new Float64Array(count).fill(emissivity);
  for (let moved = 1; moved > SETTLED; ) {
    moved = 0;
    for (let i = 0; i < count; i++) {
      let arriving = 0;
      for (let j = 0; j < count; j++) arriving += (views[i * count + j] ?? 0) * (radiosity[j] ?? 0);
      const next = emissivity + ((1 - emissivity) * arriving) / (widths[i] ?? 1);
      moved = Math.max(moved, Math.abs(next - (radiosity[i] ?? 0)));
      radiosity[i] = next;
    }
  }
  return radiosity;
}

export const card = defineCard({
  id: 'channelEmissivityGroove',
  title: 'Fin channel as a radiator, radiosity between strips',
  equation: 'ε_a = Σ A_i·J_i·F_io/A_o; J_i = ε + (1 − ε)·Σ F_ij·J_j; F by crossed strings',
  result: { name: 'apparent emissivity of the opening', unit: '1', symbol: 'ε_a' },
  symbols: { emissivity: 'ε', depthRatio: 'λ' },
  aside: { depthRatio: 'shapes the groove, whose views F follow from it' },
  source: { key: 'siegelHowell', where: 'grey enclosures, crossed strings' },
  range: {},
  rangeFrom: 'not stated',
  scatter: { sigma: 0.002, from: 'computed' },
  assumes: ['greyDiffuse', 'isothermalPlate', 'longGroove'],
  example: {
    given: { emissivity: 0.1, depthRatio: 20 / 3.9 },
    printed: '0.482',
    kind: 'computed elsewhere',
    where: 'gap 3.9 mm, fins 20 mm, ε 0.1, 360 strips in a separate program',
  },
  evaluate: ({ emissivity, depthRatio }) => channelEmissivityGroove(emissivity, depthRatio),
});
