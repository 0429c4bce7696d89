import { describe, expect, test } from 'vitest';
import { defaultDesign } from '../../../src/model/defaults.ts';
import { exampleById } from '../../../src/model/examples/examples.ts';
import { createDesignStore } from '../../../src/store/designStore.ts';
import { fieldView } from '../../../src/store/fieldView.ts';
import { handOver, takeUp } from '../../../src/store/handOver.ts';

function place() {
  const kept = new Map<string, string>();
  return {
    kept,
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
    removeItem: (key: string) => void kept.delete(key),
  };
}

function overReload(change: (store: ReturnType<typeof createDesignStore>) => void) {
  const before = createDesignStore(exampleById('twoDozen'));
  change(before);
  const kept = place();
  handOver(before, kept);
  const after = createDesignStore(defaultDesign);
  const taken = takeUp(after, () => kept);
  return { before: before.getState(), after: after.getState(), taken, kept };
}

describe('what stands in the fields', () => {
  test('stands there again, as it was typed, with unit, part and answer', () => {
    const { before, after, taken } = overReload((store) => {
      store.getState().setText('baffle.sideClearance_m', '1/16 in');
      store.getState().setSystem('inch');
      store.getState().selectPart('fan');
    });
    expect(taken).toBe(true);
    for (const key of ['design', 'drafts', 'units', 'system', 'selectedPart', 'solvedDesign'] as const)
      expect(after[key], key).toEqual(before[key]);
    expect(after.outcome).toEqual(before.outcome);
    expect(fieldView(after, 'baffle.sideClearance_m')).toMatchObject({ text: '1/16 in', problem: null });
  });

  test('comes back wrong where it was wrong, beside the last good answer', () => {
    const { before, after } = overReload((store) => {
      store.getState().setText('room.T_K', '30 °C');
      store.getState().setText('fan.hub_m', '59 mm');
      store.getState().setText('sink.plate_m', 'abc');
    });
    expect(after.stale).toBe(true);
    expect(after.problems).toEqual(before.problems);
    expect(after.solvedDesign).toEqual(before.solvedDesign);
    expect(after.outcome).toEqual(before.outcome);
    expect(after.design).toEqual(before.design);
    expect(fieldView(after, 'sink.plate_m').text).toBe('abc');
  });

  test('is taken up once', () => {
    const { kept } = overReload(() => {});
    expect(takeUp(createDesignStore(), () => kept)).toBe(false);
  });
});

describe('where nothing can be taken up', () => {
  test.each([
    ['nothing was left', () => place()],
    ['what was left is of another make', () => ({ ...place(), getItem: () => '{"design": 1}' })],
    [
      'the browser gives no store',
      () => {
        throw new DOMException('no', 'SecurityError');
      },
    ],
  ])('the page opens as ever: %s', (_, kept) => {
    const store = createDesignStore(exampleById('onePair'));
    expect(takeUp(store, kept)).toBe(false);
    expect(store.getState().design).toEqual(exampleById('onePair'));
  });

  test('a refusal is told to who wants to leave something', () => {
    const full = {
      ...place(),
      setItem: () => {
        throw new DOMException('full', 'QuotaExceededError');
      },
    };
    expect(() => handOver(createDesignStore(), full)).toThrow();
  });
});
