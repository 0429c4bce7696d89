import type { Note, Severity } from '../core/card.ts';
import { cards } from '../core/cards.ts';
import type { NoteRow, UnitSystem } from './types.ts';
import { variableText, variableWords } from './variables.ts';
import { severityWords } from './wording.ts';
import { capital, listed } from './words.ts';

const rank: Readonly<Record<Severity, number>> = { beyond: 0, caution: 1, info: 2 };

/** Notes in words, gravest first, alike ones merged over the places they stand at. */
export function noteRows(notes: readonly Note[], system: UnitSystem): NoteRow[] {
  const groups = new Map<string, Note[]>();
  for (const note of notes) {
    const key = [note.code, note.card ?? '', note.variable ?? ''].join('|');
    groups.set(key, [...(groups.get(key) ?? []), note]);
  }
  return [...groups.values()]
    .map((group): NoteRow => {
      const worst = group[0] as Note;
      return {
        code: worst.code,
        severity: worst.severity,
        severityWord: severityWords[worst.severity],
        text: wordNotes(group, system),
      };
    })
    .sort((a, b) => rank[a.severity] - rank[b.severity]);
}

interface NoteFacts {
  readonly note: Note;
  readonly places: string;
  readonly value: string;
  readonly low: string;
  readonly high: string;
  readonly variable: string;
  readonly method: string;
}

/** Every code of a note, worded once. */
export const noteWords: Readonly<Record<string, (facts: NoteFacts) => string>> = {
  outsideRange: ({ note, variable, value, low, high, method, places }) => {
    const below = typeof note.low === 'number' && (note.value ?? 0) < note.low;
    const edge = below ? `below ${low}` : `above ${high}`;
    return `${capital(variable)} ${value} is ${edge}, the end of the range of “${method}”${places}. The answer stands, but nothing proves it there.`;
  },
};

function wordNotes(group: readonly Note[], system: UnitSystem): string {
  const note = group[0] as Note;
  const say = noteWords[note.code];
  if (say === undefined) throw new Error(`note ${note.code} has no words`);
  const { variable = '' } = note;
  const show = (value: number | null | undefined) =>
    typeof value === 'number' ? variableText(variable, value, system) : '';
  return say({
    note,
    places: placesOf(group),
    value: show(note.value),
    low: show(note.low),
    high: show(note.high),
    variable: variableWords(variable),
    method: cards.find((card) => card.id === note.card)?.title ?? note.card ?? '',
  });
}

/** " at sink 3", " at sinks 1 to 9 and elsewhere": the places in words, few of them by name. */
function placesOf(group: readonly Note[]): string {
  const places = [...new Set(group.flatMap((note) => (note.where === undefined ? [] : [note.where])))];
  if (places.length === 0) return '';
  return places.length <= 3
    ? ` at ${listed(places)}`
    : ` at ${places[0]} and ${places.length - 1} more places`;
}
