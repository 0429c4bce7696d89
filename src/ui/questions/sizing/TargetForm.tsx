import { useContext } from 'react';
import type { AskedSizing, SizingForm } from '../../../io/sizingForm.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';
import { FieldFrame, noteIdOf } from '../../kit/FieldFrame.tsx';
import { Select } from '../../kit/Select.tsx';
import { SizingBox } from './SizingBox.tsx';
import styles from './TargetForm.module.css';
import type { Whereto } from './useTake.ts';

interface Props {
  readonly form: SizingForm;
  readonly asked: AskedSizing;
  readonly whereto: Whereto;
  readonly onForm: (form: SizingForm) => void;
  readonly onWhereto: (whereto: Whereto) => void;
}

const asks: readonly { readonly value: SizingForm['ask']; readonly label: string }[] = [
  { value: 'spare', label: 'The spare wanted on every rise' },
  { value: 'everyLimit', label: 'Kelvin below every limit' },
  { value: 'film', label: 'Kelvin below the film’s limit' },
];

/** What is asked of the box, and where a result goes that somebody takes. */
export function TargetForm({ form, asked, whereto, onForm, onWhereto }: Props) {
  const isKept = useContext(KeeperContext) !== null;
  return (
    <fieldset className={styles.form}>
      <legend className="unseen">What is asked</legend>
      <FieldFrame
        id="size-ask"
        label="Target"
        help={
          form.ask === 'spare'
            ? 'As “Spare wanted” of this design says.'
            : 'In pulses, the film at their end counts.'
        }
        problem={null}
        shape="tall"
      >
        <Select
          id="size-ask"
          value={form.ask}
          aria-describedby={noteIdOf('size-ask')}
          options={asks}
          onChoose={(ask) => onForm({ ...form, ask: ask as SizingForm['ask'] })}
        />
      </FieldFrame>
      {form.ask !== 'spare' && (
        <SizingBox
          id="size-margin"
          label="Margin"
          help="To be left at the hottest."
          box={asked.boxes.margin}
          onText={(margin) => onForm({ ...form, texts: { ...form.texts, margin } })}
        />
      )}
      {isKept && (
        <FieldFrame
          id="size-whereto"
          label="What is taken goes"
          help="A variant takes the design’s place on the bench; the design stays kept."
          problem={null}
          shape="tall"
        >
          <Select
            id="size-whereto"
            value={whereto}
            aria-describedby={noteIdOf('size-whereto')}
            options={[
              { value: 'design', label: 'into this design' },
              { value: 'variant', label: 'into a new variant of it' },
            ]}
            onChoose={(chosen) => onWhereto(chosen as Whereto)}
          />
        </FieldFrame>
      )}
    </fieldset>
  );
}
