import type { SheetArt } from './drawSheet.ts';

/** Section and plan to a round scale; every number comes placed. */
export function SheetDrawing({ art, title }: { readonly art: SheetArt; readonly title: string }) {
  const rect = ({ key, kind, ...place }: SheetArt['back'][number]) => (
    <rect key={key} className={kind} {...place} />
  );
  const path = ({ key, kind, d, width }: SheetArt['lines'][number]) => (
    <path key={key} className={kind} d={d} {...(width === null ? {} : { strokeWidth: width })} />
  );
  return (
    <svg className="sheet-drawing" viewBox={`0 0 ${art.width} ${art.height}`} role="img" aria-label={title}>
      {art.back.map(rect)}
      {art.streams.map(path)}
      {art.front.map(rect)}
      {art.slips.map(path)}
      {art.lines.map(path)}
      {art.texts.map(({ key, kind, x, y, text, anchor, turned }) => (
        <text
          key={key}
          className={kind}
          x={x}
          y={y}
          textAnchor={anchor}
          {...(turned ? { transform: `rotate(-90 ${x} ${y})` } : {})}
        >
          {text}
        </text>
      ))}
    </svg>
  );
}
