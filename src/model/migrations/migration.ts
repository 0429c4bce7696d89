/** One step from a version of the file format to the next. A step never drops what somebody entered without a note. */
export interface Migration {
  readonly from: number;
  readonly to: number;
  readonly apply: (raw: Readonly<Record<string, unknown>>) => {
    readonly raw: Record<string, unknown>;
    readonly notes: readonly string[];
  };
}
