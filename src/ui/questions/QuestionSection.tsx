import type { ReactNode } from 'react';
import styles from './QuestionSection.module.css';
import { type QuestionId, questionTitles } from './questionTitles.ts';

interface Props {
  readonly id: QuestionId;
  readonly sentence: string;
  readonly children?: ReactNode;
}

/** One question: its heading, its answer in a sentence, then whatever shows it. */
export function QuestionSection({ id, sentence, children }: Props) {
  return (
    <section id={id} className={styles.question} aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`} tabIndex={-1}>
        {questionTitles[id]}
      </h2>
      <p className={styles.sentence}>{sentence}</p>
      {children}
    </section>
  );
}
