import { type AssumptionKey, assumptions } from '../core/assumptions.ts';
import type { Card } from '../core/card.ts';
import type { Standing } from '../core/system/notes.ts';
import type { Bibliography } from './bibliography.ts';
import type { AssumptionRow, MethodRow, UnitSystem } from './types.ts';
import { variableText, variableWords } from './variables.ts';
import { originWords } from './wording.ts';
import { percent } from './words.ts';

/** The methods of one answer, in the order of its way: air, fan, channels, fins, solids. */
export function methodRows(
  cards: readonly Card[],
  bibliography: Bibliography,
  stands: readonly Standing[],
  system: UnitSystem,
): MethodRow[] {
  return cards.map((card) => {
    const source = bibliography.rowOf(card.source.key);
    return {
      id: card.id,
      title: card.title,
      equation: card.equation,
      source: card.source.where === '' ? source.cite : `${source.cite}; ${card.source.where}`,
      footnote: source.number,
      range: rangeText(card, system),
      here: hereText(
        stands.filter((each) => each.card === card.id),
        system,
      ),
      scatter: scatterText(card),
    };
  });
}

/** What the methods of one answer take for granted, and what the model itself does, in one order. */
export function assumptionRows(cards: readonly Card[], ofModel: readonly AssumptionKey[]): AssumptionRow[] {
  const used = new Set([...cards.flatMap((card) => card.assumes), ...ofModel]);
  return (Object.keys(assumptions) as AssumptionKey[])
    .filter((key) => used.has(key))
    .map((key) => ({ key, ...assumptions[key], ofModel: ofModel.includes(key) }));
}

/** Where a method holds, and who says so. */
export function rangeText(card: Card, system: UnitSystem): string {
  const parts = Object.entries(card.range).flatMap(([variable, bounds]) => {
    if (bounds === undefined) return [];
    const [low, high] = bounds;
    const show = (value: number) => variableText(variable, value, system);
    const name = variableWords(variable);
    if (low !== null && high !== null) return [`${name} ${show(low)} to ${show(high)}`];
    if (low !== null) return [`${name} from ${show(low)}`];
    return high === null ? [] : [`${name} up to ${show(high)}`];
  });
  if (parts.length === 0)
    return card.rangeFrom === 'not stated'
      ? originWords['not stated']
      : `no bounds, ${originWords[card.rangeFrom]}`;
  return `${parts.join('; ')} (${originWords[card.rangeFrom]})`;
}

/** What the answer has of each judged variable, over all places; a dash where no range was judged. */
export function hereText(stands: readonly Standing[], system: UnitSystem): string {
  const variables = [...new Set(stands.map(({ variable }) => variable))];
  const parts = variables.map((variable) => {
    const values = stands.flatMap((each) => (each.variable === variable ? [each.value] : []));
    const show = (value: number) => variableText(variable, value, system);
    const [low, high] = [show(Math.min(...values)), show(Math.max(...values))];
    return `${variableWords(variable)} ${low === high ? low : `${low} to ${high}`}`;
  });
  return parts.length > 0 ? parts.join('; ') : '–';
}

/** How far its results scatter, and who says so. */
export function scatterText({ scatter }: Card): string {
  return scatter.sigma === null
    ? originWords['not stated']
    : `±${percent(scatter.sigma)} (${originWords[scatter.from]})`;
}
