import { useField } from '../bench/DesignContext.ts';
import { ChoiceField } from './ChoiceField.tsx';
import { FlagField } from './FlagField.tsx';
import { TypedField } from './TypedField.tsx';

interface Props {
  readonly path: string;
  /** Does not matter as the design stands; shown all the same while something is wrong with it. */
  readonly idle?: boolean;
}

/** Any input of the design, by its place. */
export function Field({ path, idle = false }: Props) {
  const view = useField(path);
  if (idle && view.problem === null) return null;
  switch (view.field.kind) {
    case 'choice':
      return <ChoiceField view={view} field={view.field} />;
    case 'flag':
      return <FlagField view={view} />;
    default:
      return <TypedField view={view} />;
  }
}
