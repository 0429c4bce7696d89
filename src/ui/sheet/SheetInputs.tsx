import type { Report } from '../../report/types.ts';
import { most } from './measures.ts';

/** Without what drawing and limits say; all of it where there is no answer and so no limit. */
export function SheetInputs({ report: { inputs, verdict } }: { readonly report: Report }) {
  const groups = inputs
    .map((group) => ({
      ...group,
      rows: group.rows.filter(({ elsewhere }) => !elsewhere || verdict.state === 'noAnswer'),
    }))
    .filter(({ rows }) => rows.length > 0);
  return (
    <section className="sheet-inputs sheet-part">
      <h2>Inputs that matter</h2>
      <div>
        {groups.map((group) => (
          <p key={group.title}>
            <b>{group.title}</b>
            {group.rows.slice(0, most.parts + 1).map((row) => (
              <span key={row.label}>
                <i>{row.label}</i> {row.value}
              </span>
            ))}
            {group.rows.length > most.parts + 1 && (
              <span>
                and {group.rows.length - most.parts - 1} more on the screen and on the page of all inputs
              </span>
            )}
          </p>
        ))}
      </div>
    </section>
  );
}
