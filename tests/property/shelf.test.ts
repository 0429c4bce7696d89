import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sources } from '../../src/core/sources.ts';
import { accepts } from '../../src/model/accepts.ts';
import { designSchema } from '../../src/model/design.ts';
import { exampleById } from '../../src/model/examples/examples.ts';
import { setAt } from '../../src/model/path.ts';
import { anyPlaceOf, type KindId, keyOf, kindIds, kinds } from '../../src/model/shelf/kinds.ts';
import { longest } from '../../src/model/shelf/ownEntries.ts';
import { shelf } from '../../src/model/shelf/shelf.ts';
import { standingOf, writesOf } from '../../src/model/shelf/standing.ts';
import { arbitraryDesign } from '../helpers/arbitraryDesign.ts';

const all = kindIds.flatMap((kind) => shelf[kind].map((entry) => [kind, entry.name, entry] as const));
const plain = (kind: KindId) =>
  shelf[kind].map(({ name, values }) => ({
    name,
    values: Object.fromEntries(Object.entries(values).map(([key, { value }]) => [key, value])),
  }));

describe('every entry on the shelf', () => {
  test.each(all)('%s %s sets the inputs of its kind, within their limits', (kind, name) => {
    const entry = plain(kind).find((each) => each.name === name);
    if (entry === undefined) throw new Error(name);
    const writes = writesOf(kind, anyPlaceOf(kind), entry);
    expect(Object.keys(entry.values).sort()).toEqual(kinds[kind].numbers.map(keyOf).sort());
    for (const [path, value] of Object.entries(writes))
      expect([path, accepts(path, value)]).toEqual([path, true]);
    const design = Object.entries(writes).reduce(
      (so, [path, value]) => setAt(so, path, value),
      exampleById('onePair'),
    );
    expect(designSchema.safeParse(design).success).toBe(true);
  });

  test.each(all)('%s %s says where each value comes from and how far others are from it', (_, __, entry) => {
    for (const [key, { value, source, scatter }] of Object.entries(entry.values)) {
      expect(Object.keys(sources)).toContain(source);
      // The diameter of a thread is what it is sold by; all else scatters.
      expect(scatter === null).toBe(key === 'filament_m');
      const [low, high] = scatter ?? [value, value];
      expect([low <= value, value <= high]).toEqual([true, true]);
      if (scatter !== null) expect(high).toBeGreaterThan(low);
    }
  });

  test('has a name of its own that fits the field that carries it', () => {
    for (const kind of kindIds) {
      const names = shelf[kind].map(({ name }) => name);
      expect(new Set(names.map((name) => name.toLowerCase())).size).toBe(names.length);
      expect(Math.max(...names.map(({ length }) => length))).toBeLessThanOrEqual(longest.name);
    }
  });

  test('that is a solder keeps its joint 40 K or more below where it begins to melt', () => {
    for (const { values, solidus } of shelf.solder)
      expect((solidus?.value ?? 0) - (values.joint_K?.value ?? 0)).toBeGreaterThanOrEqual(40);
  });
});

describe('an entry written into any design', () => {
  test('is found there again, by its name and its values', () => {
    const kind = fc.constantFrom(...kindIds);
    fc.assert(
      fc.property(arbitraryDesign('usual'), kind, fc.nat(), (design, id, pick) => {
        const entries = plain(id);
        const entry = entries[pick % entries.length];
        if (entry === undefined) throw new Error('no entry');
        const place = anyPlaceOf(id);
        const written = Object.entries(writesOf(id, place, entry)).reduce(
          (so, [path, value]) => setAt(so, path, value),
          design,
        );
        const standing = standingOf(written, id, place, entries);
        expect(standing).toMatchObject({ how: 'as', named: true });
        if (standing.how === 'as') expect(standing.names).toContain(entry.name);
      }),
      { seed: 20261125, numRuns: 300, endOnFailure: true },
    );
  });
});
