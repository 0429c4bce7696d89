import { useMemo } from 'react';
import type { AskedSizing, SizingBoxKey, SizingForm } from '../../../io/sizingForm.ts';
import type { Design } from '../../../model/design.ts';
import type { UnitSystem } from '../../../model/say.ts';
import type { FinRow } from '../../../report/sizing/finRows.ts';
import { type FinSizingReport, type Front, finSizingReport } from '../../../report/sizing/finSizingReport.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { LinesChart } from '../../charts/lazy.ts';
import { Button } from '../../kit/Button.tsx';
import { StudyRun } from '../../studies/StudyRun.tsx';
import { useComplete } from '../../studies/useComplete.ts';
import { useStudy } from '../../studies/useStudy.ts';
import columns from '../columns.module.css';
import { SizingBox } from './SizingBox.tsx';
import { TakeTable } from './TakeTable.tsx';
import styles from './TargetForm.module.css';
import type { Edit } from './useTake.ts';

interface Props {
  readonly design: Design;
  readonly system: UnitSystem;
  readonly form: SizingForm;
  readonly asked: AskedSizing;
  readonly onForm: (form: SizingForm) => void;
  readonly onTake: (edit: Edit, name: string) => void;
}

const boxes: readonly { readonly key: SizingBoxKey; readonly label: string; readonly help: string }[] = [
  { key: 'cutters', label: 'End mills at hand', help: 'Diameters; no slot is narrower than its end mill.' },
  { key: 'depth', label: 'Slot depth at most', help: 'In diameters of the end mill.' },
  { key: 'thicknesses', label: 'Fin thicknesses', help: 'A list to choose from.' },
  { key: 'thinnest', label: 'Thinnest fin', help: 'What the mill leaves standing.' },
  { key: 'least', label: 'Fin height at least', help: '' },
  { key: 'most', label: 'Fin height at most', help: 'The box has to hold the row, too.' },
  { key: 'sound', label: 'Sound at most', help: 'Empty: no bound.' },
  { key: 'pressure', label: 'Fan pressure at most', help: 'Empty: no bound.' },
];

/** The workshop's rules, the search, the best fins, and what less sound or pressure costs. */
export function BestFins({ design, system, form, asked, onForm, onTake }: Props) {
  const { target, rules } = asked;
  const question = useMemo(
    () => (target && rules ? { design, target, rules } : null),
    [design, target, rules],
  );
  const study = useStudy('finSizing', question, { live: false });
  const held = useComplete(study);
  const report = useMemo(() => held && finSizingReport(held.question, held.result, system), [held, system]);
  return (
    <section className={styles.part} aria-labelledby="best-fins">
      <h3 id="best-fins">Which fins, by the workshop’s rules?</h3>
      <fieldset className={styles.rules}>
        <legend className="unseen">Rules</legend>
        {boxes.map(({ key, label, help }) => (
          <SizingBox
            key={key}
            id={`size-${key}`}
            label={label}
            help={help}
            box={asked.boxes[key]}
            onText={(text) => onForm({ ...form, texts: { ...form.texts, [key]: text } })}
          />
        ))}
      </fieldset>
      <StudyRun
        does="Find the best fins"
        study={study}
        hindered={question === null ? 'Something above does not read.' : null}
      />
      {report && <Found report={report} fresh={study.fresh} running={study.running} onTake={onTake} />}
    </section>
  );
}

interface FoundProps {
  readonly report: FinSizingReport;
  readonly fresh: boolean;
  readonly running: boolean;
  readonly onTake: Props['onTake'];
}

function Found({ report, fresh, running, onTake }: FoundProps) {
  const { sentence, remarks, pick, byCount, overSound, overPressure, tables } = report;
  const [byCountTable] = tables;
  return (
    <div aria-busy={!fresh}>
      {!fresh && !running && <p>What follows is of the design or the rules before.</p>}
      <p>{sentence}</p>
      {pick && (
        <Button
          aria-label={`Take the best: ${pick.edit}, ${pick.supply}`}
          aria-disabled={!fresh}
          onClick={() => fresh && onTake(pick.values, pick.edit)}
        >
          Take the best
        </Button>
      )}
      {byCountTable && (
        <TakeTable table={byCountTable} takes={takesOf(byCount)} fresh={fresh} onTake={onTake} />
      )}
      <div className={columns.columns}>
        {[overSound, overPressure].map((front) => (
          <FrontFigure key={front.table.id} front={front} fresh={fresh} onTake={onTake} />
        ))}
      </div>
      {remarks.map((remark) => (
        <p key={remark} className={styles.remark}>
          {remark}
        </p>
      ))}
    </div>
  );
}

function FrontFigure({
  front,
  fresh,
  onTake,
}: Pick<FoundProps, 'fresh' | 'onTake'> & { readonly front: Front }) {
  const { chart, rows, table } = front;
  if (chart === null) return null;
  return (
    <div>
      <ChartFrame caption={chart.caption} table={table}>
        <LinesChart chart={chart} />
      </ChartFrame>
      <details className={styles.twin}>
        <summary>Table: {table.caption}</summary>
        <TakeTable table={table} takes={takesOf(rows)} fresh={fresh} onTake={onTake} bare />
      </details>
    </div>
  );
}

function takesOf(rows: readonly FinRow[]) {
  return rows.map(({ key, values, edit }) => ({ key, edit: values, name: edit }));
}
