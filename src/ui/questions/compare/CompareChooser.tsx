import { use } from 'react';
import { fullTitle } from '../../../model/fullTitle.ts';
import { letterOf } from '../../../report/compare/compareReport.ts';
import type { KeptDesign, Unread } from '../../../store/keeping/record.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import { KeeperContext } from '../../bench/KeeperContext.ts';
import { Button } from '../../kit/Button.tsx';
import styles from './CompareChooser.module.css';
import type { Chosen } from './useCompared.ts';

interface Props {
  readonly compared: Chosen;
  readonly unread: readonly Unread[];
}

/** Which designs stand side by side; each can be put on the bench from here. */
export function CompareChooser({ compared: { others, chosen, isFull, toggle }, unread }: Props) {
  const kept = use(KeeperContext);
  const isWrong = useDesign(({ problems }) => problems.length > 0);
  const bench = useDesign(({ solvedDesign }) => fullTitle(solvedDesign));
  return (
    <fieldset className={styles.chooser}>
      <legend>Side by side, six at most</legend>
      <ul>
        <li>
          <label>
            <input type="checkbox" checked disabled />
            <b className={styles.letter}>{letterOf(0)}</b> {bench}
          </label>
          <small>{isWrong ? 'on the bench, as it last went together' : 'on the bench'}</small>
        </li>
        {others.map((record) => {
          const at = chosen.indexOf(record);
          return (
            <li key={record.id}>
              <label>
                <input
                  type="checkbox"
                  checked={at >= 0}
                  disabled={at < 0 && isFull}
                  onChange={() => toggle(record.id)}
                />
                <b className={styles.letter}>{at < 0 ? '' : letterOf(at + 1)}</b> {nameOf(record)}
              </label>
              <small>{isAsTyped(record) ? '' : 'as it last went together'}</small>
              <Button
                aria-label={`Open ${nameOf(record)}`}
                onClick={() => kept?.open(record.id, nameOf(record))}
              >
                Open
              </Button>
            </li>
          );
        })}
        {unread.map(({ title, reason }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: what cannot be read has no name of its own.
          <li key={i}>
            <span>
              {title === '' ? 'A kept design' : `“${title}”`} cannot be read. <small>{reason}</small>
            </span>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

function nameOf({ content }: KeptDesign): string {
  return fullTitle(content.solvedDesign);
}

/** Where something typed is wrong, what is compared is the state before. */
function isAsTyped({ content }: KeptDesign): boolean {
  return JSON.stringify(content.design) === JSON.stringify(content.solvedDesign);
}
