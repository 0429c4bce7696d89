import { CurveEditor } from './CurveEditor.tsx';
import { ExtrasEditor } from './ExtrasEditor.tsx';
import { FansEditor } from './FansEditor.tsx';
import { PartsEditor } from './PartsEditor.tsx';
import { PositionsEditor } from './PositionsEditor.tsx';

/** The tables that belong to a part: resistors and their kinds, fans and their curves, extra losses. */
export function ListEditors({ lists }: { readonly lists: readonly string[] }) {
  return (
    <>
      {lists.includes('positions') && <PositionsEditor />}
      {lists.includes('parts') && <PartsEditor />}
      {lists.includes('fan.curve') && (
        <CurveEditor
          list="fan.curve"
          heading="Fan curve"
          help="At rated voltage, from shut-off to free delivery. A table may be pasted into any cell."
        />
      )}
      {lists.includes('moreFans') && <FansEditor />}
      {lists.includes('extras') && <ExtrasEditor />}
    </>
  );
}
