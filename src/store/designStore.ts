import { createStore, type StoreApi } from 'zustand/vanilla';
import type { SystemInput } from '../core/system/input.ts';
import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { checkDesign } from '../model/check.ts';
import {
  anotherFan,
  defaultAt,
  defaultDesign,
  defaultExtra,
  defaultPart,
  defaultPosition,
} from '../model/defaults.ts';
import type { Design } from '../model/design.ts';
import { parseDesignText } from '../model/designText.ts';
import { eightResistors } from '../model/examples/eightResistors.ts';
import { placeName } from '../model/placeName.ts';
import { toCore } from '../model/toCore.ts';
import { wordProblem } from '../model/wordProblem.ts';
import { without, withoutRows } from './drafts.ts';
import { placed, typed, withoutPart } from './edits.ts';
import {
  close,
  type Edit,
  emptyHistory,
  type Moment,
  type Move,
  record,
  stepBack,
  stepForward,
} from './history.ts';
import { insertPoint, insertRow, removeRow, rowsAt } from './rows.ts';
import type { DesignActions, DesignState, Entered, Position, Refusal } from './state.ts';

export type DesignStore = StoreApi<DesignState & DesignActions>;

/**
 * One fan box under the pen: what is typed, what it says, what comes of it. Every change is read, checked and solved at
 * once; while anything is wrong the last answer stays and is marked stale.
 */
export function createDesignStore(
  first: Design = eightResistors,
  solve: (input: SystemInput) => Outcome = solveSystem,
): DesignStore {
  return createStore<DesignState & DesignActions>()((set, get) => {
    /** Takes what is entered and derives the rest. */
    const enter = (change: Partial<Entered>, more: Partial<DesignState> = {}) => {
      const state = get();
      const entered: Entered = {
        design: change.design ?? state.design,
        drafts: change.drafts ?? state.drafts,
        units: change.units ?? state.units,
        system: change.system ?? state.system,
      };
      const judged = judge(entered);
      const isNew = !judged.stale && entered.design !== state.solvedDesign;
      const answer = isNew ? { solvedDesign: entered.design, outcome: solve(toCore(entered.design)) } : {};
      set({ ...entered, ...judged, ...answer, ...more });
    };
    /** A change by the reader's own hand, which may be undone. */
    const edit = (change: Partial<Entered>, what: Edit, isTyping = false) => {
      const state = get();
      enter(change, { history: record(state.history, momentOf(state), what, isTyping) });
    };
    const attempt = (edited: Partial<Entered> | string, name: string): Refusal => {
      if (typeof edited === 'string') {
        set({ notice: edited });
        return edited;
      }
      edit(edited, { name, path: null });
      set({ notice: null });
      return null;
    };
    /** Another design takes the place of this one: nothing of this one can be undone in it. */
    const replace = (design: Design, more: Partial<DesignState> = {}) =>
      enter(
        { design, drafts: {}, units: withoutRows(get().units) },
        { notice: null, history: emptyHistory, identity: null, ...more },
      );
    const move = (to: Move | null) => {
      if (to === null) return null;
      const { step, history } = to;
      set({ ...step.moment, ...judge({ ...get(), ...step.moment }), history, notice: null });
      return step;
    };

    const actions: DesignActions = {
      setText: (path, text) => edit(typed(get(), path, text), { name: placeName(path), path }, true),
      setValue: (path, value) => edit(placed(get(), { [path]: value }), { name: placeName(path), path }),
      setMany: (values, name) => edit(placed(get(), values), { name, path: null }),
      resetField: (path) => {
        const state = get();
        const reset = placed(state, { [path]: defaultAt(path) });
        edit(
          { ...reset, units: without(state.units, path) },
          { name: `${placeName(path)}, back to its default`, path },
        );
      },
      endEdit: () => {
        const history = close(get().history);
        if (history !== get().history) set({ history });
      },
      undo: () => move(stepBack(get().history, momentOf(get()))),
      redo: () => move(stepForward(get().history, momentOf(get()))),
      addPosition: () => {
        const state = get();
        const rows = rowsAt<Position>(state, 'positions');
        return attempt(
          insertRow(state, 'positions', rows.length, rows.at(-1) ?? defaultPosition),
          'Resistor added',
        );
      },
      duplicatePosition: (index) => {
        const state = get();
        const row = rowsAt<Position>(state, 'positions')[index] ?? defaultPosition;
        return attempt(insertRow(state, 'positions', index + 1, row), `Resistor ${index + 1} duplicated`);
      },
      removePosition: (index) =>
        attempt(removeRow(get(), 'positions', index), `Resistor ${index + 1} removed`),
      setAllPositions: (change, name) => {
        const { design, drafts } = get();
        let kept = drafts;
        for (const row of design.positions.keys()) {
          for (const key of Object.keys(change)) kept = without(kept, `positions[${row}].${key}`);
        }
        const positions = design.positions.map((position) => ({ ...position, ...change }));
        edit({ design: { ...design, positions }, drafts: kept }, { name, path: null });
      },
      apply: (change, name) => attempt(change(get()), name),
      addPart: () => {
        const state = get();
        const rows = rowsAt<Design['parts'][number]>(state, 'parts');
        const name = `Part ${rows.length + 1}`;
        return attempt(
          insertRow(state, 'parts', rows.length, { ...(rows.at(-1) ?? defaultPart), name }),
          `${name} added`,
        );
      },
      removePart: (index) => attempt(withoutPart(get(), index), `Part ${index + 1} removed`),
      addPoint: (list, after) => attempt(insertPoint(get(), list, after), 'Point added'),
      removePoint: (list, index) => attempt(removeRow(get(), list, index), `Point ${index + 1} removed`),
      addFan: () => {
        const state = get();
        const { fan, moreFans } = state.design;
        return attempt(
          insertRow(state, 'moreFans', moreFans.length, anotherFan(fan, moreFans.length)),
          'Fan added',
        );
      },
      removeFan: (index) => {
        attempt(removeRow(get(), 'moreFans', index), `Fan ${index + 2} removed`);
      },
      addExtra: () => {
        const state = get();
        return attempt(
          insertRow(state, 'extras', state.design.extras.length, defaultExtra),
          'Extra loss added',
        );
      },
      removeExtra: (index) => {
        attempt(removeRow(get(), 'extras', index), `Extra loss ${index + 1} removed`);
      },
      openExample: (example) => replace(example),
      newDesign: () => replace(defaultDesign),
      openText: (text) => {
        const read = parseDesignText(text);
        if (read.ok) replace(read.design, { notice: read.notes.length > 0 ? read.notes.join(' ') : null });
        return read;
      },
      restore: ({ solvedDesign, identity, ...entered }) => {
        replace(solvedDesign, { identity });
        enter(entered);
      },
      setIdentity: (identity) => set({ identity }),
      setSystem: (system) => enter({ system }),
      selectPart: (selectedPart) => set({ selectedPart }),
      tell: (notice) => set({ notice }),
      setKeeping: (keeping) => set({ keeping }),
    };

    const start: Entered = { design: first, drafts: {}, units: {}, system: 'metric' };
    return {
      ...start,
      ...judge(start),
      solvedDesign: first,
      outcome: solve(toCore(first)),
      history: emptyHistory,
      selectedPart: 'baffle',
      notice: null,
      identity: null,
      keeping: 'unknown',
      ...actions,
    };
  });
}

function momentOf({ design, drafts, units, solvedDesign, outcome }: DesignState): Moment {
  return { design, drafts, units, solvedDesign, outcome };
}

type Judged = Pick<DesignState, 'clashes' | 'problems' | 'stale'>;

/** Texts that do not read come first; of several clashes at one field the first is told. */
function judge({ design, drafts, system }: Entered): Judged {
  const unread = Object.entries(drafts).flatMap(([path, { problem }]) =>
    problem === null ? [] : [{ path, reason: problem }],
  );
  const clashes: Record<string, string> = {};
  for (const found of checkDesign(design)) clashes[found.path] ??= wordProblem(found, system);
  const told = Object.entries(clashes).map(([path, reason]) => ({ path, reason }));
  const problems = [...unread, ...told.filter(({ path }) => (drafts[path]?.problem ?? null) === null)];
  return { clashes, problems, stale: problems.length > 0 };
}
