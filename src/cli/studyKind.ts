import type { Design } from '../model/design.ts';
import type { UnitSystem } from '../model/say.ts';
import type { StudyReport } from '../report/studyReport.ts';
import type { Pool } from '../workers/studies/pool.ts';

export type Options = Readonly<Record<string, string>>;

/** One study as the terminal knows it. */
export interface StudyKind {
  /** For the help. */
  readonly says: string;
  readonly options: Options;
  /** @returns why it cannot be asked, where that is a text */
  readonly run: (
    pool: Pool,
    design: Design,
    options: Options,
    system: UnitSystem,
    /** A further design file; `null` where it cannot be had, the reason told. */
    open: (file: string) => Promise<Design | null>,
  ) => Promise<StudyReport | string>;
}
