import { useState } from 'react';
import type { TextTable } from '../../report/types.ts';
import { DataTable } from './DataTable.tsx';
import styles from './TableTwin.module.css';

/** The same numbers as the picture above it, to read, copy or listen to. */
export function TableTwin({ table, open = false }: { readonly table: TextTable; readonly open?: boolean }) {
  const [isOpen, setOpen] = useState(open);
  if (table.rows.length === 0) return null;
  return (
    <details
      className={styles.twin}
      open={open}
      onToggle={({ currentTarget }) => setOpen(currentTarget.open)}
    >
      <summary>Table: {table.caption}</summary>
      <DataTable table={table} isOpen={isOpen} />
    </details>
  );
}
