/** The few signs the page needs, drawn on a 16-unit square. */
const paths = {
  add: 'M8 3v10M3 8h10',
  remove: 'M4 4l8 8M12 4l-8 8',
  down: 'M8 3v10M4 9l4 4 4-4',
  copy: 'M3 3h7v7H3zM6 12.5h6.5V6',
  likeThis: 'M3 4h10M3 8h10M3 12h10',
  undo: 'M6.5 3L3 6.5 6.5 10M3 6.5h6.5a3.5 3.5 0 0 1 0 7H6',
  redo: 'M9.5 3L13 6.5 9.5 10M13 6.5H6.5a3.5 3.5 0 0 0 0 7H10',
  reset: 'M4 8a4.5 4.5 0 1 0 1.6-3.4M5.5 2v3h3',
  holds: 'M3 8.5l3.5 3.5L13 4.5',
  little: 'M8 3v6.5M8 12v1',
  fails: 'M4 4l8 8M12 4l-8 8',
  noAnswer: 'M3 8h10',
} as const;

export type GlyphName = keyof typeof paths;

export function Glyph({ name }: { readonly name: GlyphName }) {
  return (
    <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true" focusable="false">
      <path d={paths[name]} fill="none" stroke="currentColor" strokeWidth="1.5" />
    </svg>
  );
}
