/** Every question of the page by the id of its section, in reading order. */
export const questionTitles = {
  'will-it-hold': 'Will it hold?',
  'what-to-change-first': 'What should be changed first?',
  'where-does-the-air-go': 'Where does the air go?',
  'where-do-the-kelvins-go': 'Where do the kelvins go?',
  'which-gap': 'Which gap?',
  'what-if-the-fan-stops': 'What if the fan stops?',
  'what-if-parts-vary': 'What if parts vary?',
  'what-size': 'What size do I need?',
  'does-the-bench-agree': 'Does the bench agree?',
  compare: 'Which of these designs?',
  'what-has-to-be-cut': 'What has to be cut?',
  'how-is-it-computed': 'How is it computed?',
  'what-is-it-checked-against': 'What is it checked against?',
} as const;

export type QuestionId = keyof typeof questionTitles;

/** Brings a question to the top of the window and the focus to its heading, so that Tab goes on from there. */
export function goToQuestion(id: QuestionId): void {
  const heading = document.getElementById(`${id}-heading`);
  heading?.scrollIntoView({ block: 'start' });
  heading?.focus({ preventScroll: true });
}
