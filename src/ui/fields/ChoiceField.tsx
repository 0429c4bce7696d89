import type { ChoiceField as Choice } from '../../model/fields.ts';
import { labelOfOption } from '../../model/options.ts';
import type { FieldView } from '../../store/fieldView.ts';
import { useActions } from '../bench/DesignContext.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { Select } from '../kit/Select.tsx';
import { fieldId } from './fieldId.ts';
import { useReset } from './useReset.ts';

export function ChoiceField({ view, field }: { readonly view: FieldView; readonly field: Choice }) {
  const { path, label, help, value, problem } = view;
  const { setValue } = useActions();
  const id = fieldId(path);
  return (
    <FieldFrame id={id} label={label} help={help} problem={problem} shape="tall" {...useReset(view)}>
      <Select
        id={id}
        value={String(value)}
        aria-describedby={noteIdOf(id)}
        options={field.options.map((option) => ({ value: option, label: labelOfOption(option) }))}
        onChoose={(option) => setValue(path, option)}
      />
    </FieldFrame>
  );
}
