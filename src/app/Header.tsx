import type { UnitSystem } from '../model/say.ts';
import { useActions, useDesign, useField } from '../ui/bench/DesignContext.ts';
import { Button } from '../ui/kit/Button.tsx';
import { askWhatToPrint } from '../ui/sheet/askWhatToPrint.ts';
import styles from './Header.module.css';
import { UndoRedo } from './UndoRedo.tsx';
import type { Designs } from './useDesigns.ts';

const systems: readonly { readonly system: UnitSystem; readonly label: string; readonly name: string }[] = [
  { system: 'metric', label: 'mm', name: 'Metric units' },
  { system: 'inch', label: 'in', name: 'Inch units' },
];

export function Header({ designs }: { readonly designs: Designs }) {
  return (
    <header className={styles.header}>
      <a className={styles.skip} href="#bench">
        Skip to the drawing
      </a>
      <h1 className={styles.name}>Throughfin</h1>
      <Name path="title" label="Title of the design" />
      <Name path="variant" label="Variant" />
      <div className={styles.tools}>
        <UndoRedo onSave={designs.save} />
        <Button onClick={() => designs.show('designs')}>Designs…</Button>
        <input
          id="design-file"
          type="file"
          hidden
          accept=".json,application/json"
          aria-label="Design file"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) void designs.open(file);
            // The same file may be chosen again after it was mended.
            currentTarget.value = '';
          }}
        />
        <Units />
        <Button onClick={() => askWhatToPrint()}>Print…</Button>
      </div>
    </header>
  );
}

interface NameProps {
  readonly path: 'title' | 'variant';
  readonly label: string;
}

/** A name of the design, edited where it stands; most boxes have no variants, and then there is no place for one. */
function Name({ path, label }: NameProps) {
  const { text, problem } = useField(path);
  const { setText, endEdit } = useActions();
  if (path === 'variant' && text === '') return null;
  return (
    <input
      className={styles[path]}
      aria-label={label}
      aria-invalid={problem !== null}
      title={problem ?? label}
      autoComplete="off"
      value={text}
      onBlur={endEdit}
      onChange={({ currentTarget }) => setText(path, currentTarget.value)}
    />
  );
}

function Units() {
  const shown = useDesign(({ system }) => system);
  const { setSystem } = useActions();
  return (
    <fieldset className={styles.units}>
      <legend className="unseen">Units shown</legend>
      {systems.map(({ system, label, name }) => (
        <label key={system}>
          <input
            type="radio"
            name="units"
            className="unseen"
            aria-label={name}
            checked={shown === system}
            onChange={() => setSystem(system)}
          />
          {label}
        </label>
      ))}
    </fieldset>
  );
}
