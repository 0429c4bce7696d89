import type { core } from 'zod';
import { checkDesign } from './check.ts';
import { type Design, designSchema } from './design.ts';
import { currentVersion, migrate } from './migrations/migrate.ts';
import { joinPath } from './path.ts';
import type { UnitSystem } from './say.ts';
import { wordIssue } from './wordIssue.ts';
import { wordProblem } from './wordProblem.ts';

/** A sentence about one place of what was read; the path is empty where it is about the whole. */
export interface ReadProblem {
  readonly path: string;
  readonly reason: string;
}

export type ReadResult =
  | { readonly ok: true; readonly design: Design; readonly notes: readonly string[] }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** More sentences than this help nobody; the rest is counted. */
const mostProblems = 20;

/**
 * Anything at all → a design that can be solved, or every reason why not, each with its place. Nothing is repaired in
 * silence: older versions are migrated with notes, whatever does not fit is refused whole.
 */
export function readDesign(raw: unknown, system: UnitSystem = 'metric'): ReadResult {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw))
    return refuse('', 'This is not a Throughfin design: no { } around it.');
  const record = raw as Readonly<Record<string, unknown>>;
  if (record.format !== 'throughfin-design') {
    return refuse('format', 'This is not a Throughfin design: its "format" should be "throughfin-design".');
  }
  const migrated = migrate(record);
  if (!migrated.ok) return refuse('version', migrated.reason);
  const parsed = designSchema.safeParse(migrated.raw, { reportInput: true });
  if (!parsed.success)
    return {
      ok: false,
      problems: shorten(parsed.error.issues.flatMap((issue) => wordIssues(issue, system))),
    };
  const problems = checkDesign(parsed.data);
  if (problems.length > 0) {
    return {
      ok: false,
      problems: shorten(problems.map((found) => ({ path: found.path, reason: wordProblem(found, system) }))),
    };
  }
  return { ok: true, design: parsed.data, notes: migrated.notes };
}

function wordIssues(issue: core.$ZodIssue, system: UnitSystem): ReadProblem[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: joinPath([...issue.path, key]),
      reason: `This name is not known in a design of version ${currentVersion}.`,
    }));
  }
  const path = joinPath(issue.path);
  return [{ path, reason: wordIssue(path, issue, system) }];
}

function shorten(problems: readonly ReadProblem[]): readonly ReadProblem[] {
  if (problems.length <= mostProblems) return problems;
  const rest = problems.length - mostProblems;
  return [...problems.slice(0, mostProblems), { path: '', reason: `And ${rest} more.` }];
}

function refuse(path: string, reason: string): ReadResult {
  return { ok: false, problems: [{ path, reason }] };
}
