import type { FieldView } from '../../store/fieldView.ts';
import { useActions } from '../bench/DesignContext.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { Switch } from '../kit/Switch.tsx';
import { fieldId } from './fieldId.ts';

export function FlagField({ view }: { readonly view: FieldView }) {
  const { path, label, help, value, problem } = view;
  const { setValue } = useActions();
  const id = fieldId(path);
  return (
    <FieldFrame id={id} label={label} help={help} problem={problem} shape="tick">
      <Switch
        id={id}
        checked={value === true}
        describedBy={noteIdOf(id)}
        onSwitch={(checked) => setValue(path, checked)}
      />
    </FieldFrame>
  );
}
