import { useState } from 'react';
import type { TextTable } from '../../../report/types.ts';
import { DataTable } from '../DataTable.tsx';
import styles from './Evidence.module.css';

interface Props {
  readonly summary: string;
  readonly remark?: string | null;
  readonly table: TextTable;
}

/** A long table that is made only when somebody opens it. */
export function OpenedTable({ summary, remark = null, table }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details
      className={styles.section}
      open={isOpen}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>{summary}</summary>
      {isOpen && (
        <>
          {remark !== null && <p>{remark}</p>}
          <DataTable table={table} />
        </>
      )}
    </details>
  );
}
