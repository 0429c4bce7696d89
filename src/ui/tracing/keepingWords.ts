import type { PictureKeeping } from '../../store/tracing/desk.ts';

/** Where the picture stays. */
export const keepingWords: Readonly<Record<PictureKeeping, string>> = {
  nothing: 'The picture will be kept in this browser beside the design; it goes into no file and no link.',
  kept: 'The picture is kept in this browser beside the design; it goes into no file and no link.',
  full: 'The browser has no room for this picture; the curve is kept. The picture stays until the page is left.',
  refused: 'This browser keeps no pictures; the curve is kept. The picture stays until the page is left.',
};
