import type { FieldView } from '../../store/fieldView.ts';
import { useActions } from '../bench/DesignContext.ts';

/** What a frame needs to offer the way back to a field's default. */
export function useReset({ path, byDefault }: FieldView) {
  const { resetField } = useActions();
  return { byDefault, onReset: () => resetField(path) };
}
