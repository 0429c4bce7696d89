import type { InputGroup } from '../../report/types.ts';
import { most } from './measures.ts';

export function SheetInputs({
  inputs,
  remark,
}: {
  readonly inputs: readonly InputGroup[];
  readonly remark: string;
}) {
  return (
    <section className="sheet-inputs">
      <h2>Inputs that matter</h2>
      <div>
        {inputs.map((group) => (
          <dl key={group.title}>
            <dt>{group.title}</dt>
            <dd>
              {group.rows.slice(0, most.parts).map((row) => (
                <p key={row.label}>
                  <i>{row.label}</i> {row.value}
                </p>
              ))}
              {group.rows.length > most.parts && <p>and {group.rows.length - most.parts} more</p>}
            </dd>
          </dl>
        ))}
        {remark !== '' && (
          <dl>
            <dt>Remark</dt>
            <dd>{remark}</dd>
          </dl>
        )}
      </div>
    </section>
  );
}
