import type { Design } from '../../model/design.ts';
import { getAt, type Path } from '../../model/path.ts';
import { sayInput } from '../../model/sayInput.ts';
import type { Change, ChangeKey } from '../../studies/changes/change.ts';
import type { UnitSystem } from '../types.ts';
import { listed, resistorName, watts } from '../words.ts';

/** What a change is in figures: "0.8 mm → 0.2 mm", "resistors 2, 4 and 6". */
export interface ChangeDetail {
  /** Both ends, or what it is about. */
  readonly text: string;
  /** The end it comes to, for the name of a variant. */
  readonly to: string;
}

export function changeDetail(design: Design, { key, values }: Change, system: UnitSystem): ChangeDetail {
  const special = details[key]?.(design, values, system);
  if (special !== undefined) return special;
  const path = Object.keys(values).find((at) => getAt(design, at) !== values[at]) ?? '';
  return fromTo(design, path, values, system);
}

function fromTo(design: Design, path: Path, values: Change['values'], system: UnitSystem): ChangeDetail {
  const say = (each: unknown) => sayInput(path, each, system, { parts: design.parts });
  const to = say(values[path]);
  return { text: `${say(getAt(design, path))} → ${to}`, to };
}

type Detail = (design: Design, values: Change['values'], system: UnitSystem) => ChangeDetail;

const details: Readonly<Partial<Record<ChangeKey, Detail>>> = {
  baffleFitted: both(() => 'fitted'),
  firstSink: both(() => 'added'),
  lastSink: both(() => 'added'),
  flipAlternate: turned,
  flipOutward: turned,
  flipHottest: turned,
  adhesiveBetter: adhesive('bond.sheetK_WPerMK'),
  adhesiveHotter: adhesive('bond.serviceLimit_K'),
  copper: (design, values, system) => ({ ...fromTo(design, 'sink.k_WPerMK', values, system), to: 'copper' }),
  spreadEvenly: both((_, values, system) => `${watts(Number(values['positions[0].power_W']), system)} each`),
  moveWatts: both((design, values, system) => {
    const [from = '', , to = ''] = Object.keys(values);
    const moved_W = Number(getAt(design, from)) - Number(values[from]);
    return `${watts(moved_W, system)} from ${resistorName(indexOf(from))} to ${resistorName(indexOf(to))}`;
  }),
  swapPlaces: both((_, values) => resistors(values)),
  lessLoad: both(() => '10\u202f% less'),
};

function both(say: (...given: Parameters<Detail>) => string): Detail {
  return (...given) => {
    const text = say(...given);
    return { text, to: text };
  };
}

/** Which one, and the figure it is taken for. */
function adhesive(path: Path): Detail {
  return (design, values, system) => {
    const to = String(values['bond.material']);
    return { text: `${to}: ${fromTo(design, path, values, system).text}`, to };
  };
}

/** A variant is named for the turn alone; its numbers would fill the name. */
function turned(_: Design, values: Change['values']): ChangeDetail {
  return { text: resistors(values), to: '' };
}

function resistors(values: Change['values']): string {
  const numbers = [...new Set(Object.keys(values).map(indexOf))].sort((a, b) => a - b).map((i) => `${i + 1}`);
  if (numbers.length === 1) return `resistor ${numbers[0]}`;
  return numbers.length > 8 ? `${numbers.length} resistors` : `resistors ${listed(numbers)}`;
}

function indexOf(path: Path): number {
  return Number(/\[(\d+)\]/.exec(path)?.[1] ?? 0);
}
