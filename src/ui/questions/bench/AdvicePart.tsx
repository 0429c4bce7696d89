import { useMemo, useState } from 'react';
import type { Design } from '../../../model/design.ts';
import type { UnitSystem } from '../../../model/say.ts';
import { adviceReport } from '../../../report/bench/adviceReport.ts';
import { benchPractice } from '../../../report/bench/benchPractice.ts';
import type { Unknown } from '../../../studies/bench/types.ts';
import { useComplete } from '../../studies/useComplete.ts';
import { useStudy } from '../../studies/useStudy.ts';
import { Remarks } from '../gaps/Remarks.tsx';
import { StudyProgress } from '../gaps/StudyProgress.tsx';
import { TableTwin } from '../TableTwin.tsx';
import styles from './Bench.module.css';

interface Props {
  readonly design: Design;
  readonly system: UnitSystem;
  readonly chosen: readonly Unknown[];
}

/** What to read, where and for how long; worked out only for whoever looks. */
export function AdvicePart({ design, system, chosen }: Props) {
  const [isOpen, setOpen] = useState(false);
  return (
    <details className={styles.advice} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>What to read next, where to put the thermocouple, how long to wait</summary>
      {isOpen && <Advice design={design} system={system} chosen={chosen} />}
    </details>
  );
}

/** The table of how to go about it stands below as text. */
const asText = 'benchPractice';

function Advice({ design, system, chosen }: Props) {
  const question = useMemo(
    () => (chosen.length > 0 ? { design, unknowns: chosen } : { design }),
    [design, chosen],
  );
  const study = useStudy('benchAdvice', question, { live: true, at: 'does-the-bench-agree' });
  const held = useComplete(study);
  const report = useMemo(() => held && adviceReport(held.question, held.result, system), [held, system]);
  return (
    <>
      <StudyProgress study={study} isAsked />
      {report ? (
        <div aria-busy={!study.fresh}>
          <p className={styles.sentence}>{report.sentence}</p>
          {report.tables
            .filter(({ id }) => id !== asText)
            .map((table, at) => (
              <TableTwin key={table.id} table={table} open={at === 0} />
            ))}
          <Remarks remarks={report.remarks} />
        </div>
      ) : (
        <p className={styles.sentence}>What would tell most is being worked out …</p>
      )}
      <section aria-labelledby="bench-practice" className={styles.practice}>
        <h3 id="bench-practice">How to go about it: common practice, no source</h3>
        {benchPractice.map(({ title, lines }) => (
          <div key={title}>
            <h4>{title}</h4>
            <ul>
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </div>
        ))}
      </section>
    </>
  );
}
