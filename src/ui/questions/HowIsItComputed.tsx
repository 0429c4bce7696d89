import { assumptionsTable, inputsTable, sourcesTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import { TakeAway } from '../takeOut/TakeAway.tsx';
import { DataTable } from './DataTable.tsx';
import styles from './HowIsItComputed.module.css';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';

export function HowIsItComputed({ report }: { readonly report: Report }) {
  const { methods, sources, verdict, computed } = report;
  return (
    <QuestionSection id="how-is-it-computed" sentence={methods.length > 0 ? computed : verdict.sentence}>
      <ol className={styles.methods}>
        {methods.map((method) => (
          <li key={method.id}>
            <details>
              <summary>
                {method.title} <small>[{method.footnote}]</small>
              </summary>
              <dl>
                <dt>Equation</dt>
                <dd className={styles.equation}>{method.equation}</dd>
                <dt>Source</dt>
                <dd>{method.source}</dd>
                <dt>Range</dt>
                <dd>{method.range}</dd>
                <dt>Here</dt>
                <dd>{method.here}</dd>
                <dt>Scatter, 1σ</dt>
                <dd>{method.scatter}</dd>
              </dl>
            </details>
          </li>
        ))}
      </ol>
      {sources.length > 0 && (
        <details className={styles.sources}>
          <summary>Sources by number</summary>
          <DataTable table={sourcesTable(report)} />
        </details>
      )}
      <TableTwin table={assumptionsTable(report)} />
      <TableTwin table={inputsTable(report)} />
      <TakeAway />
      <h3>Cautions</h3>
      <ul className={styles.cautions}>
        {report.cautions.map(({ key, title, text }) => (
          <li key={key}>
            <b>{title}.</b> {text}
          </li>
        ))}
      </ul>
    </QuestionSection>
  );
}
