import { createStore, type StoreApi } from 'zustand/vanilla';
import type { SystemInput } from '../core/system/input.ts';
import type { Outcome } from '../core/system/outcome.ts';
import { solveSystem } from '../core/system/solveSystem.ts';
import { checkDesign } from '../model/check.ts';
import { anotherFan, defaultDesign, defaultExtra, defaultPart, defaultPosition } from '../model/defaults.ts';
import type { Design } from '../model/design.ts';
import { parseDesignText } from '../model/designText.ts';
import { exampleById } from '../model/examples/examples.ts';
import { setAt } from '../model/path.ts';
import { toCore } from '../model/toCore.ts';
import { wordProblem } from '../model/wordProblem.ts';
import { without, withoutRows } from './drafts.ts';
import { readText } from './readText.ts';
import { accepts, insertPoint, insertRow, type Point, removeRow, rowsAt } from './rows.ts';
import type { DesignActions, DesignState, Refusal } from './state.ts';
import { rememberUnit, unitTyped } from './unitTyped.ts';

export type DesignStore = StoreApi<DesignState & DesignActions>;

type Entered = Pick<DesignState, 'design' | 'drafts' | 'units' | 'system'>;

/**
 * One fan box under the pen: what is typed, what it says, what comes of it. Every change is read, checked and solved at
 * once; while anything is wrong the last answer stays and is marked stale.
 */
export function createDesignStore(
  first: Design = exampleById('eightResistors'),
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
    const attempt = (edited: Partial<Entered> | string): Refusal => {
      if (typeof edited === 'string') {
        set({ notice: edited });
        return edited;
      }
      enter(edited, { notice: null });
      return null;
    };
    const replace = (design: Design, notice: string | null = null) =>
      enter({ design, drafts: {}, units: withoutRows(get().units) }, { notice });

    const actions: DesignActions = {
      setText: (path, text) => enter(typed(get(), path, text)),
      setValue: (path, value) => {
        if (!accepts(path, value)) throw new Error(`${path} cannot be ${String(value)}`);
        const { design, drafts } = get();
        enter({ design: setAt(design, path, value), drafts: without(drafts, path) });
      },
      setMany: (values) => {
        let { design, drafts } = get();
        for (const [path, value] of Object.entries(values)) {
          if (!accepts(path, value)) throw new Error(`${path} cannot be ${String(value)}`);
          design = setAt(design, path, value);
          drafts = without(drafts, path);
        }
        enter({ design, drafts });
      },
      addPosition: () => {
        const state = get();
        const rows = rowsAt<Design['positions'][number]>(state, 'positions');
        return attempt(insertRow(state, 'positions', rows.length, rows.at(-1) ?? defaultPosition));
      },
      duplicatePosition: (index) => {
        const state = get();
        return attempt(
          insertRow(state, 'positions', index + 1, rowsAt(state, 'positions')[index] ?? defaultPosition),
        );
      },
      removePosition: (index) => attempt(removeRow(get(), 'positions', index)),
      setAllPositions: (change) => {
        const { design, drafts } = get();
        let kept = drafts;
        for (const row of design.positions.keys()) {
          for (const key of Object.keys(change)) kept = without(kept, `positions[${row}].${key}`);
        }
        enter({
          design: { ...design, positions: design.positions.map((position) => ({ ...position, ...change })) },
          drafts: kept,
        });
      },
      addPart: () => {
        const state = get();
        const rows = rowsAt<Design['parts'][number]>(state, 'parts');
        const name = `Part ${rows.length + 1}`;
        return attempt(insertRow(state, 'parts', rows.length, { ...(rows.at(-1) ?? defaultPart), name }));
      },
      removePart: (index) => attempt(withoutPart(get(), index)),
      addPoint: (list, after) => attempt(insertPoint(get(), list, after)),
      removePoint: (list, index) => attempt(removeRow(get(), list, index)),
      replacePoints: (list, rows) => attempt(pastedPoints(get(), list, rows)),
      addFan: () => {
        const state = get();
        const { fan, moreFans } = state.design;
        return attempt(insertRow(state, 'moreFans', moreFans.length, anotherFan(fan, moreFans.length)));
      },
      removeFan: (index) => {
        attempt(removeRow(get(), 'moreFans', index));
      },
      addExtra: () => {
        const state = get();
        return attempt(insertRow(state, 'extras', state.design.extras.length, defaultExtra));
      },
      removeExtra: (index) => {
        attempt(removeRow(get(), 'extras', index));
      },
      loadExample: (id) => replace(exampleById(id)),
      newDesign: () => replace(defaultDesign),
      openText: (text) => {
        const read = parseDesignText(text);
        if (read.ok) replace(read.design, read.notes.length > 0 ? read.notes.join(' ') : null);
        return read;
      },
      restore: (design, system, units) => enter({ design, drafts: {}, units, system }),
      setSystem: (system) => enter({ system }),
      selectPart: (selectedPart) => set({ selectedPart }),
      dismissNotice: () => set({ notice: null }),
      setKeeping: (keeping) => set({ keeping }),
    };

    const start: Entered = { design: first, drafts: {}, units: {}, system: 'metric' };
    return {
      ...start,
      ...judge(start),
      solvedDesign: first,
      outcome: solve(toCore(first)),
      selectedPart: 'baffle',
      notice: null,
      keeping: 'unknown',
      ...actions,
    };
  });
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

/** A text goes into its draft, right or wrong; its value goes into the design if it reads. */
function typed(state: Entered, path: string, text: string): Partial<Entered> {
  const read = readText(path, text, unitTyped(state.units, path), state.system);
  const drafts = { ...state.drafts, [path]: { text, problem: read.ok ? null : read.reason } };
  if (!read.ok) return { drafts };
  const units = read.unit === null ? state.units : rememberUnit(state.units, path, read.unit);
  return { design: setAt(state.design, path, read.value), drafts, units };
}

function withoutPart(state: Entered, index: number): Partial<Entered> | string {
  const users = state.design.positions.flatMap(({ part }, position) =>
    part === index ? [position + 1] : [],
  );
  if (users.length > 0) {
    const where =
      users.length === 1 ? `resistor ${users[0]}` : `${users.length} resistors, the first at ${users[0]}`;
    return `This part is in use by ${where}. Give them another part first.`;
  }
  const edited = removeRow(state, 'parts', index);
  if (typeof edited === 'string') return edited;
  const positions = edited.design.positions.map((position) =>
    position.part > index ? { ...position, part: position.part - 1 } : position,
  );
  return { ...edited, design: { ...edited.design, positions } };
}

function pastedPoints(
  state: Entered,
  list: string,
  rows: readonly (readonly [string, string])[],
): Partial<Entered> | string {
  if (rows.length < 2) return 'A curve needs at least two rows.';
  if (rows.length > 100) return `That is ${rows.length} rows; at most 100 fit.`;
  const old = rowsAt<Point>(state, list);
  const points = rows.map((_, index) => old[index] ?? { flow_m3PerS: 0, dp_Pa: 0 });
  let next: Entered = {
    ...state,
    design: setAt(state.design, list, points),
    drafts: without(state.drafts, list),
    units: without(state.units, list),
  };
  rows.forEach(([flow, pressure], index) => {
    next = { ...next, ...typed(next, `${list}[${index}].flow_m3PerS`, flow) };
    next = { ...next, ...typed(next, `${list}[${index}].dp_Pa`, pressure) };
  });
  return next;
}
