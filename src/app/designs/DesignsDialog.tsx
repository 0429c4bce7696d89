import { useCallback, useEffect, useState } from 'react';
import { examples } from '../../model/examples/examples.ts';
import { fullTitle, nextVariant } from '../../model/fullTitle.ts';
import type { Keeper } from '../../store/keeping/keeper.ts';
import type { KeptDesign } from '../../store/keeping/record.ts';
import { useDesign } from '../../ui/bench/DesignContext.ts';
import { Button } from '../../ui/kit/Button.tsx';
import { Dialog } from '../../ui/kit/Dialog.tsx';
import { saveDesign } from '../files.ts';
import type { Designs } from '../useDesigns.ts';
import styles from './designs.module.css';

const moment = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

/** All designs of this browser, and how others come in and go out. */
export function DesignsDialog({ designs, keeper }: { readonly designs: Designs; readonly keeper: Keeper }) {
  const { show } = designs;
  const kept = useKept(keeper);
  const identity = useDesign((state) => state.identity);
  const family = kept.records.filter((record) => record.family === identity?.family);
  return (
    <Dialog title="Designs" onClose={() => show(null)}>
      <div className={styles.parts}>
        <section aria-labelledby="bench-design">
          <h3 id="bench-design">On the bench</h3>
          <p className={styles.small}>
            {kept.failed
              ? 'This browser keeps nothing here. Save the design as a file.'
              : 'What you type is kept in this browser, and nowhere else.'}
          </p>
          <div className={styles.choices}>
            <Button
              onClick={() => {
                void keeper.makeVariant(nextVariant(family.map(({ content }) => content.design.variant)));
                show(null);
              }}
            >
              Go on as a variant
            </Button>
            <Button onClick={designs.save}>Save as a file</Button>
            <Button onClick={() => show('share')}>Make a link…</Button>
          </div>
        </section>
        <section aria-labelledby="new-design">
          <h3 id="new-design">Begin with</h3>
          <ul className={styles.list}>
            <li>
              <Button onClick={designs.fresh}>A new design</Button>
            </li>
            <li>
              <Button onClick={() => document.getElementById('design-file')?.click()}>
                A design from a file…
              </Button>
            </li>
            {examples.map(({ id, design }) => (
              <li key={id}>
                <Button className={styles.wide ?? ''} onClick={() => designs.example(design)}>
                  Example: {design.title}
                </Button>
              </li>
            ))}
          </ul>
        </section>
        {kept.records.length > 0 && (
          <section aria-labelledby="kept-designs">
            <h3 id="kept-designs">Kept in this browser</h3>
            <ul className={styles.list}>
              {kept.records.map((record) => (
                <KeptRow key={record.id} record={record} designs={designs} onRemove={kept.remove} />
              ))}
            </ul>
          </section>
        )}
        {kept.removed && (
          <p role="status" className={styles.removed}>
            “{kept.removed.content.design.title}” is removed.
            <Button onClick={kept.putBack}>Put it back</Button>
          </p>
        )}
      </div>
    </Dialog>
  );
}

/** The list as it stands, and the one last taken out of it. */
function useKept(keeper: Keeper) {
  const [records, setRecords] = useState<readonly KeptDesign[]>([]);
  const [removed, setRemoved] = useState<KeptDesign | null>(null);
  const [failed, setFailed] = useState(false);
  const read = useCallback(async () => {
    try {
      await keeper.flush();
      setRecords(await keeper.list());
      setFailed(false);
    } catch {
      setFailed(true);
    }
  }, [keeper]);
  useEffect(() => void read(), [read]);
  return {
    records,
    removed,
    failed,
    remove: async (record: KeptDesign) => {
      await keeper.remove(record);
      setRemoved(record);
      await read();
    },
    putBack: async () => {
      if (removed !== null) await keeper.putBack(removed);
      setRemoved(null);
      await read();
    },
  };
}

interface RowProps {
  readonly record: KeptDesign;
  readonly designs: Designs;
  readonly onRemove: (record: KeptDesign) => Promise<void>;
}

function KeptRow({ record, designs, onRemove }: RowProps) {
  const here = useDesign(({ identity }) => identity?.id === record.id);
  const { design, solvedDesign } = record.content;
  const name = nameOf(record);
  return (
    <li className={styles.kept}>
      <Button
        className={styles.wide ?? ''}
        aria-current={here}
        onClick={() => (here ? designs.show(null) : designs.kept(record.id, fullTitle(design)))}
      >
        {name}
      </Button>
      <span className={styles.small}>
        {here ? 'on the bench' : `kept ${moment.format(new Date(record.savedAt))}`}
      </span>
      <Button aria-label={`Save ${name} as a file`} onClick={() => saveDesign(solvedDesign)}>
        File
      </Button>
      <Button aria-label={`Remove ${name}`} onClick={() => void onRemove(record)}>
        Remove
      </Button>
    </li>
  );
}

function nameOf({ content: { design } }: KeptDesign): string {
  return [fullTitle(design), design.revision && `rev. ${design.revision}`].filter(Boolean).join(', ');
}
