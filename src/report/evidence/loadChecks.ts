import type { CheckGroup } from './checkRecord.ts';

/** The checks that the last run of the tests left; they come when somebody wants to see them. */
export async function loadChecks(): Promise<readonly CheckGroup[]> {
  const { default: checks } = await import('./checks.json');
  return checks as unknown as readonly CheckGroup[];
}
