import type { EvidenceChoice, EvidenceReport } from '../../../report/evidence/evidenceReport.ts';
import { FieldFrame, noteIdOf } from '../../kit/FieldFrame.tsx';
import { Select } from '../../kit/Select.tsx';
import styles from './Evidence.module.css';

interface Props {
  readonly report: EvidenceReport;
  readonly choice: EvidenceChoice;
  readonly onChoose: (choice: EvidenceChoice) => void;
}

/** Which kind of check, and of what. */
export function EvidenceForm({ report, choice, onChoose }: Props) {
  const options = (list: readonly { readonly id: string; readonly label: string }[]) =>
    list.map(({ id, label }) => ({ value: id, label }));
  return (
    <fieldset className={styles.form}>
      <legend className="unseen">Which checks to show</legend>
      <FieldFrame
        id="evidence-kind"
        label="Kind"
        help="What the published number is: a reading, a table, another computation."
        problem={null}
        shape="tall"
      >
        <Select
          id="evidence-kind"
          value={choice.kind}
          aria-describedby={noteIdOf('evidence-kind')}
          options={options(report.kinds)}
          onChoose={(id) => {
            const kind = report.kinds.find((each) => each.id === id);
            if (kind) onChoose({ ...choice, kind: kind.id });
          }}
        />
      </FieldFrame>
      <FieldFrame
        id="evidence-subject"
        label="Subject"
        help="Part of the computation that is checked."
        problem={null}
        shape="tall"
      >
        <Select
          id="evidence-subject"
          value={choice.subject}
          aria-describedby={noteIdOf('evidence-subject')}
          options={options(report.subjects)}
          onChoose={(subject) => onChoose({ ...choice, subject })}
        />
      </FieldFrame>
    </fieldset>
  );
}
