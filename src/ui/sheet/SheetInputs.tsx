import type { Report } from '../../report/types.ts';

interface Props {
  readonly report: Report;
  /** How many kinds of resistor there is room for. */
  readonly parts: number;
}

/** As many lines as a part has but for long lists. */
const mostLines = 6;

/** Without what drawing and limits say; all of it where there is no answer and so no limit. */
export function SheetInputs({ report: { inputs, verdict }, parts }: Props) {
  const groups = inputs.flatMap(({ part, title, rows }) => {
    const said = rows.filter(({ elsewhere }) => !elsewhere || verdict.state === 'noAnswer');
    const most = part === 'resistors' ? parts : mostLines;
    return said.length === 0 ? [] : [{ title, rows: said.slice(0, most), more: said.length - most }];
  });
  return (
    <section className="sheet-inputs sheet-part">
      <h2>Inputs that matter</h2>
      <div>
        {groups.map((group) => (
          <p key={group.title}>
            <b>{group.title}</b>
            {group.rows.map((row) => (
              <span key={row.label}>
                <i>{row.label}</i> {row.value}
              </span>
            ))}
            {group.more > 0 && <span>and {group.more} more on the pages of all inputs</span>}
          </p>
        ))}
      </div>
    </section>
  );
}
