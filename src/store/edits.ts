import { accepts } from '../model/accepts.ts';
import { setAt } from '../model/path.ts';
import { without } from './drafts.ts';
import { readText } from './readText.ts';
import { removeRow } from './rows.ts';
import type { Entered } from './state.ts';
import { rememberUnit, unitTyped } from './unitTyped.ts';

/** A text goes into its draft, right or wrong; its value goes into the design if it reads. */
export function typed(state: Entered, path: string, text: string): Partial<Entered> {
  const read = readText(path, text, unitTyped(state.units, path), state.system);
  const drafts = { ...state.drafts, [path]: { text, problem: read.ok ? null : read.reason } };
  if (!read.ok) return { drafts };
  const units = read.unit === null ? state.units : rememberUnit(state.units, path, read.unit);
  return { design: setAt(state.design, path, read.value), drafts, units };
}

/** Values set by a button take the place of what was typed there. A value the schema forbids is a programmer's mistake. */
export function placed(
  { design, drafts }: Entered,
  values: Readonly<Record<string, unknown>>,
): Pick<Entered, 'design' | 'drafts'> {
  let next = { design, drafts };
  for (const [path, value] of Object.entries(values)) {
    if (!accepts(path, value)) throw new Error(`${path} cannot be ${String(value)}`);
    next = { design: setAt(next.design, path, value), drafts: without(next.drafts, path) };
  }
  return next;
}

export function withoutPart(state: Entered, index: number): Partial<Entered> | string {
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
