import { type RefObject, useEffect, useState } from 'react';
import { fieldPath } from '../fieldId.ts';
import { focusField } from './focusField.ts';

export interface AtHand {
  readonly focused: string | null;
  readonly hovered: string | null;
}

const controls = 'input[id], select[id], textarea[id]';

/**
 * Which field of the panel round a figure has the focus, and which the pointer is on; a click on a measure in the figure
 * puts the cursor into its field.
 */
export function useFieldAtHand(figure: RefObject<Element | null>): AtHand {
  const [atHand, setAtHand] = useState<AtHand>({ focused: null, hovered: null });
  useEffect(() => {
    const picture = figure.current;
    const panel = picture?.closest('section');
    if (!picture || !panel) return;
    const ends = new AbortController();
    const on = (type: string, hear: (target: Element, event: Event) => void, where: Element = panel) =>
      where.addEventListener(
        type,
        (event) => {
          if (event.target instanceof Element) hear(event.target, event);
        },
        { signal: ends.signal },
      );
    const take = (part: Partial<AtHand>) => setAtHand((before) => renewed(before, part));

    // The figure may come after the cursor.
    const { activeElement } = document;
    let last = activeElement !== null && panel.contains(activeElement) ? fieldPath(activeElement.id) : null;
    take({ focused: last });
    on('focusin', ({ id }) => {
      const focused = fieldPath(id);
      last = focused ?? last;
      take({ focused });
    });
    on('focusout', () => take({ focused: null }));
    on('pointerover', (target) => take({ hovered: pathUnder(target, panel) }));
    on('pointerleave', () => take({ hovered: null }));
    on(
      'click',
      (target) => {
        const path = measureUnder(target);
        if (path !== null) focusField(panel, path, last);
      },
      picture,
    );
    // A press on the picture leaves the focus where it is, until the click gives it to a field.
    on('mousedown', (_, event) => event.preventDefault(), picture);
    return () => ends.abort();
  }, [figure]);
  return atHand;
}

function renewed(before: AtHand, part: Partial<AtHand>): AtHand {
  const after = { ...before, ...part };
  return after.focused === before.focused && after.hovered === before.hovered ? before : after;
}

function measureUnder(target: Element): string | null {
  return target.closest('[data-path]')?.getAttribute('data-path') ?? null;
}

/** The field whose label, control or help this is, or that a measure in the figure stands for. */
function pathUnder(target: Element, panel: Element): string | null {
  for (let at: Element | null = target; at !== null && at !== panel; at = at.parentElement) {
    const control = at.matches(controls) ? at : at.querySelector(controls);
    if (control !== null) return fieldPath(control.id);
  }
  return measureUnder(target);
}
