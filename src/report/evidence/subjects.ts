import { capital } from '../words.ts';

interface SubjectWords {
  readonly title: string;
  /** What its checks can and cannot show, where that is not plain. */
  readonly remark?: string;
  /** Its numbers are kept by the program, not computed by a method. */
  readonly kept?: true;
}

/** Subjects of the checks, in the order of an answer's way; what the program holds ready comes last. */
const subjects: Readonly<Record<string, SubjectWords>> = {
  air: { title: 'Air' },
  fan: { title: 'Fans' },
  losses: { title: 'Losses of the air’s way' },
  channel: { title: 'Channels between fins' },
  bank: {
    title: 'Sinks in a bank',
    remark: 'The whole bank stands beside other computations only: no bank of such sinks has been measured.',
  },
  fins: { title: 'Fins' },
  sizing: { title: 'Best fins' },
  resistor: { title: 'Resistors and load' },
  conduction: { title: 'Conduction and bonds' },
  freeConvection: { title: 'Free convection' },
  radiation: { title: 'Radiation' },
  transient: { title: 'Over time' },
  sound: { title: 'Sound' },
  uncertainty: { title: 'Parts that vary' },
  studies: { title: 'Gaps worth cutting' },
  fit: { title: 'Fit to readings' },
  shelf: {
    title: 'The shelf',
    kept: true,
    remark:
      'A value of the shelf stands beside the table it was taken from, or beside another: the first shows that it was copied rightly, the second how far tables differ.',
  },
  units: {
    title: 'Units',
    kept: true,
    remark: 'Factors of units are definitions: these checks find slips of the pen.',
  },
};

/** Subjects that are there, in that order; one without words of its own comes last under the name of its folder. */
export function subjectsOf(present: ReadonlySet<string>): (SubjectWords & { readonly id: string })[] {
  const known = Object.keys(subjects).filter((id) => present.has(id));
  const others = [...present].filter((id) => !(id in subjects)).sort();
  return [...known, ...others].map((id) => ({ id, ...(subjects[id] ?? { title: capital(id) }) }));
}

/** Whether the numbers of a subject come out of a method, not off a list that the program keeps. */
export const isOfMethods = (subject: string): boolean => subjects[subject]?.kept !== true;
