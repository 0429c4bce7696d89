import { plain } from '../../../report/format.ts';
import { type AskedTolerance, drawChoices, type ToleranceForm } from '../../../store/toleranceForm.ts';
import { FieldFrame, noteIdOf } from '../../kit/FieldFrame.tsx';
import { Select } from '../../kit/Select.tsx';
import { Switch } from '../../kit/Switch.tsx';
import { TextBox } from '../../kit/TextBox.tsx';
import styles from './WhatIfPartsVary.module.css';

interface Props {
  readonly form: ToleranceForm;
  readonly asked: AskedTolerance;
  readonly onForm: (form: ToleranceForm) => void;
}

/** How many boxes to draw, and how they belong together. */
export function DrawForm({ form, asked, onForm }: Props) {
  return (
    <fieldset className={styles.form}>
      <legend className="unseen">What to draw</legend>
      <FieldFrame
        id="tolerance-draws"
        label="Boxes to draw"
        help="More of them, more digits: four times as many halve what is left open."
        problem={null}
        shape="tall"
      >
        <Select
          id="tolerance-draws"
          value={String(form.draws)}
          aria-describedby={noteIdOf('tolerance-draws')}
          options={drawChoices.map((draws) => ({ value: String(draws), label: plain(draws, 6) }))}
          onChoose={(draws) => onForm({ ...form, draws: Number(draws) })}
        />
      </FieldFrame>
      <Whole
        id="tolerance-boxes"
        label="Built together"
        help="Boxes of one batch share their stuff; also the chance that all of them hold."
        box={asked.boxes}
        onText={(boxes) => onForm({ ...form, boxes })}
      />
      <Whole
        id="tolerance-seed"
        label="Seed"
        help="The same one draws the same boxes."
        box={asked.seed}
        onText={(seed) => onForm({ ...form, seed })}
      />
      <FieldFrame
        id="tolerance-methods"
        label="Methods scatter too"
        help="Each by its card; off takes them as exact."
        problem={null}
        shape="tick"
      >
        <Switch
          id="tolerance-methods"
          checked={form.methods}
          describedBy={noteIdOf('tolerance-methods')}
          onSwitch={(methods) => onForm({ ...form, methods })}
        />
      </FieldFrame>
    </fieldset>
  );
}

function Whole({
  id,
  label,
  help,
  box: { text, problem },
  onText,
}: {
  readonly id: string;
  readonly label: string;
  readonly help: string;
  readonly box: AskedTolerance['seed'];
  readonly onText: (text: string) => void;
}) {
  return (
    <FieldFrame id={id} label={label} help={help} problem={problem} shape="tall">
      <TextBox
        id={id}
        inputMode="numeric"
        aria-describedby={noteIdOf(id)}
        value={text}
        invalid={problem !== null}
        onText={onText}
      />
    </FieldFrame>
  );
}
