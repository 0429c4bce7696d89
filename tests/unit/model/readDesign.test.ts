import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { anotherFan, defaultDesign } from '../../../src/model/defaults.ts';
import { examples } from '../../../src/model/examples/examples.ts';
import { setAt } from '../../../src/model/path.ts';
import { readDesign } from '../../../src/model/readDesign.ts';

const problemsOf = (raw: unknown) => {
  const read = readDesign(raw);
  return read.ok ? [] : read.problems;
};
const frozen = new URL('../../fixtures/designs/', import.meta.url);

describe('reading a design', () => {
  test('gives back what it was given, when that is in order', () => {
    for (const design of [defaultDesign, ...examples.map((example) => example.design)]) {
      expect(readDesign(structuredClone(design))).toEqual({ ok: true, design, notes: [] });
    }
  });

  test.each([[null], [undefined], [3], ['text'], [[]], [true]])('refuses %j as no design at all', (raw) => {
    expect(problemsOf(raw)).toEqual([
      { path: '', reason: 'This is not a Throughfin design: no { } around it.' },
    ]);
  });

  test('refuses another format before looking further', () => {
    expect(problemsOf({})).toEqual([
      {
        path: 'format',
        reason: 'This is not a Throughfin design: its "format" should be "throughfin-design".',
      },
    ]);
  });

  test('refuses a newer version whole', () => {
    const problems = problemsOf({ ...defaultDesign, version: 6, somethingNew: 1 });
    expect(problems).toEqual([
      { path: 'version', reason: 'Version 6 is newer than this copy knows; it reads versions 1 to 5.' },
    ]);
  });

  test('tells every missing input by its place', () => {
    const { room: _, ...rest } = defaultDesign;
    expect(problemsOf(rest)).toEqual([{ path: 'room', reason: 'This is missing.' }]);
    const { T_K: __, ...room } = defaultDesign.room;
    const [problem] = problemsOf({ ...defaultDesign, room });
    expect(problem?.path).toBe('room.T_K');
    expect(problem?.reason).toMatch(/^This is missing\. Allowed is .*°C.*\.$/);
  });

  test.each([
    ['sink.length_m', -0.01, /^This cannot be -0\.01\. Allowed is 2 to 500\smm\.$/],
    ['sink.length_m', 1e9, /^This cannot be 1000000000\. Allowed/],
    ['sink.length_m', '25 mm', /^This cannot be the text "25 mm"\. Allowed/],
    ['sink.length_m', null, /^This cannot be null\. Allowed/],
    [
      'sink.finCount',
      9.5,
      /^This has to be a whole number, and is 9\.5\. Allowed is a whole number from 2 to 200\.$/,
    ],
    ['sink.first', 1, /^This cannot be 1\. Allowed is true or false\.$/],
    [
      'secondFace.way',
      'glued',
      /^This cannot be the text "glued"\. Allowed is "tabs" \(tabs soldered to the terminals\), /,
    ],
    [
      'title',
      'x'.repeat(81),
      /^This cannot be a text of 81 characters\. Allowed is a text of at most 80 characters\.$/,
    ],
    ['positions', [], /^This cannot be a list of 0 rows\. Allowed is a list of 1 to 64 rows\.$/],
    [
      'fan.curve',
      [{ flow_m3PerS: 0, dp_Pa: 40 }],
      /^This cannot be a list of 1 row\. Allowed is a list of 2 to 200 rows\.$/,
    ],
    [
      'moreFans',
      Array.from({ length: 8 }, (_, index) => anotherFan(defaultDesign.fan, index)),
      /^This cannot be a list of 8 rows\. Allowed is a list of 0 to 7 rows\.$/,
    ],
    [
      'room.pressureFrom',
      'weather',
      /^This cannot be the text "weather"\. Allowed is "altitude" \(altitude\), "barometer" \(barometer\)\.$/,
    ],
    ['room', 'warm', /^This cannot be the text "warm"\.$/],
  ])('says what %s cannot be, and what it can', (path, value, sentence) => {
    const [problem, ...others] = problemsOf(setAt(defaultDesign, path, value));
    expect(problem?.path).toBe(path);
    expect(problem?.reason).toMatch(sentence);
    expect(others).toEqual([]);
  });

  test('refuses names it does not know, each by itself, and does not take them in', () => {
    expect(
      problemsOf({ ...defaultDesign, colour: 'red', sink: { ...defaultDesign.sink, shape: 'pin' } }),
    ).toEqual([
      { path: 'sink.shape', reason: 'This name is not known in a design of version 5.' },
      { path: 'colour', reason: 'This name is not known in a design of version 5.' },
    ]);
  });

  test('refuses a name that reaches for the prototype', () => {
    const raw = JSON.parse(
      JSON.stringify(defaultDesign).replace('{', '{"__proto__":{"on":true},'),
    ) as unknown;
    expect(problemsOf(raw)).toEqual([
      { path: '__proto__', reason: 'This name is not known in a design of version 5.' },
    ]);
  });

  test('refuses values that do not go together, in the words of the form', () => {
    expect(problemsOf(setAt(defaultDesign, 'fan.hub_m', 0.058))).toEqual([
      { path: 'fan.hub_m', reason: expect.stringContaining('smaller than the opening') },
    ]);
  });

  test('counts what it does not list', () => {
    const positions = Array.from({ length: 64 }, () => ({ ...defaultDesign.positions[0], power_W: 'much' }));
    const problems = problemsOf({ ...defaultDesign, positions });
    expect(problems).toHaveLength(21);
    expect(problems.at(-1)).toEqual({ path: '', reason: 'And 44 more.' });
  });

  test('opens every file that was ever saved', () => {
    const versions = readdirSync(frozen);
    expect(versions).toEqual(['v1', 'v2', 'v3', 'v4']);
    for (const version of versions) {
      for (const file of readdirSync(new URL(`${version}/`, frozen))) {
        const raw = JSON.parse(readFileSync(new URL(`${version}/${file}`, frozen), 'utf8')) as unknown;
        expect(readDesign(raw), file).toMatchObject({ ok: true });
      }
    }
  });
});
