import { bankGeometry } from '../core/system/geometry.ts';
import type { Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { fieldAt } from '../model/fields.ts';
import { getAt } from '../model/path.ts';
import { toCore } from '../model/toCore.ts';
import type { Measure, PartId } from './drawing.ts';
import { quantity } from './format.ts';
import type { UnitSystem } from './types.ts';
import { capital, temperature } from './words.ts';

/** What a measure is called, and where it is from. */
export type Words = {
  readonly id: string;
  readonly part: PartId;
  /** Short name for the sheet; the field's own where left out. */
  readonly label?: string;
  /** Short name for the screen; the last word of the field's own where left out. */
  readonly short?: string;
  readonly toScale?: boolean;
} & (
  | { readonly path: string }
  | { readonly path: null; readonly label: string; readonly value_m: number; readonly digits?: number }
);

/** A measure in the words of its field, so that drawing and panel call it the same. */
export function wordMeasure(words: Words, design: Design, system: UnitSystem): Measure {
  const { id, part, path, toScale = true } = words;
  const field = path === null ? null : fieldAt(path);
  const full = field?.label ?? words.label ?? '';
  const value = words.path === null ? words.value_m : (getAt(design, words.path) as number);
  const digits = words.path === null ? words.digits : undefined;
  const text = quantity(value, field?.kind === 'quantity' ? field.dimension : 'length', system, digits);
  const low = `${full.charAt(0).toLowerCase()}${full.slice(1)}`;
  const short = words.short ?? low.split(' ').at(-1) ?? low;
  const said = `${full}, ${text}`;
  // What is written on a button has to be in its name, or nobody can call it by voice.
  const isSaid = said.toLowerCase().endsWith(`${short}, ${text}`.toLowerCase());
  return {
    id,
    part,
    path,
    label: words.label ?? low,
    text,
    words: [`${low} ${text}`, `${short} ${text}`, text],
    name: `${isSaid ? said : `${capital(short)} ${text}, ${low}`}${toScale ? '' : ', not to scale'}`,
    toScale,
  };
}

export interface StackMeasures {
  readonly plate: Measure;
  readonly bond: Measure;
  readonly chip: Measure;
  /** `null` where no tabs hold the second face. */
  readonly tab: Measure | null;
  readonly fin: Measure;
  readonly finGap: Measure;
  /** Shares of one fin's pitch. */
  readonly finShare: number;
}

/** What is too small for both views: the layers at one resistor, and the fins behind its plates. */
export function stackMeasures(design: Design, position: number, system: UnitSystem): StackMeasures {
  const { sink, secondFace, positions } = design;
  const { finGap_m } = bankGeometry(toCore(design));
  const word = (words: Words) => wordMeasure(words, design, system);
  const part = positions[position]?.part ?? 0;
  return {
    // Plates are cut short in the detail, and fins drawn as close as they fit.
    plate: word({ id: 'plate', part: 'sinks', path: 'sink.plate_m', short: 'plate', toScale: false }),
    bond: word({ id: 'bond', part: 'bonds', path: 'bond.filament_m', short: 'bond' }),
    chip: word({ id: 'chip', part: 'resistors', path: `parts[${part}].thickness_m`, short: 'chip' }),
    tab:
      secondFace.way === 'tabs'
        ? word({ id: 'tab', part: 'secondFace', path: 'secondFace.tabThickness_m', short: 'tab' })
        : null,
    fin: word({ id: 'fin', part: 'sinks', path: 'sink.finThickness_m', short: 'fin', toScale: false }),
    finGap: word({
      id: 'finGap',
      part: 'sinks',
      path: null,
      label: 'fin gap',
      short: 'fin gap',
      value_m: finGap_m,
      digits: 3,
      toScale: false,
    }),
    finShare: sink.finThickness_m / (sink.finThickness_m + finGap_m),
  };
}

/** Temperatures that stand on the drawing besides those of films and sinks, from the fullest words to the shortest. */
export interface DrawingWarmth {
  readonly airIn: readonly string[];
  readonly exhaust: readonly string[];
  readonly outside: readonly string[];
}

export function drawingWarmth({ heat }: Solved, system: UnitSystem): DrawingWarmth {
  const say = (T_K: number, ...names: string[]) => names.map((name) => `${name}${temperature(T_K, system)}`);
  const outside_K = Math.max(...heat.sinks.map((sink) => sink?.outside_K ?? heat.room_K));
  return {
    airIn: say(heat.entering_K, 'air in ', 'air ', ''),
    exhaust: say(heat.exhaust_K, 'exhaust ', 'out '),
    outside: say(outside_K, 'sheet outside ', 'sheet '),
  };
}
