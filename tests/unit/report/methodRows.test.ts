import { describe, expect, test } from 'vitest';
import { assumptions } from '../../../src/core/assumptions.ts';
import { cards } from '../../../src/core/cards.ts';
import { modelAssumptions } from '../../../src/core/system/modelAssumptions.ts';
import { assumptionRows } from '../../../src/report/methodRows.ts';
import { sampleExample, sampleWithoutAnswer } from '../../helpers/sampleReport.ts';

describe('methodRows', () => {
  test('say where the design stands in every range that is judged, and nothing where none is', () => {
    const { methods } = sampleExample('eightResistors').report;
    const here = (id: string) => methods.find((method) => method.id === id)?.here ?? '';
    expect(here('standardPressure')).toMatch(/^altitude 0\u202fm$/);
    expect(here('nusseltDeveloping')).toMatch(/Prandtl number 0\.70\d/);
    expect(here('draught')).toMatch(/^Elenbaas number \d/); // counts only without fan
    expect(here('viscosity')).toBe('–');
  });
});

describe('assumptionRows', () => {
  test('list what the methods and the model take for granted, each once, worded', () => {
    const keys = assumptionRows(cards.slice(0, 3), ['evenFeed', 'dryIdealGas']).map(({ key }) => key);
    expect(keys).toContain('evenFeed');
    expect(new Set(keys).size).toBe(keys.length);
    for (const row of assumptionRows([], ['evenFeed']))
      expect(row).toEqual({ key: 'evenFeed', ...assumptions.evenFeed, ofModel: true });
  });

  test('stand in the report, of the box without fans where the running one has no answer', () => {
    const keys = sampleExample('eightResistors').report.assumptions.map(({ key }) => key);
    for (const key of modelAssumptions) expect(keys).toContain(key);
    const without = sampleWithoutAnswer().report.assumptions.map(({ key }) => key);
    for (const key of modelAssumptions) expect(without).toContain(key);
    expect(without).not.toContain('fanLaws');
  });
});
