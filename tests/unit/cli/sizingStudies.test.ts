import { describe, expect, test } from 'vitest';
import { fanStudy, finStudy, sizeStudy } from '../../../src/cli/sizingStudies.ts';
import { eightResistors } from '../../../src/model/examples/eightResistors.ts';

describe('sizes asked on a terminal', () => {
  test('ask for the spare wanted where nothing else is said', () => {
    expect(sizeStudy.ask(eightResistors, {}, 'metric')).toEqual({
      design: eightResistors,
      target: { ask: 'spare', spareFactor: 1.25 },
    });
  });

  test('take targets and rules as options, in the reader’s units', () => {
    const asked = finStudy.ask(eightResistors, { ask: 'film', margin: '18', cutters: '1/16, 1/8' }, 'inch');
    expect(asked).toMatchObject({
      target: { ask: 'film', margin_K: 10 },
      rules: { cutters_m: [0.0015875, 0.003175] },
    });
    expect(fanStudy.ask(eightResistors, {}, 'metric')).toMatchObject({
      fans: [{ name: eightResistors.fan.name }],
    });
  });

  test('say which option does not read', () => {
    expect(sizeStudy.ask(eightResistors, { ask: 'much' }, 'metric')).toMatch(/^ask= is one of/);
    expect(sizeStudy.ask(eightResistors, { ask: 'film', margin: 'x' }, 'metric')).toMatch(
      /^margin=: .*number/,
    );
    expect(finStudy.ask(eightResistors, { depth: '90' }, 'metric')).toMatch(/^depth=: Out of bounds/);
  });
});
