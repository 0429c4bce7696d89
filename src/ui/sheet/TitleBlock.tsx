import type { TitleBlock as Title } from '../../report/types.ts';

interface Props {
  readonly title: Title;
  readonly scale: string;
  readonly page: number;
  readonly pages: number;
}

/** As on any drawing: what it is, which state of it, how large, and who looked it over. */
export function TitleBlock({ title, scale, page, pages }: Props) {
  const cells: readonly (readonly [key: string, head: string, text: string])[] = [
    ['title', 'Title', title.title],
    ['revision', 'Revision', title.revision],
    ['date', 'Date', title.date],
    ['scale', 'Scale', scale],
    ['checksum', 'Checksum', title.checksum],
    ['page', 'Page', `${page} of ${pages}`],
    ['sign', 'Checked by, name and date', ''],
  ];
  return (
    <footer>
      <dl className="sheet-title">
        {cells.map(([key, head, text]) => (
          <div key={key} className={key}>
            <dt>{head}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </footer>
  );
}
