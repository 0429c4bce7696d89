import { useRef } from 'react';
import { type ExampleId, examples } from '../model/examples/examples.ts';
import type { UnitSystem } from '../model/say.ts';
import { useActions, useDesign, useField } from '../ui/bench/DesignContext.ts';
import { Button } from '../ui/kit/Button.tsx';
import { Select } from '../ui/kit/Select.tsx';
import { askWhatToPrint } from '../ui/sheet/askWhatToPrint.ts';
import styles from './Header.module.css';
import type { DesignFiles } from './useDesignFiles.ts';

const systems: readonly { readonly system: UnitSystem; readonly label: string; readonly name: string }[] = [
  { system: 'metric', label: 'mm', name: 'Metric units' },
  { system: 'inch', label: 'in', name: 'Inch units' },
];

const chooser = [
  { value: '', label: 'Examples' },
  ...examples.map(({ id, design }) => ({ value: id, label: design.title })),
  { value: 'new', label: 'New design' },
];

export function Header({ files }: { readonly files: DesignFiles }) {
  const picker = useRef<HTMLInputElement>(null);
  return (
    <header className={styles.header}>
      <a className={styles.skip} href="#bench">
        Skip to the drawing
      </a>
      <h1 className={styles.name}>Throughfin</h1>
      <Title />
      <div className={styles.tools}>
        <Select
          className={styles.examples ?? ''}
          aria-label="Open an example or a new design"
          value=""
          options={chooser}
          onChoose={(id) => (id === 'new' ? files.fresh() : files.example(id as ExampleId))}
        />
        <Button onClick={() => picker.current?.click()}>Open…</Button>
        <input
          ref={picker}
          type="file"
          hidden
          accept=".json,application/json"
          aria-label="Design file"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            if (file) void files.open(file);
            // The same file may be chosen again after it was mended.
            currentTarget.value = '';
          }}
        />
        <Button onClick={files.save}>Save</Button>
        <Units />
        <Button onClick={askWhatToPrint}>Print…</Button>
      </div>
    </header>
  );
}

function Title() {
  const { text, problem } = useField('title');
  const { setText } = useActions();
  return (
    <input
      className={styles.title}
      aria-label="Title of the design"
      aria-invalid={problem !== null}
      title={problem ?? 'Title of the design'}
      autoComplete="off"
      value={text}
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
