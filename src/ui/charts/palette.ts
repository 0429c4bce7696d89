/** Colours of the charts, all from the page's own custom properties, so that a dark scheme reaches into the SVG. */
export const palette = {
  ink: 'var(--ink)',
  soft: 'var(--ink-soft)',
  line: 'var(--line)',
  paper: 'var(--paper)',
  air: 'var(--air)',
  warm: 'var(--warm)',
} as const;
