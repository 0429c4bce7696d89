import type { TextTable } from '../../report/types.ts';
import { DataTable } from './DataTable.tsx';
import styles from './TableTwin.module.css';

/** The same numbers as the picture above it, to read, copy or listen to. */
export function TableTwin({ table, open = false }: { readonly table: TextTable; readonly open?: boolean }) {
  if (table.rows.length === 0) return null;
  return (
    <details className={styles.twin} open={open}>
      <summary>Table: {table.caption}</summary>
      <DataTable table={table} />
    </details>
  );
}
