import { type AskedGaps, type GapForm as Form, gapLabel } from '../../../store/gapForm.ts';
import { type GapKey, gapKeys } from '../../../studies/gaps/gap.ts';
import { nudge } from '../../fields/nudge.ts';
import { FieldFrame, noteIdOf } from '../../kit/FieldFrame.tsx';
import { Select } from '../../kit/Select.tsx';
import { TextBox } from '../../kit/TextBox.tsx';
import styles from './GapForm.module.css';

interface Props {
  readonly form: Form;
  readonly asked: AskedGaps;
  readonly onForm: (form: Form) => void;
}

const alone = 'alone';
const valuesHelp =
  'A list such as 0, 1/32 in, 0.8 mm, 1.5 or a range such as 0 to 4 by 0.5. What you have now and no baffle always count too.';

/** Which gap, against which other, and the values to try. */
export function GapForm({ form, asked, onForm }: Props) {
  const { gap, against } = form;
  const chooseGap = (key: string) =>
    onForm({ ...form, gap: key as GapKey, against: key === against ? null : against });
  const typeValues = (key: GapKey) => (text: string) =>
    onForm({ ...form, values: { ...form.values, [key]: text } });
  return (
    <fieldset className={styles.form}>
      <legend className="unseen">What to compare</legend>
      <FieldFrame
        id="gap-which"
        label="Gap"
        help="Which gap of the baffle to cut one way or another."
        problem={null}
        shape="tall"
      >
        <Select
          id="gap-which"
          value={gap}
          aria-describedby={noteIdOf('gap-which')}
          options={gapKeys.map((key) => ({ value: key, label: gapLabel(key) }))}
          onChoose={chooseGap}
        />
      </FieldFrame>
      <Values
        id="gap-values"
        label={`Values, ${gapLabel(gap).toLowerCase()}`}
        box={asked.values}
        onText={typeValues(gap)}
      />
      <FieldFrame
        id="gap-against"
        label="Against"
        help="Another gap makes a map of the two."
        problem={null}
        shape="tall"
      >
        <Select
          id="gap-against"
          value={against ?? alone}
          aria-describedby={noteIdOf('gap-against')}
          options={[
            { value: alone, label: 'this gap alone' },
            ...gapKeys.filter((key) => key !== gap).map((key) => ({ value: key, label: gapLabel(key) })),
          ]}
          onChoose={(key) => onForm({ ...form, against: key === alone ? null : (key as GapKey) })}
        />
      </FieldFrame>
      {against !== null && asked.against !== null ? (
        <Values
          id="gap-against-values"
          label={`Values, ${gapLabel(against).toLowerCase()}`}
          box={asked.against}
          onText={typeValues(against)}
        />
      ) : (
        <FieldFrame
          id="gap-cut"
          label="A cut may miss by"
          unit={asked.cut.unit}
          help="Either way; drawn as a band."
          problem={asked.cut.problem}
          shape="tall"
        >
          <TextBox
            id="gap-cut"
            className={styles.short}
            aria-describedby={noteIdOf('gap-cut')}
            value={asked.cut.text}
            unit={asked.cut.unit}
            invalid={asked.cut.problem !== null}
            onText={(text) => onForm({ ...form, cuts: { ...form.cuts, [gap]: text } })}
            onKeyDown={(event) => {
              const way = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : null;
              const moved = way && nudge(asked.cut.text, way);
              if (!moved) return;
              event.preventDefault();
              onForm({ ...form, cuts: { ...form.cuts, [gap]: moved } });
            }}
          />
        </FieldFrame>
      )}
    </fieldset>
  );
}

function Values({
  id,
  label,
  box,
  onText,
}: {
  readonly id: string;
  readonly label: string;
  readonly box: AskedGaps['values'];
  readonly onText: (text: string) => void;
}) {
  return (
    <FieldFrame id={id} label={label} help={valuesHelp} problem={box.problem} shape="tall">
      <TextBox
        id={id}
        aria-describedby={noteIdOf(id)}
        value={box.text}
        invalid={box.problem !== null}
        onText={onText}
      />
    </FieldFrame>
  );
}
