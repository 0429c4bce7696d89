import { defaultAt } from '../model/defaults.ts';
import { type Field, fieldAt } from '../model/fields.ts';
import { getAt, type Path } from '../model/path.ts';
import { editIn, sayRange, type UnitSystem, unitFor, unitSymbol } from '../model/say.ts';
import { sayInput } from '../model/sayInput.ts';
import type { DesignState } from './state.ts';
import { unitTyped } from './unitTyped.ts';

/** All that one field on the screen shows. */
export interface FieldView {
  readonly path: Path;
  readonly field: Field;
  readonly label: string;
  readonly help: string;
  /** As typed, or the value in the field's unit where nothing was typed. */
  readonly text: string;
  readonly value: unknown;
  /** Symbol of the unit that a bare number is in; empty where there is none. */
  readonly unit: string;
  readonly problem: string | null;
  /** Soft: the value is taken, but is outside what is usual. */
  readonly warning: string | null;
  /** What a new design has here, in words; `null` where that stands here already or there is no such thing. */
  readonly byDefault: string | null;
}

interface Inputs {
  readonly value: unknown;
  readonly text: string | null;
  readonly problem: string | null;
  readonly unit: string | null;
  readonly system: UnitSystem;
}

const lastViews = new Map<Path, { readonly inputs: Inputs; readonly view: FieldView }>();

/** The view of one field; the same object as long as nothing in it changes, so a reader need not render again. */
export function fieldView(state: DesignState, path: Path): FieldView {
  const draft = state.drafts[path];
  const inputs: Inputs = {
    value: getAt(state.design, path),
    text: draft?.text ?? null,
    problem: draft?.problem ?? state.clashes[path] ?? null,
    unit: unitTyped(state.units, path) ?? null,
    system: state.system,
  };
  const last = lastViews.get(path);
  if (last !== undefined && same(last.inputs, inputs)) return last.view;
  const view = build(path, inputs);
  lastViews.set(path, { inputs, view });
  return view;
}

function build(path: Path, inputs: Inputs): FieldView {
  const { value, text, problem, unit, system } = inputs;
  const field = fieldAt(path);
  const isQuantity = field.kind === 'quantity';
  const shown = isQuantity ? (unit ?? unitFor(field.dimension, system)) : null;
  const written =
    isQuantity && shown !== null ? editIn(value as number, field.dimension, shown) : String(value);
  return {
    path,
    field,
    label: field.label,
    help: field.help,
    text: text ?? written,
    value,
    unit: isQuantity && shown !== null ? unitSymbol(field.dimension, shown) : '',
    problem,
    warning: problem === null ? unusual(field, value, system, shown) : null,
    byDefault: otherDefault(path, inputs),
  };
}

function otherDefault(path: Path, { value, problem, unit, system }: Inputs): string | null {
  const standard = defaultAt(path);
  if (standard === undefined || standard === '' || (standard === value && problem === null)) return null;
  return sayInput(path, standard, system, { unit: unit ?? undefined });
}

function unusual(field: Field, value: unknown, system: UnitSystem, unit: string | null): string | null {
  if (
    (field.kind !== 'quantity' && field.kind !== 'count') ||
    field.usual === null ||
    typeof value !== 'number'
  )
    return null;
  const [low, high] = field.usual;
  const slack = 1e-9 * (Math.abs(low) + Math.abs(high));
  if (value >= low - slack && value <= high + slack) return null;
  const range =
    field.kind === 'quantity'
      ? sayRange(field.usual, field.dimension, system, unit ?? undefined)
      : `${low} to ${high}`;
  return `Unusual: ${value < low ? 'less' : 'more'} than the usual ${range}.`;
}

function same(a: Inputs, b: Inputs): boolean {
  return (
    a.value === b.value &&
    a.text === b.text &&
    a.problem === b.problem &&
    a.unit === b.unit &&
    a.system === b.system
  );
}
