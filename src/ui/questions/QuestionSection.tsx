import type { ReactNode } from 'react';
import styles from './QuestionSection.module.css';

interface Props {
  readonly id: string;
  readonly question: string;
  readonly sentence: string;
  readonly children?: ReactNode;
}

/** One question: its heading, its answer in a sentence, then whatever shows it. */
export function QuestionSection({ id, question, sentence, children }: Props) {
  return (
    <section id={id} className={styles.question} aria-labelledby={`${id}-heading`}>
      <h2 id={`${id}-heading`}>{question}</h2>
      <p className={styles.sentence}>{sentence}</p>
      {children}
    </section>
  );
}
