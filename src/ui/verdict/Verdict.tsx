import type { Headline } from '../../report/types.ts';
import { Glyph } from '../kit/Glyph.tsx';
import styles from './Verdict.module.css';

interface Props {
  readonly report: Headline;
  readonly stale: boolean;
  /** Takes the place for what studies add later. */
  readonly onPlace: (place: HTMLElement | null) => void;
}

/** The answer in a word and a sentence; on a phone it stays in view while the rest scrolls. */
export function Verdict({ report, stale, onPlace }: Props) {
  const { state, word, sentence } = report.verdict;
  return (
    <div className={styles.verdict} data-state={state} data-stale={stale}>
      <span className={styles.mark}>
        <Glyph name={state} />
      </span>
      <p>
        <b>{word}</b>
        {/* The sentence begins with the word, which stands above it already. */}
        <span className={styles.sentence}>{sentence.slice(word.length).replace(/^:\s*/, '')}</span>
        <span ref={onPlace} className={styles.also} />
      </p>
    </div>
  );
}
