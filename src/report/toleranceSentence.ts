import type { Influence, ToleranceResult } from '../studies/tolerance/result.ts';
import { plain } from './format.ts';
import { betweenWords, influencePhrase, numeral, ofSo } from './toleranceWords.ts';
import { capital, percent } from './words.ts';

/** The whole answer in a sentence or two. */
export function toleranceSentence(result: ToleranceResult): string {
  if (result.draws === 0) return 'No box has been drawn yet.';
  const { noAnswer, dimensions } = result;
  const unanswered =
    noAnswer > 0 ? ` ${capital(ofSo(noAnswer))} have no answer and count as not holding.` : '';
  if (dimensions === 0)
    return `Nothing varies here: every box is the one as drawn, and ${result.holds.share > 0 ? 'holds' : 'does not hold'}.`;
  return `${holdingClause(result)}${togetherClause(result)}${matterClause(result.influences)}.${unanswered}`;
}

function holdingClause({ holds, draws }: ToleranceResult): string {
  const all = plain(draws, 6);
  if (holds.share === 1)
    return `All ${all} boxes drawn hold, so that of 100 built like this at least ${(100 * holds.low).toFixed(1)} do, with 95 % confidence`;
  if (holds.share === 0)
    return `None of the ${all} boxes drawn holds, so that of 100 built like this at most ${(100 * holds.high).toFixed(1)} do, with 95 % confidence`;
  return `${capital(ofSo(holds.share))} boxes built like this hold, ${betweenWords(holds)} of 100 with 95 % confidence`;
}

function togetherClause({ together }: ToleranceResult): string {
  if (together === null) return '';
  const { boxes, share, batches } = together;
  const which = boxes === 2 ? 'both' : `all ${numeral(boxes)}`;
  if (batches < fewBatches) return `; for the chance that ${which} of a batch hold, draw more boxes`;
  return `; ${which} of a batch hold in ${ofSo(share)} batches, ${betweenWords(together)} of 100`;
}

/** A chance from fewer batches than these says nothing. */
export const fewBatches = 20;

/** Less than this matters no more than the next one. */
const worthNaming = 0.05;

function matterClause(influences: readonly Influence[]): string {
  const leading = leadingInfluence(influences);
  if (leading === null) return '';
  return `; what matters most is ${influencePhrase(leading)}, ${percent(leading.onMargin)} of how the film’s margin varies`;
}

/** What moves the margin of the hottest film most, where anything does. */
export function leadingInfluence(influences: readonly Influence[]): Influence | null {
  const [first] = influences;
  return first && first.onMargin >= worthNaming ? first : null;
}

/** A line under the verdict on top. @param fresh whether it belongs to the design as it stands */
export function toleranceLine(
  { draws, holds, together, dimensions }: ToleranceResult,
  fresh: boolean,
): string {
  if (draws === 0 || dimensions === 0) return '';
  const boxes = holds.share === 1 ? `all ${plain(draws, 6)} boxes drawn` : `${ofSo(holds.share)} boxes`;
  const batch =
    together && together.batches >= fewBatches
      ? `, all ${numeral(together.boxes)} of a batch in ${ofSo(together.share)}`
      : '';
  return fresh
    ? `As parts vary, ${boxes} hold${batch}.`
    : `Before the last change ${boxes} held as parts vary${batch}. Out of date: draw again.`;
}
