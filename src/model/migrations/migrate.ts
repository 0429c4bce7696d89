import type { Migration } from './migration.ts';
import { toVersion2 } from './toVersion2.ts';
import { toVersion3 } from './toVersion3.ts';
import { toVersion4 } from './toVersion4.ts';
import { toVersion5 } from './toVersion5.ts';

export const currentVersion = 5;

/** Every step there has been, oldest first, each one version up. */
export const migrations: readonly Migration[] = [toVersion2, toVersion3, toVersion4, toVersion5];

export type Migrated =
  | { readonly ok: true; readonly raw: Readonly<Record<string, unknown>>; readonly notes: readonly string[] }
  | { readonly ok: false; readonly reason: string };

/** Brings raw file data up to the current version, step by step, or says why it cannot. */
export function migrate(
  raw: Readonly<Record<string, unknown>>,
  steps: readonly Migration[] = migrations,
  target = currentVersion,
): Migrated {
  const { version } = raw;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return {
      ok: false,
      reason: `The version is missing or no whole number; this copy reads ${readable(target)}.`,
    };
  }
  if (version > target) {
    return {
      ok: false,
      reason: `Version ${version} is newer than this copy knows; it reads ${readable(target)}.`,
    };
  }
  let here = raw;
  const notes: string[] = [];
  for (let at = version; at < target; at++) {
    const step = steps.find(({ from }) => from === at);
    if (step === undefined)
      return { ok: false, reason: `No way from version ${at} to version ${target} is known.` };
    const next = step.apply(here);
    here = { ...next.raw, version: step.to };
    notes.push(...next.notes);
  }
  return { ok: true, raw: here, notes };
}

function readable(target: number): string {
  return target === 1 ? 'version 1' : `versions 1 to ${target}`;
}
