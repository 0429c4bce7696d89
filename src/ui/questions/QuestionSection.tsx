import type { ReactNode } from 'react';
import type { KeyNumber } from '../../report/types.ts';
import { Told } from '../working/Told.tsx';
import styles from './QuestionSection.module.css';
import { type QuestionId, questionTitles } from './questionTitles.ts';

interface Props {
  readonly id: QuestionId;
  readonly sentence: string;
  /** The number in it whose working can be opened. */
  readonly number?: KeyNumber | null;
  readonly children?: ReactNode;
}

/** One question: its heading, its answer in a sentence, then whatever shows it. */
export function QuestionSection({ id, sentence, number = null, children }: Props) {
  return (
    <section id={id} className={styles.question} aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`} tabIndex={-1}>
        {questionTitles[id]}
      </h2>
      <p className={styles.sentence}>
        <Told sentence={sentence} number={number} />
      </p>
      {children}
    </section>
  );
}
