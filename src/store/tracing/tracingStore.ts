import { createStore, type StoreApi } from 'zustand/vanilla';
import type { UnitSystem } from '../../model/say.ts';
import {
  type AxisId,
  emptyTracing,
  type Place,
  readMark,
  type Tracing,
} from '../../model/tracing/tracing.ts';
import type { StepId } from '../../report/tracing/tracingSteps.ts';
import { nameOf, placeOf, type Target } from './target.ts';
import { movedTo, withAxis, withMark, withoutTarget } from './tracingEdits.ts';

/** A picture as it came, with its size as the browser shows it. */
export interface Picture {
  readonly blob: Blob;
  readonly name: string;
  /** The fan or loss that it was laid out for, by its name then. */
  readonly owner: string;
  readonly width: number;
  readonly height: number;
}

interface Moment {
  readonly picture: Picture | null;
  readonly tracing: Tracing;
}

export interface TracingState extends Moment {
  readonly system: UnitSystem;
  readonly step: StepId;
  readonly selected: Target | null;
  /** Where a key puts the next mark or point. */
  readonly cross: Place;
  /** What an undo brings back, the oldest first. */
  readonly past: readonly Moment[];
  /** The edit that is still going on: a drag, a run of arrow keys, the letters of one value. */
  readonly open: string | null;
}

export interface TracingActions {
  /** Another picture takes the place of this one; what was laid upon that goes with it. */
  readonly setPicture: (picture: Picture) => void;
  readonly goTo: (step: StepId) => void;
  readonly select: (target: Target | null) => void;
  /** Puts here what the step asks for: the mark that is missing, or a point. @returns what was put or moved */
  readonly put: (at: Place) => Target | null;
  readonly move: (target: Target, at: Place) => void;
  /** By whole pixels; without a target it is the cross that moves. */
  readonly nudge: (target: Target | null, right: number, down: number) => void;
  /** What comes next is another edit. */
  readonly endEdit: () => void;
  readonly setText: (axis: AxisId, index: 0 | 1, text: string) => void;
  readonly setUnit: (axis: AxisId, unit: string) => void;
  readonly setLog: (axis: AxisId, log: boolean) => void;
  readonly remove: (target: Target) => void;
  /** @param keys what each point is put in order by */
  readonly sort: (keys: readonly number[]) => void;
  readonly undo: () => void;
}

export type TracingStore = StoreApi<TracingState & TracingActions>;

const longest = 200;

/** What is laid upon one picture, step by step; knows of no screen. */
export function createTracingStore(
  system: UnitSystem,
  kept: Moment | null = null,
  blank: Tracing = emptyTracing(system),
): TracingStore {
  return createStore<TracingState & TracingActions>()((set, get) => {
    /** @param open a name that further changes of the same edit share, `null` for one that is done at once */
    const edit = (tracing: Tracing, open: string | null, more: Partial<TracingState> = {}) => {
      const state = get();
      const goesOn = open !== null && open === state.open;
      const past = goesOn ? state.past : [...state.past, momentOf(state)].slice(-longest);
      set({ tracing, past, open, ...more });
    };
    const inside = ({ x, y }: Place): Place => {
      const { picture } = get();
      return { x: clamp(x, picture?.width ?? 0), y: clamp(y, picture?.height ?? 0) };
    };
    const putMark = (axis: AxisId, at: Place): Target | null => {
      const { tracing, selected } = get();
      const missing = tracing.axes[axis].marks.findIndex((mark) => mark.at === null);
      const chosen = selected?.kind === 'mark' && selected.axis === axis ? selected.index : null;
      const index = missing === -1 ? chosen : missing === 0 ? 0 : 1;
      if (index === null) return null;
      const target: Target = { kind: 'mark', axis, index };
      edit(movedTo(tracing, target, at), null, { selected: target, cross: at });
      return target;
    };
    const putPoint = (at: Place): Target => {
      const { tracing, selected } = get();
      const index = selected?.kind === 'point' ? selected.index + 1 : tracing.points.length;
      const target: Target = { kind: 'point', index };
      edit({ ...tracing, points: tracing.points.toSpliced(index, 0, at) }, null, {
        selected: target,
        cross: at,
      });
      return target;
    };

    return {
      picture: kept?.picture ?? null,
      tracing: kept?.tracing ?? blank,
      system,
      step: firstStep(kept),
      selected: null,
      cross: middleOf(kept?.picture ?? null),
      past: [],
      open: null,

      setPicture: (picture) => {
        const { tracing } = get();
        edit(
          emptyTracing(system, { flow: tracing.axes.flow.unit, pressure: tracing.axes.pressure.unit }),
          null,
          {
            picture,
            step: 'flow',
            selected: null,
            cross: middleOf(picture),
          },
        );
      },
      goTo: (step) => set({ step, open: null, selected: null }),
      select: (selected) => set({ selected, open: null }),
      put: (place) => {
        const { picture, step } = get();
        if (picture === null) return null;
        const at = inside(place);
        if (step === 'flow' || step === 'pressure') return putMark(step, at);
        return step === 'points' ? putPoint(at) : null;
      },
      move: (target, at) => edit(movedTo(get().tracing, target, inside(at)), `move ${nameOf(target)}`),
      nudge: (target, right, down) => {
        const { tracing, cross } = get();
        const from = target === null ? cross : placeOf(tracing, target);
        if (from === null) return;
        const to = inside({ x: from.x + right, y: from.y + down });
        if (target === null) set({ cross: to });
        else edit(movedTo(tracing, target, to), `nudge ${nameOf(target)}`);
      },
      endEdit: () => set({ open: null }),
      setText: (axis, index, text) => {
        const { tracing } = get();
        const typed = withMark(tracing, axis, index, { ...tracing.axes[axis].marks[index], text });
        const read = readMark(typed.axes[axis], axis, index, system);
        const unit = read.ok ? read.unit : typed.axes[axis].unit;
        edit(withAxis(typed, axis, { unit }), `type ${axis} ${index}`);
      },
      setUnit: (axis, unit) => edit(withAxis(get().tracing, axis, { unit }), null),
      setLog: (axis, log) => edit(withAxis(get().tracing, axis, { log }), null),
      remove: (target) => {
        const { tracing, selected } = get();
        const before = target.kind === 'point' && target.index > 0 ? target.index - 1 : null;
        const next: Target | null = before === null ? null : { kind: 'point', index: before };
        edit(withoutTarget(tracing, target), null, { selected: target.kind === 'point' ? next : selected });
      },
      sort: (keys) => {
        const { tracing } = get();
        const order = [...tracing.points.keys()].sort((a, b) => (keys[a] ?? 0) - (keys[b] ?? 0));
        const points = order.flatMap((at) => tracing.points[at] ?? []);
        edit({ ...tracing, points }, null, { selected: null });
      },
      undo: () => {
        const { past } = get();
        const last = past.at(-1);
        if (last !== undefined) set({ ...last, past: past.slice(0, -1), open: null, selected: null });
      },
    };
  });
}

/** Where somebody comes back to it: what is not yet there. */
function firstStep(kept: Moment | null): StepId {
  if (kept === null || kept.picture === null) return 'picture';
  const { flow, pressure } = kept.tracing.axes;
  if (flow.marks.some(({ at }) => at === null)) return 'flow';
  return pressure.marks.some(({ at }) => at === null) ? 'pressure' : 'points';
}

function momentOf({ picture, tracing }: Moment): Moment {
  return { picture, tracing };
}

function middleOf(picture: Picture | null): Place {
  return { x: Math.round((picture?.width ?? 0) / 2), y: Math.round((picture?.height ?? 0) / 2) };
}

function clamp(value: number, most: number): number {
  return Math.min(most, Math.max(0, value));
}
