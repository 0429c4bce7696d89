import { describe, expect, test } from 'vitest';
import type { Design } from '../../../../src/model/design.ts';
import { exampleById } from '../../../../src/model/examples/examples.ts';
import type { ChangeKey } from '../../../../src/studies/changes/change.ts';
import { changesJob } from '../../../../src/studies/changes/changes.ts';
import { bestApart, helps, isLast } from '../../../../src/studies/changes/tried.ts';
import { runJob } from '../../../../src/studies/job.ts';

const eight = exampleById('eightResistors');

function ranked(design: Design) {
  const result = runJob(changesJob, { design });
  if (result === null) throw new Error('no result');
  const at = (key: ChangeKey) => result.tried.find((each) => each.key === key);
  return { ...result, at };
}

describe('changes tried one by one', () => {
  const result = ranked(eight);

  test('are ranked by the kelvin that the first limit gains', () => {
    expect(result.limit).toBe('derating');
    const gains = result.tried.filter((each) => !isLast(each)).map(({ gain }) => gain?.limit_K ?? -1e9);
    expect(gains).toEqual([...gains].sort((a, b) => b - a));
  });

  test('end with less load, however much that gains', () => {
    expect(result.tried.at(-1)?.key).toBe('lessLoad');
    expect(result.at('lessLoad')?.gain?.limit_K).toBeGreaterThan(5);
  });

  test('tell the film beside the limit: bonding the second face cools one and heats the other', () => {
    const { gain } = result.at('secondBonded') ?? {};
    expect(gain?.film_K).toBeGreaterThan(3);
    expect(gain?.limit_K).toBeLessThan(0);
  });

  test('are louder where solving finds them so', () => {
    expect(result.at('fanBehind')?.costs).toContain('louder');
    expect(result.at('filamentThinner')?.costs).not.toContain('louder');
  });

  test('that do not go with the rest say what stands in the way', () => {
    const short = ranked({ ...eight, box: { ...eight.box, length_m: 0.136 } });
    expect(short.at('finsHigher')?.after).toMatchObject({ ok: false, why: 'clash' });
    expect(result.at('finsMore')?.fault?.rule).toBe('slot');
  });

  test('are done together, the best two and the best three', () => {
    expect(result.together.map(({ changes }) => changes.length)).toEqual([2, 3]);
    const [two] = result.together;
    const sum_K = two?.changes.reduce((sum, { gain }) => sum + (gain?.limit_K ?? 0), 0);
    expect(two?.sum_K).toBe(sum_K);
    expect(Math.abs((two?.gain?.limit_K ?? 0) - (sum_K ?? 0))).toBeLessThan(1);
  });

  test('are half known from the first pieces', () => {
    const pieces = [0, 1].map((index) => changesJob.piece({ design: eight }, index));
    const estimate = changesJob.gather({ design: eight }, pieces);
    expect(estimate?.tried).toHaveLength(5);
    expect(estimate?.together).toEqual([]);
    expect(changesJob.gather({ design: eight }, [])).toBe(null);
  });
});

test('the best apart get in nobody’s way', () => {
  const { tried } = ranked(exampleById('onePair'));
  const best = bestApart(tried, 6);
  expect(best.every(helps)).toBe(true);
  const keys = best.map(({ key }) => key);
  expect(keys.filter((key) => key.startsWith('filament'))).toHaveLength(1);
  expect(keys.filter((key) => /^fins|^sinkWider/.test(key)).length).toBeLessThan(2);
  expect(keys).toContain('secondBonded');
  expect(keys.filter((key) => key.startsWith('tabs'))).toEqual([]);
});

test('kelvin count at the film where what gives first is no temperature', () => {
  const { limit, tried } = ranked(exampleById('onePair'));
  expect(limit).toBe(null);
  for (const { gain } of tried) if (gain) expect(gain.limit_K).toBe(gain.film_K);
});

test('without an answer, what brings one comes first', () => {
  const { before, tried } = ranked({ ...eight, fan: { ...eight.fan, supply_V: 4 } });
  expect(before).toMatchObject({ ok: false, reason: 'fanDoesNotStart' });
  expect(tried[0]).toMatchObject({ key: 'fanRated', gain: null, after: { ok: true } });
});

test('pulses are followed, one change a piece', () => {
  const pulsing: Design = {
    ...exampleById('onePair'),
    load: { ...exampleById('onePair').load, duty: 0.3, period_s: 4 },
  };
  const first = changesJob.piece({ design: pulsing }, 0);
  expect(first).toMatchObject({ before: { margins_K: { pulse: expect.any(Number) } } });
  const second = changesJob.piece({ design: pulsing }, 1);
  expect('tried' in second && second.tried).toHaveLength(1);
});
