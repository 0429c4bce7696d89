import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Design } from '../model/design.ts';
import type { JobName, QuestionOf, ResultOf } from '../workers/studies/jobs.ts';
import type { Pool, RunOptions } from '../workers/studies/pool.ts';
import { isSameBox } from './isOfThisBox.ts';

/** Where one study stands. */
export interface StudyState<N extends JobName = JobName> {
  /** What is being computed; `null` where nothing is. */
  readonly asked: QuestionOf<N> | null;
  /** From 0 to 1. */
  readonly progress: number;
  /** The last answer, and the question it belongs to. While a run goes on, its estimate. */
  readonly result: ResultOf<N> | null;
  readonly answers: QuestionOf<N> | null;
  readonly isEstimate: boolean;
  /** Why the last run came to nothing, in the words of the exception. */
  readonly fault: string | null;
}

type States = { readonly [N in JobName]?: StudyState<N> };

/** How a study takes its turn among others. */
export type How = Pick<RunOptions<unknown>, 'rank' | 'aside'>;

export interface Studies {
  readonly store: StoreApi<States>;
  /** A run of the same study that still goes on is cancelled. */
  readonly start: <N extends JobName>(name: N, question: QuestionOf<N>, how?: How) => void;
  readonly cancel: (name: JobName) => void;
}

const nothing: StudyState<never> = {
  asked: null,
  progress: 0,
  result: null,
  answers: null,
  isEstimate: false,
  fault: null,
};

export function studyAt<N extends JobName>(states: States, name: N): StudyState<N> {
  return (states[name] as StudyState<N> | undefined) ?? (nothing as unknown as StudyState<N>);
}

/** Of a whole run. */
const leastProgress = 0.02;

/** The studies of one page: at most one run of each, its answer kept beside the question that it answers. */
export function createStudies(pool: Pool): Studies {
  const store = createStore<States>()(() => ({}));
  const cancels = new Map<JobName, () => void>();

  const put = <N extends JobName>(name: N, change: Partial<StudyState<N>>) =>
    store.setState((states) => ({ [name]: { ...studyAt(states, name), ...change } }));

  const cancel = (name: JobName) => {
    cancels.get(name)?.();
    if (cancels.delete(name)) put(name, { asked: null, progress: 0 });
  };

  const start = <N extends JobName>(name: N, question: QuestionOf<N>, how: How = {}) => {
    cancels.get(name)?.();
    put(name, { asked: question, progress: 0, fault: null } as Partial<StudyState<N>>);
    const answered = (result: ResultOf<N>, isEstimate: boolean) =>
      put(name, { result, answers: question, isEstimate } as Partial<StudyState<N>>);
    const running = pool.run(name, question, {
      ...how,
      onProgress: (done, of) => {
        // Hundreds of pieces come in a few seconds; nobody sees a hundredth more of a bar.
        const progress = done / of;
        if (done < of && progress - studyAt(store.getState(), name).progress < leastProgress) return;
        put(name, { progress } as Partial<StudyState<N>>);
      },
      onEstimate: (result) => answered(result, true),
    });
    cancels.set(name, running.cancel);
    const over = (change: Partial<StudyState<N>>) => {
      if (cancels.get(name) !== running.cancel) return;
      cancels.delete(name);
      put(name, { asked: null, progress: 0, ...change } as Partial<StudyState<N>>);
    };
    running.result.then(
      (result) => {
        if (cancels.get(name) === running.cancel) answered(result, false);
        over({});
      },
      (error: Error) => over({ fault: error.message }),
    );
  };

  return { store, start, cancel };
}

/** Studies of what was read, besides the box; the report prints every input. All others answer for the box alone. */
const readingReadings: readonly JobName[] = [
  'report',
  'benchCheck',
  'benchCourse',
  'benchFit',
  'benchAdvice',
];

/** Whether two questions of one study ask the same. Designs never change in place, so the same one is the same object. */
export function isSameQuestion(name: JobName, one: object | null, other: object | null): boolean {
  if (one === other) return true;
  if (one === null || other === null) return false;
  const [a, b] = [one, other] as [Record<string, unknown>, Record<string, unknown>];
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => {
    if (a[key] === b[key]) return true;
    if (key !== 'design') return JSON.stringify(a[key]) === JSON.stringify(b[key]);
    return !readingReadings.includes(name) && isSameBox(a[key] as Design, b[key] as Design);
  });
}
