import type { CheckGroup, CheckRecord } from '../../../src/report/evidence/checkRecord.ts';
import type { KeptCheck } from '../published.ts';

/** What one test left, in the order of its file. */
export interface TestWithChecks {
  /** Path from the project folder. */
  readonly file: string;
  readonly title: string;
  readonly checks: readonly KeptCheck[];
}

/** Folders of the core whose checks stand in a folder of another name. */
const sameSubject: Readonly<Record<string, string>> = { heat: 'transient', airflow: 'bank' };

/** All checks of a run by file and source, sorted by file, in their order within it. */
export function gatherChecks(tests: readonly TestWithChecks[]): CheckGroup[] {
  const groups = new Map<string, CheckGroup & { checks: CheckRecord[] }>();
  for (const { file, title, checks } of tests) {
    for (const { check, subject = file.split('/').at(-2) ?? '', title: own, ...from } of checks) {
      const about = { subject: sameSubject[subject] ?? subject, file, ...from };
      const key = JSON.stringify(about);
      const group = groups.get(key) ?? { ...about, checks: [] };
      group.checks.push({ test: own ?? title, ...check });
      groups.set(key, group);
    }
  }
  return [...groups.values()].sort((a, b) => compareText(a.file, b.file));
}

const compareText = (a: string, b: string) => (a < b ? -1 : Number(a > b));

/** A check a line, so that a change shows as what it is. */
export function formatChecks(groups: readonly CheckGroup[]): string {
  const lines = groups.map(({ checks, ...about }) => {
    const head = JSON.stringify(about).slice(0, -1);
    return `${head},"checks":[\n${checks.map((check) => JSON.stringify(check)).join(',\n')}\n]}`;
  });
  return `[\n${lines.join(',\n')}\n]\n`;
}
