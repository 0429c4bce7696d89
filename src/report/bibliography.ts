import { type Source, type SourceKey, sources } from '../core/sources.ts';
import type { SourceRow } from './types.ts';
import { standingWords } from './wording.ts';

/** Numbers the sources of one answer, each once, in the order in which it is asked for them. */
export interface Bibliography {
  readonly rows: readonly SourceRow[];
  readonly rowOf: (key: string) => SourceRow;
}

export function bibliographyOf(keys: readonly string[]): Bibliography {
  const rows = [...new Set(keys)].map((key, index) => {
    const { cite, standing } = sourceOf(key);
    return { number: index + 1, key, cite, standing, standingWord: standingWords[standing] };
  });
  const byKey = new Map(rows.map((row) => [row.key, row]));
  return {
    rows,
    rowOf: (key) => {
      const row = byKey.get(key);
      if (row === undefined) throw new Error(`source ${key} was not numbered`);
      return row;
    },
  };
}

function sourceOf(key: string): Source {
  if (!(key in sources)) throw new Error(`no source ${key}`);
  return sources[key as SourceKey];
}
