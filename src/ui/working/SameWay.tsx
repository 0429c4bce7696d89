import { goToQuestion, questionTitles } from '../questions/questionTitles.ts';
import styles from './SameWay.module.css';

const how = 'how-is-it-computed';

/** For rows of designs other than the one on the bench: their numbers are solved anew, but in no other way. */
export function SameWay() {
  return (
    <p className={styles.same}>
      Every row here was solved the same way as the answer on the bench:{' '}
      <a
        href={`#${how}`}
        onClick={(event) => {
          // The address keeps to itself: what stands behind its # is a design.
          event.preventDefault();
          goToQuestion(how);
        }}
      >
        {questionTitles[how]}
      </a>
    </p>
  );
}
