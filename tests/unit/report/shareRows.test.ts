import { expect, test } from 'vitest';
import type { AirOutcome } from '../../../src/core/system/outcome.ts';
import { shareRows } from '../../../src/report/shareRows.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const { outcome } = sampleExample('eightResistors');
if (!outcome.ok) throw new Error('the example has no answer');
const air = (share: AirOutcome['share']): AirOutcome => ({ ...outcome.air, flow_m3PerS: 0.01, share });
const none = { fins: 0, side: 0, end: 0, between: 0, leak: 0 };
const plain = (text: string) => text.replaceAll('\u202f', ' ');

test('a way that nothing takes is left out, the fins never', () => {
  expect(shareRows(air(none), 'metric').map(({ kind }) => kind)).toEqual(['fins']);
  const some = { ...none, fins: 0.75, leak: 0.25 };
  expect(shareRows(air(some), 'metric').map(({ kind }) => kind)).toEqual(['fins', 'leak']);
});

test('each way has its share and its flow, in the reader’s units', () => {
  const some = { ...none, fins: 0.75, side: 0.25 };
  const said = (system: 'metric' | 'inch') =>
    shareRows(air(some), system).map(({ label, percent, flow }) => plain(`${percent} ${label}, ${flow}`));
  // 0.01 m³/s is 36 m³/h, or 21.19 cfm.
  expect(said('metric')).toEqual(['75 % through the fins, 27 m³/h', '25 % gaps at the sides, 9 m³/h']);
  expect(said('inch')).toEqual(['75 % through the fins, 15.9 cfm', '25 % gaps at the sides, 5.3 cfm']);
});

test('air that runs backwards keeps its sign', () => {
  const row = shareRows(air({ ...none, fins: 1.1, end: -0.1 }), 'metric').find(({ kind }) => kind === 'end');
  expect(row?.share).toBe(-0.1);
  expect(row?.percent).toMatch(/^−10/);
  expect(row?.flow).toMatch(/^−3\.6/);
});
