import type { Note, NoteCode, Severity } from '../core/card.ts';
import { systemCards } from '../core/system/methods.ts';
import { plain } from './format.ts';
import type { NoteRow, UnitSystem } from './types.ts';
import { variableText, variableWords } from './variables.ts';
import { severityWords } from './wording.ts';
import { capital, listed, percent, plain0 } from './words.ts';

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
  readonly below: boolean;
  /** " at sink 3", or empty. */
  readonly places: string;
  readonly value: string;
  readonly low: string;
  readonly high: string;
  readonly variable: string;
  readonly method: string;
}

/** Every code of a note, worded once. */
export const noteWords: Readonly<Record<NoteCode, (facts: NoteFacts) => string>> = {
  outsideRange: ({ below, variable, value, low, high, method, places }) =>
    `${capital(variable)} ${value} is ${below ? `below ${low}` : `above ${high}`}, the end of the range of “${method}”${places}. The answer stands, but nothing proves it there.`,
  transition: ({ value, low, high, places }) =>
    `The flow${places} is neither laminar nor turbulent (Reynolds number ${value}, between ${low} and ${high}): heat and pressure may be a fifth off either way.`,
  unevenFeed: ({ value, high }) =>
    `The air races along the plenum: its dynamic head is ${value} of the pressure across slot and bank, more than ${high}. The sinks nearest the fan get less air than stated; a higher plenum helps.`,
  bondAboveGlass: ({ value, high, places }) =>
    `The bond${places} reaches ${value}, above the adhesive’s glass transition of ${high}: it softens there and creeps under load.`,
  aboveRating: ({ value, high, places }) =>
    `The part${places} carries ${value}, above the ${high} on its data sheet; only its film temperature was judged.`,
  severalPoints: ({ value }) =>
    `The fan can settle at ${value} points on its curve; the one with most flow is used. After a start or a knock it may run at another.`,
  secondOpinion: ({ value, method, places }) =>
    `An independent relation, “${method}”, gives ${value} times the conductance${places}: take the temperatures there with a grain of salt.`,
  tightGap: ({ value, low }) =>
    `A gap of ${value} round the row is tighter than hand work keeps; below ${low} the parts may touch, and small deviations change the flow much.`,
  fanObstructed: ({ value, low }) =>
    `A wall stands ${value} from the fan, closer than its diameter of ${low}: it may lose a tenth to three tenths of its flow, which is not counted.`,
  fanBackwards: ({ places }) =>
    `The other fans push air back through ${places.replace(/^ at /, '') || 'a fan'}: it does harm. Take it out, or match it to them.`,
  bridgedDip: () =>
    'A fan whose curve has a dip stands beside one of another kind: they may hunt between them. The most flow at each pressure was taken.',
  airRunsBack: ({ value }) =>
    `Air runs backwards through a passage, ${value} of the flow: it comes from above, warm already, and cools nothing.`,
  lyingFins: ({ value }) =>
    `With the fins ${value} from upright there is hardly a draught along them; the room’s own air across them is not counted.`,
};

/** How the variables of notes are shown where their name does not tell. */
const shownAs: Readonly<Record<string, (value: number) => string>> = {
  feedRatio: percent,
  share: percent,
  ratio: (value) => plain(value, 2),
  count: plain0,
};

function wordNotes(group: readonly Note[], system: UnitSystem): string {
  const note = farthest(group);
  const { variable = '' } = note;
  const show = (value: number | null | undefined) => {
    if (typeof value !== 'number') return '';
    return shownAs[variable]?.(value) ?? variableText(variable, value, system);
  };
  return noteWords[note.code]({
    below: isBelow(note),
    places: placesOf(group),
    value: show(note.value),
    low: show(note.low),
    high: show(note.high),
    variable: variableWords(variable),
    method: systemCards.find((card) => card.id === note.card)?.title ?? note.card ?? '',
  });
}

function isBelow({ value, low }: Note): boolean {
  return typeof low === 'number' && typeof value === 'number' && value < low;
}

/** Of several alike, the one farthest out speaks for all. */
function farthest(group: readonly Note[]): Note {
  return group.reduce((worst, note) => {
    const [a, b] = [note.value ?? 0, worst.value ?? 0];
    return (isBelow(note) ? a < b : a > b) ? note : worst;
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
