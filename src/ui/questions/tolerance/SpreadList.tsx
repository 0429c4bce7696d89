import { useMemo, useState } from 'react';
import type { Design } from '../../../model/design.ts';
import { furtherInputs, type SpreadRow, spreadRows } from '../../../report/tolerance/spreadRows.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { Select } from '../../kit/Select.tsx';
import { SpreadEditor } from './SpreadEditor.tsx';
import styles from './SpreadList.module.css';
import { useSetSpread } from './useSetSpread.ts';

/** Every input that varies in this design, to be changed; further ones may be added. */
export function SpreadList() {
  const design = useDesign((state) => state.design);
  const system = useDesign((state) => state.system);
  const rows = useMemo(() => spreadRows(design, system), [design, system]);
  const [isOpen, setOpen] = useState(false);
  const own = rows.filter(({ spread }) => spread.own).length;
  return (
    <details className={styles.list} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>
        Change what varies: {rows.length} inputs{own > 0 ? `, ${own} of them your own way` : ', as usual'}
      </summary>
      {/* Too many rows to draw them anew with every key while nobody looks. */}
      {isOpen && <Rows design={design} rows={rows} />}
    </details>
  );
}

function Rows({ design, rows }: { readonly design: Design; readonly rows: readonly SpreadRow[] }) {
  const further = useMemo(() => furtherInputs(design), [design]);
  const set = useSetSpread();
  return (
    <>
      <p className={styles.help}>
        A size is one standard deviation (σ) of a normal or skewed spread and half the width (±) of an even or
        triangular one, in the unit of the input or in % of its value. Usual spreads are ordinary ones to
        begin with: what you have measured is better.
      </p>
      <ul>
        {rows.map((row) => (
          <SpreadEditor key={row.spread.path} row={row} design={design} onSpread={set} />
        ))}
      </ul>
      <div className={styles.further}>
        <label htmlFor="spread-further">Let another input vary</label>
        <Select
          id="spread-further"
          value=""
          options={[
            { value: '', label: 'choose …' },
            ...further.map(({ path, label }) => ({ value: path, label })),
          ]}
          onChoose={(path) =>
            path !== '' && set({ path, kind: 'uniform', relative: true, size: 0.05 }, 'added')
          }
        />
      </div>
    </>
  );
}
