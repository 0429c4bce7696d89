/** Id of the control that edits this place, so that a link to a problem can find it. */
export function fieldId(path: string): string {
  return `field-${path}`;
}
