import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { PictureCupboard } from '../../../../src/store/keeping/pictures.ts';
import { layOut, type PictureKeeping } from '../../../../src/store/tracing/desk.ts';
import type { Picture } from '../../../../src/store/tracing/tracingStore.ts';
import { fakePictures } from '../../../helpers/fakeBrowser.ts';

const picture: Picture = { blob: new Blob(['dots']), name: 'a.png', owner: 'Fan', width: 800, height: 600 };

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

async function sit(pictures: PictureCupboard, design: string | null = 'd1', list = 'fan.curve') {
  const heard: PictureKeeping[] = [];
  const laid = await layOut({
    pictures,
    design,
    claim: async () => 'claimed',
    list,
    system: 'metric',
    hear: (keeping) => heard.push(keeping),
  });
  return { ...laid, act: laid.store.getState(), heard };
}

describe('a picture laid out', () => {
  test('is there again tomorrow with its marks, values and points', async () => {
    const pictures = fakePictures();
    const { act, heard, close } = await sit(pictures);
    act.setPicture(picture);
    act.setText('flow', 0, '0,5 l/s');
    act.put({ x: 100, y: 500 });
    await vi.advanceTimersByTimeAsync(500);
    expect(heard).toEqual(['kept']);
    act.goTo('points');
    act.put({ x: 200, y: 200 });
    await close();

    const { store, heard: next } = await sit(pictures);
    const { tracing, picture: there, step } = store.getState();
    expect(there).toEqual(picture);
    expect(tracing.axes.flow).toMatchObject({
      unit: 'l/s',
      marks: [{ at: { x: 100, y: 500 }, text: '0,5 l/s' }, { at: null }],
    });
    expect(tracing.points).toEqual([{ x: 200, y: 200 }]);
    expect(step).toBe('flow');
    expect(next).toEqual(['kept']);
  });

  test('lies at its own list and design only', async () => {
    const pictures = fakePictures();
    const { act, close } = await sit(pictures);
    act.setPicture(picture);
    await close();
    expect((await sit(pictures, 'd1', 'moreFans[0].curve')).store.getState().picture).toBeNull();
    expect((await sit(pictures, 'd2')).store.getState().picture).toBeNull();
  });

  test('has a design that was not yet kept be kept', async () => {
    const pictures = fakePictures();
    const { act, close } = await sit(pictures, null);
    act.setPicture(picture);
    await close();
    expect((await sit(pictures, 'claimed')).store.getState().picture).toEqual(picture);
  });

  test.each([
    ['QuotaExceededError', 'full'],
    ['SecurityError', 'refused'],
  ])('that the browser does not take (%s) is told, and stays while the page lives', async (name, told) => {
    let trouble: Error | null = Object.assign(new Error(name), { name });
    const pictures = fakePictures(() => {
      if (trouble !== null) throw trouble;
    });
    const design = `in trouble ${name}`;
    const { act, heard, close } = await sit(pictures, design);
    act.setPicture(picture);
    await close();
    expect(heard).toEqual([told]);
    const again = await sit(pictures, design);
    expect(again.store.getState().picture).toEqual(picture);
    expect(again.heard).toEqual(['refused']);

    trouble = null;
    again.act.put({ x: 5, y: 5 });
    await again.close();
    expect(again.heard).toEqual(['refused', 'kept']);
    expect((await pictures.read(design, 'fan.curve')).picture).toEqual(picture);
  });

  test('that does not read any more is none', async () => {
    const pictures = fakePictures();
    await pictures.writePicture('d1', 'fan.curve', { blob: 'no blob', width: 10, height: 10 });
    expect((await sit(pictures)).store.getState().picture).toBeNull();
    await pictures.writePicture('d1', 'fan.curve', picture);
    await pictures.writeTracing('d1', 'fan.curve', {
      axes: { flow: { unit: 'furlong', marks: [] } },
      points: [],
    });
    const { picture: there, tracing } = (await sit(pictures)).store.getState();
    expect(there).toEqual(picture);
    expect(tracing.axes.flow.unit).toBe('m3/h');
  });
});
