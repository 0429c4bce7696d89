import type { SourceKey } from '../../core/sources.ts';
import { cited, type ShelfEntry } from './entry.ts';

/** Total hemispherical emissivity of metal at moderate temperatures, by its finish. */
export const finishes: readonly ShelfEntry[] = [
  finish('Aluminium, polished', 0.05, 'thome2008', [0.04, 0.06], ''),
  finish(
    'Aluminium, as rolled or extruded',
    0.09,
    'thome2008',
    [0.05, 0.15],
    'Fingerprints and years raise it.',
  ),
  finish(
    'Aluminium, heavily oxidised',
    0.25,
    'thome2008',
    [0.2, 0.33],
    'Weathered or heated for long; not anodised.',
  ),
  finish(
    'Aluminium, anodised clear',
    0.8,
    'materialHandbook',
    [0.6, 0.9],
    'Grows with the thickness of the layer; thin decorative layers are at the low end. The colour hardly matters.',
  ),
  finish(
    'Aluminium, anodised black',
    0.85,
    'materialHandbook',
    [0.8, 0.92],
    'Black to the eye matters little; the layer does.',
  ),
  finish(
    'Any metal, painted or powder coated',
    0.9,
    'thome2008',
    [0.8, 0.97],
    'Of any colour but aluminium paint. A thick coat insulates the faces that are bonded: leave these bare.',
  ),
  finish('Copper, slightly tarnished', 0.13, 'thome2008', [0.12, 0.15], ''),
  finish('Brass, dull', 0.22, 'thome2008', [0.2, 0.25], ''),
];

function finish(
  name: string,
  emissivity: number,
  source: SourceKey,
  scatter: readonly [number, number],
  note: string,
): ShelfEntry {
  return { name, values: { emissivity: cited(emissivity, source, scatter) }, note };
}
