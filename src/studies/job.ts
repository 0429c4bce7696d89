/**
 * A study cut into pieces. Any piece may be computed anywhere and in any order, so that the answer is the same to the last
 * bit whatever number of workers took part. Questions, pieces and results are plain data: they cross between workers.
 */
export interface Job<Question, Piece, Result> {
  /** How many pieces the question has, one at least. */
  readonly count: (question: Question) => number;
  /** One piece, a fraction of a second at most: progress is told, and a new question is taken up, between pieces. */
  readonly piece: (question: Question, index: number) => Piece;
  /** From the first pieces, in order: all of them give the answer, fewer a running estimate. */
  readonly gather: (question: Question, pieces: readonly Piece[]) => Result;
}

/** The whole study here and now, one piece after the other. */
export function runJob<Question, Piece, Result>(
  job: Job<Question, Piece, Result>,
  question: Question,
  onProgress?: (done: number, of: number) => void,
): Result {
  const count = job.count(question);
  const pieces: Piece[] = [];
  for (let index = 0; index < count; index++) {
    pieces.push(job.piece(question, index));
    onProgress?.(index + 1, count);
  }
  return job.gather(question, pieces);
}
