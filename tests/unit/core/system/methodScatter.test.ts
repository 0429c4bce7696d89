import { describe, expect, test } from 'vitest';
import { unitFactors } from '../../../../src/core/system/input.ts';
import { methodScatter, scatterCards, withoutFactor } from '../../../../src/core/system/methodScatter.ts';
import { systemCards } from '../../../../src/core/system/methods.ts';
import { sampleInput } from '../../../helpers/sampleInput.ts';
import { trusted } from '../../../helpers/solved.ts';

const { used } = trusted(sampleInput(4, 2));

describe('scatter of methods', () => {
  test('stands on a card with a scatter for every factor, one that an answer can rest on', () => {
    expect(Object.keys(scatterCards).toSorted()).toEqual(Object.keys(unitFactors).toSorted());
    for (const card of Object.values(scatterCards)) {
      expect(card.scatter.sigma, card.id).not.toBeNull();
      expect(systemCards, card.id).toContain(card);
    }
  });

  test('is that of the methods which the answer used', () => {
    const factors = methodScatter(used).map(({ factor }) => factor);
    expect(factors).toContain('channelHeat');
    expect(factors).not.toContain('standingFan');
    expect(methodScatter([])).toEqual([]);
  });

  test('has the card’s number as its coefficient of variation', () => {
    for (const { card, sigma } of methodScatter(used)) {
      const variation = Math.sqrt(Math.expm1(sigma * sigma));
      expect(variation, card.id).toBeCloseTo(card.scatter.sigma ?? 0, 12);
    }
  });

  test('is what a fit leaves open where a factor was fitted, whatever its card says', () => {
    const scatter = methodScatter(used, { fanFlow: 0.03, standingFan: 0.2 });
    expect(scatter.find(({ factor }) => factor === 'fanFlow')).toMatchObject({ sigma: 0.03, fitted: true });
    expect(scatter.find(({ factor }) => factor === 'standingFan')).toMatchObject({
      sigma: 0.2,
      fitted: true,
    });
    expect(scatter.find(({ factor }) => factor === 'channelHeat')?.fitted).toBe(false);
  });

  test('that no factor can show is told, where it is worth a word', () => {
    const ids = withoutFactor(used).map(({ id }) => id);
    expect(ids).toContain('narrowGap');
    expect(ids).not.toContain('nusseltDeveloping');
    expect(ids).not.toContain('airDensity');
  });
});
