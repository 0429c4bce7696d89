import { useMemo } from 'react';
import type { Design } from '../../../model/design.ts';
import type { UnitSystem } from '../../../model/say.ts';
import { fanChoiceReport } from '../../../report/sizing/fanChoiceReport.ts';
import { placeFan } from '../../../store/placeFan.ts';
import type { Target } from '../../../studies/sizing/target.ts';
import { useComplete } from '../../studies/useComplete.ts';
import { useStudy } from '../../studies/useStudy.ts';
import { TakeTable } from './TakeTable.tsx';
import styles from './TargetForm.module.css';
import { useFansAtHand } from './useFansAtHand.ts';
import type { Edit } from './useTake.ts';

interface Props {
  readonly design: Design;
  readonly target: Target | null;
  readonly system: UnitSystem;
  readonly onTake: (edit: Edit, name: string) => void;
}

/** The smallest of the reader's own fans that reaches the target. */
export function SmallestFan({ design, target, system, onTake }: Props) {
  const fans = useFansAtHand(design);
  const question = useMemo(() => target && { design, target, fans }, [design, target, fans]);
  const study = useStudy('fanChoice', question, { live: true, rank: 2, at: 'what-size' });
  const held = useComplete(study);
  const report = useMemo(() => held && fanChoiceReport(held.question, held.result, system), [held, system]);
  return (
    <section className={styles.part} aria-labelledby="smallest-fan">
      <h3 id="smallest-fan">Which of your fans?</h3>
      {report && (
        <div aria-busy={!study.fresh}>
          <p>{report.sentence}</p>
          {report.tables[0] && (
            <TakeTable
              table={report.tables[0]}
              takes={report.rows.map(({ key, name, supply, fan, supply_V }) => ({
                key,
                edit: (entered) => placeFan(entered, fan, supply_V),
                name: `${name}, ${supply}`,
              }))}
              fresh={study.fresh}
              onTake={onTake}
            />
          )}
          {report.remarks.map((remark) => (
            <p key={remark} className={styles.remark}>
              {remark}
            </p>
          ))}
        </div>
      )}
    </section>
  );
}
