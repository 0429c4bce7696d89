/** Colours of the charts, all from the page's own custom properties, so that a dark scheme reaches into the SVG. */
export const palette = {
  ink: 'var(--ink)',
  soft: 'var(--ink-soft)',
  line: 'var(--line)',
  paper: 'var(--paper)',
  air: 'var(--air)',
  warm: 'var(--warm)',
} as const;

export const tick = { fill: palette.soft, fontSize: 12 } as const;

export const tooltip = {
  contentStyle: {
    background: palette.paper,
    border: `1px solid ${palette.line}`,
    color: palette.ink,
    fontSize: 13,
  },
  itemStyle: { color: palette.ink },
  labelStyle: { color: palette.ink },
} as const;
