import type { ToleranceResult } from '../../studies/tolerance/result.ts';
import { plain } from '../format.ts';
import { limitPlaces } from '../limitPlaces.ts';
import { capital, percent } from '../words.ts';
import { betweenWords, influencePhrase, numeral, ofSo } from './toleranceWords.ts';

/** The whole answer, what counts first. */
export function toleranceSentence(result: ToleranceResult): string {
  const { draws, dimensions, holds, noAnswer } = result;
  if (draws === 0) return 'No box has been drawn yet.';
  if (dimensions === 0)
    return `Nothing varies here: every box is the one as drawn, and ${holds.share > 0 ? 'holds' : 'does not hold'}.`;
  const sentences = [
    `${holdingClause(result)}${togetherClause(result)}.`,
    ...whySentence(result),
    ...(noAnswer > 0 ? [`${ofSo(noAnswer)} have no answer and count as not holding.`] : []),
  ];
  return sentences.join(' ');
}

function holdingClause({ holds, draws }: ToleranceResult): string {
  const all = plain(draws, 6);
  const sure = 'with 95\u202f% confidence';
  if (holds.share === 1)
    return `All ${all} boxes drawn hold: of 100 built like this at least ${plain(100 * holds.low, 4)}, ${sure}`;
  if (holds.share === 0)
    return `None of the ${all} boxes drawn holds: of 100 built like this at most ${plain(100 * holds.high, 2)}, ${sure}`;
  return `${ofSo(holds.share)} boxes built like this hold, ${betweenWords(holds)} of 100 ${sure}`;
}

function togetherClause({ together }: ToleranceResult): string {
  if (together === null) return '';
  const { boxes, share, batches } = together;
  const which = boxes === 2 ? 'both' : `all ${numeral(boxes)}`;
  if (batches < fewBatches) return `; how often ${which} of a batch hold takes more boxes to say`;
  return `; ${which} of a batch hold in ${ofSo(share)} batches, ${betweenWords(together)} of 100`;
}

/** A chance from fewer batches than these says nothing. */
const fewBatches = 20;

/** Less than this matters no more than the next one. */
const worthNaming = 0.05;

function whySentence({ influences, failing }: ToleranceResult): string[] {
  const [leading] = influences;
  const [limit] = failing;
  const matters =
    leading && leading.onMargin >= worthNaming
      ? `what matters most is ${influencePhrase(leading)}, ${percent(leading.onMargin)} of how the film’s margin varies`
      : '';
  const gives = limit
    ? `where one does not hold, the limit of ${limitPlaces[limit.limit]} is passed first${failing.length > 1 ? ' most often' : ''}`
    : '';
  const both = [matters, gives].filter((text) => text !== '').join('; ');
  return both === '' ? [] : [`${capital(both)}.`];
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
      ? `, all ${numeral(together.boxes)} in ${ofSo(together.share)}`
      : '';
  return fresh
    ? `As parts vary, ${boxes} hold${batch}.`
    : `Out of date: ${boxes} held before the last change.`;
}
