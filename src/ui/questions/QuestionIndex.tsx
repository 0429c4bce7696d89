import styles from './QuestionIndex.module.css';
import { goToQuestion, type QuestionId, questionTitles } from './questionTitles.ts';

const below = (Object.keys(questionTitles) as QuestionId[]).filter((id) => id !== 'will-it-hold');

/** Ways to the questions below: the page is long, and whoever knows what to ask need not scroll for it. */
export function QuestionIndex() {
  return (
    <nav aria-label="Questions" className={styles.index}>
      <ul>
        {below.map((id) => (
          <li key={id}>
            <a
              href={`#${id}`}
              onClick={(event) => {
                // The address keeps to itself: what stands behind its # is a design.
                event.preventDefault();
                goToQuestion(id);
              }}
            >
              {questionTitles[id]}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}
