import type { Outcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { getAt, type Path } from '../model/path.ts';
import { sayInput } from '../model/sayInput.ts';
import { figures } from './figures.ts';
import type { ChangeReport, UnitSystem } from './types.ts';
import { verdictReport } from './verdictReport.ts';
import { fixed } from './words.ts';

/** The answered design that another is measured against, and what was done since. */
export interface Since {
  readonly design: Design;
  readonly outcome: Outcome;
  /** What the edit is called, and the one field it was made in. */
  readonly name: string;
  readonly path: Path | null;
  /** The edit was taken back. */
  readonly undone: boolean;
}

/** What the last edit was and what it did to the figures that matter. */
export function changeReport(
  design: Design,
  outcome: Outcome,
  since: Since,
  system: UnitSystem,
): ChangeReport {
  const before = verdictReport(since.design, since.outcome, system);
  const after = verdictReport(design, outcome, system);
  return {
    edit: [since.undone ? 'Taken back: ' : '', since.name, valuesOf(design, since, system)].join(''),
    verdict: before.word === after.word ? '' : `${before.word} → ${after.word.toLowerCase()}`,
    figures: outcome.ok && since.outcome.ok ? differences(outcome, since.outcome, system) : {},
  };
}

function differences(now: Solved, before: Solved, system: UnitSystem): Record<string, string> {
  const old = new Map(figures(before, system).map(({ key, amount }) => [key, amount]));
  const said = figures(now, system).flatMap(({ key, amount: { value, unit } }): [string, string][] => {
    const was = old.get(key)?.value ?? null;
    return value === null || was === null ? [] : [[key, sayDifference(value - was, value, unit)]];
  });
  return Object.fromEntries(said);
}

/** Differences that are said in another unit than what they are differences of. */
const unitsOfDifferences: Readonly<Record<string, string>> = { '°C': 'K', '%': 'points' };

/** Signed, to the third digit of the figure itself: "+3.1 K"; "–" where nothing of it would be left. */
function sayDifference(difference: number, figure: number, unit: string): string {
  const decimals = Math.min(6, Math.max(1, 2 - Math.floor(Math.log10(Math.abs(figure) || 1))));
  if (Number(difference.toFixed(decimals)) === 0) return '–';
  return `${difference > 0 ? '+' : ''}${fixed(difference, decimals)}\u202f${unitsOfDifferences[unit] ?? unit}`;
}

/** " 0.8 mm → 1.6 mm" where the edit was of one value that both designs have. */
function valuesOf(design: Design, { design: old, path }: Since, system: UnitSystem): string {
  if (path === null || fieldAt(path).kind === 'text') return '';
  const [from, to] = [old, design].map((each) => {
    const value = getAt(each, path);
    return value === undefined ? null : sayInput(path, value, system, { parts: each.parts });
  });
  return from === null || to === null || from === to ? '' : ` ${from} → ${to}`;
}
