import type { CheckKind } from '../../core/card.ts';
import type { SourceKey } from '../../core/sources.ts';

/** From where the expected numbers of some checks are, and of what kind they are. */
export interface Provenance {
  /** Key into the bibliography, or the citation itself. */
  readonly source: SourceKey | (string & {});
  /** Place in the source, or the program that computed. */
  readonly where?: string;
  readonly kind: CheckKind;
  /** Ids of the cards whose methods are held against it. */
  readonly methods?: readonly string[];
}

/** One number of the program beside a published one. */
export interface CheckRecord {
  /** Title of the test, which names the case. */
  readonly test: string;
  readonly quantity: string;
  /** Absent where the quantity has none. */
  readonly unit?: string;
  /** The expected number with its digits as printed. */
  readonly printed: string;
  /** Six significant digits. */
  readonly computed: number;
  /** Computed less printed, over the printed value; over one where that is nil. To a hundred-millionth. */
  readonly deviation: number;
  /** How far it may be off either way, on the same basis; three digits. */
  readonly allowed: readonly [low: number, high: number];
  /** Why more, or less, than half a unit of the last digit. */
  readonly because?: string;
}

/** Checks of one file against one source. */
export interface CheckGroup extends Provenance {
  /** Subject: a folder of the published checks. */
  readonly subject: string;
  readonly file: string;
  readonly checks: readonly CheckRecord[];
}
