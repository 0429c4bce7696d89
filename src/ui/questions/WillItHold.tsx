import type { Headline } from '../../report/types.ts';
import { LimitList } from './LimitList.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import styles from './WillItHold.module.css';

interface Props {
  readonly report: Headline;
  /** Take the places for what comes a moment later: above the limits and under them. */
  readonly onPlaceAbove?: (place: HTMLElement | null) => void;
  readonly onPlace: (place: HTMLElement | null) => void;
}

export function WillItHold({ report: { verdict, ratings, limits }, onPlaceAbove, onPlace }: Props) {
  return (
    <QuestionSection id="will-it-hold" sentence={verdict.sentence} number={verdict.number}>
      {verdict.reasons.length > 0 && (
        <ul className={styles.reasons}>
          {verdict.reasons.map((reason) => (
            <li key={reason}>{reason}</li>
          ))}
        </ul>
      )}
      <div ref={onPlaceAbove} className={styles.above} />
      {limits.length > 0 && <LimitList limits={limits} />}
      {ratings && <p className={styles.ratings}>{ratings.sentence}</p>}
      <div ref={onPlace} />
    </QuestionSection>
  );
}
