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
      <Title />
      <Variant />
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
        <Button onClick={askWhatToPrint}>Print…</Button>
      </div>
    </header>
  );
}

/** Shown only where there is one: most boxes have no variants. */
function Variant() {
  const { text, problem } = useField('variant');
  const { setText, endEdit } = useActions();
  if (text === '') return null;
  return (
    <input
      className={`${styles.title} ${styles.variant}`}
      aria-label="Variant"
      aria-invalid={problem !== null}
      title={problem ?? 'Variant'}
      autoComplete="off"
      value={text}
      onBlur={endEdit}
      onChange={(event) => setText('variant', event.currentTarget.value)}
    />
  );
}

function Title() {
  const { text, problem } = useField('title');
  const { setText, endEdit } = useActions();
  return (
    <input
      className={styles.title}
      aria-label="Title of the design"
      aria-invalid={problem !== null}
      title={problem ?? 'Title of the design'}
      autoComplete="off"
      value={text}
      onBlur={endEdit}
      onChange={(event) => setText('title', event.currentTarget.value)}
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
