import { expect, test } from 'vitest';
import { exitLoss } from '../../../../src/core/losses/exitLoss.ts';
import { suddenExpansion } from '../../../../src/core/losses/suddenExpansion.ts';

test('exitLoss is a widening without end', () => expect(exitLoss()).toBe(suddenExpansion(0)));
