const prefix = 'field-';

/** Id of the control that edits this place, so that a link to a problem can find it. */
export function fieldId(path: string): string {
  return `${prefix}${path}`;
}

/** The place that a control with this id edits; `null` where it edits none. */
export function fieldPath(id: string): string | null {
  return id.startsWith(prefix) ? id.slice(prefix.length) : null;
}
