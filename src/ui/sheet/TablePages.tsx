import type { Ref } from 'react';
import type { TextTable, TitleBlock } from '../../report/types.ts';
import type { LaidOut } from './layOut.ts';
import type { Slice } from './paginate.ts';
import { SheetTable } from './SheetTable.tsx';

interface GalleyProps {
  readonly tables: readonly TextTable[];
  readonly firstColumn: number | undefined;
  readonly galley: Ref<HTMLDivElement>;
}

/** All tables at full length: printed never, but measured, so that they can be broken into pages. */
export function Galley({ tables, firstColumn, galley }: GalleyProps) {
  return (
    <div className="sheet-galley sheet-further" ref={galley} aria-hidden="true">
      {tables.map((table) => (
        <SheetTable
          key={table.id}
          table={table}
          from={0}
          to={table.rows.length}
          widths={firstColumn === undefined ? [] : [firstColumn]}
        />
      ))}
    </div>
  );
}

interface Props {
  readonly label: string;
  readonly title: TitleBlock;
  readonly tables: readonly TextTable[];
  readonly laid: LaidOut;
  /** Number of the first page, and of all. */
  readonly first: number;
  readonly pages: number;
}

/** Tables on as many pages as they need, each page with its head. */
export function TablePages({ label, title, tables, laid, first, pages }: Props) {
  const slice = ({ table, from, to }: Slice) => {
    const whole = tables[table];
    return (
      whole && (
        <SheetTable key={whole.id} table={whole} from={from} to={to} widths={laid.widths[table] ?? []} />
      )
    );
  };
  return laid.pages.map((strips, p) => {
    const number = first + p;
    return (
      <section key={number} className="sheet-further" aria-label={`${label}, page ${number} of ${pages}`}>
        <PageHead label={label} title={title} number={number} pages={pages} />
        {strips.map((columns) => (
          <div key={`${columns[0]?.[0]?.table} ${columns[0]?.[0]?.from}`} className="strip">
            {columns.map((slices) => (
              <div key={`${slices[0]?.table} ${slices[0]?.from}`}>{slices.map(slice)}</div>
            ))}
          </div>
        ))}
      </section>
    );
  });
}

interface HeadProps {
  readonly label: string;
  readonly title: TitleBlock;
  readonly number: number;
  readonly pages: number;
}

/** On every page behind the summary: what it holds, of which design, and which page it is. */
export function PageHead({ label, title, number, pages }: HeadProps) {
  return (
    <header>
      <div>
        <h2>{label}</h2>
        <span>{title.invented}</span>
        <span>
          Page {number} of {pages}
        </span>
      </div>
      <div>
        <b>{title.title}</b>
        {title.revision !== '' && <span>Revision {title.revision}</span>}
        <span>Checksum {title.checksum}</span>
      </div>
      {title.stale !== '' && <p>{title.stale}</p>}
    </header>
  );
}
