import type { TextTable } from '../../report/types.ts';
import { DataTable } from './DataTable.tsx';
import styles from './TableTwin.module.css';

/** The same numbers as the picture above it, to read, copy or listen to. */
export function TableTwin({ table }: { readonly table: TextTable }) {
  if (table.rows.length === 0) return null;
  return (
    <details className={styles.twin}>
      <summary>Table: {table.caption}</summary>
      <DataTable table={table} />
    </details>
  );
}
