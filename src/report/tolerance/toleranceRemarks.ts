import { cards } from '../../core/cards.ts';
import type { Design } from '../../model/design.ts';
import type { Influence, ToleranceResult } from '../../studies/tolerance/result.ts';
import { plain } from '../format.ts';
import { listed, percent, share } from '../words.ts';
import { ofSo } from './toleranceWords.ts';

/** How it was done, and what it rests on. */
export function toleranceRemarks(design: Design, result: ToleranceResult): string[] {
  const { draws, of, seed, dimensions, influenceDraws, withSpare, influences } = result;
  return [
    `${plain(draws, 6)}${draws < of ? ` of ${plain(of, 6)}` : ''} boxes, drawn from a scrambled Sobol sequence in ${dimensions} dimensions with seed ${seed}, each solved like the design itself; the same seed draws the same boxes.`,
    `Confidence by Wilson’s interval for independent draws; quasi-random ones come nearer, so that it is on the cautious side.`,
    `${spareWords(withSpare)} the spare asked for, ${plain(design.limits.spareFactor)} times on every rise.`,
    ...(influenceDraws > 0 && influences.length === 0 && dimensions > 0
      ? ['These are too few boxes, or batches of them, to tell what matters most.']
      : []),
    ...(influences.length > 0
      ? [
          `What matters: first-order indices (Sobol) from ${plain(influenceDraws, 6)} boxes, by one fit of polynomials of all inputs at once (polynomial chaos); which way, by Spearman’s rank correlation. ${sumsOf(influences)}`,
        ]
      : []),
    batchRemark(result),
    'What is drawn beyond the limits of an input, or beyond what can be built, stands at the nearest value that can: a gap is never less than nothing.',
    ...movedRemark(result),
    'Within one box all bonds are alike, and so are all sinks; only resistors differ from one another. Skewed spreads have the value of the design in the middle; so have factors of methods, with the scatter of their cards.',
    ...(design.fitted.readings > 0
      ? [
          'Factors that were fitted to readings lie about the fitted value, each by itself, with the uncertainty of the fit in place of the card’s scatter.',
        ]
      : []),
    ...(design.bond.designShare < 1
      ? [
          `The conductivity of the bond scatters about what the design counts on, ${share(design.bond.designShare)} of the data sheet.`,
        ]
      : []),
    ...(design.load.atWorst
      ? [
          'Resistances and the supply are drawn, so that nothing is taken at the worst of its tolerance besides.',
        ]
      : []),
    ...(result.methods.length === 0 ? ['Methods are taken as exact.'] : []),
    ...undrawnRemark(result),
    ...(design.load.duty < 1
      ? ['Films at the end of a pulse swing over their mean rise as those of the design do.']
      : []),
  ];
}

function spareWords(share: number): string {
  if (share === 0) return 'No box has';
  return share === 1 ? 'All boxes also have' : `${ofSo(share)} boxes also have`;
}

function sumsOf(influences: readonly Influence[]): string {
  const sum = (is: 'input' | 'method') =>
    influences.reduce((all, { of, onMargin }) => (of.is === is ? all + onMargin : all), 0);
  const [parts, methods] = [sum('input'), sum('method')];
  const rest = Math.max(0, 1 - parts - methods);
  return `Of the margin’s variance ${percent(parts)} goes with parts, ${percent(methods)} with methods, ${percent(rest)} with several at once.`;
}

function batchRemark({ boxes, together }: ToleranceResult): string {
  if (boxes === 1)
    return 'Every box is drawn from lots of its own: built as a batch, boxes would come out more alike.';
  return `Boxes are drawn in ${plain(together?.batches ?? 0, 6)} batches of ${boxes}. One batch shares its adhesive, alloy, sheet, kind of chip and grilles, and the errors of methods; cuts, resistors, fan, supply and room differ from box to box. Between batches and boxes the points are shuffled (Latin supercube). The confidence allows for boxes of a batch coming out alike.`;
}

function movedRemark({ moved, draws }: ToleranceResult): string[] {
  return moved > 0
    ? [
        `${percent(moved / draws)} of the boxes did not go together as drawn: the measure that did not fit was taken as near as it fits.`,
      ]
    : [];
}

function undrawnRemark({ undrawn }: ToleranceResult): string[] {
  const titles = cards.flatMap(({ id, title }) =>
    undrawn.includes(id) ? [title.charAt(0).toLowerCase() + title.slice(1)] : [],
  );
  return titles.length > 0
    ? [`The scatter of some methods is not drawn, for no factor in the model is theirs: ${listed(titles)}.`]
    : [];
}
