import type { CSSProperties } from 'react';
import type { Place } from '../../model/tracing/tracing.ts';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Screen pixels for one of the picture, largest; and how wide a picture may get on the screen at all. */
const largestZoom = 8;
const widest_px = 24_000;
const zoomStep = 1.5;

/** Edge of the magnifier on the screen, and screen pixels for one of the picture in it. */
export const loupe_px = 168;
export const loupeZoom = 8;

/** The picture as large as it fits into its window; a small one is made larger, but not so that it falls apart. */
export function fitZoom(picture: Size, window: Size): number {
  return Math.min(4, window.width / picture.width, Math.max(1, window.height) / picture.height);
}

/** @param way 1 for closer, -1 for farther; never farther than the whole picture */
export function nextZoom(zoom: number, way: 1 | -1, picture: Size, window: Size): number {
  const fit = fitZoom(picture, window);
  const most = Math.max(fit, Math.min(largestZoom, widest_px / Math.max(picture.width, picture.height)));
  const next = way === 1 ? zoom * zoomStep : zoom / zoomStep;
  return Math.min(most, Math.max(fit, next));
}

/** As high as the picture is at its width, where there is room. */
export function windowStyle({ width, height }: Size): CSSProperties {
  return { aspectRatio: `${width} / ${height}` };
}

export function sheetStyle(picture: Size, zoom: number): CSSProperties {
  return { inlineSize: picture.width * zoom, blockSize: picture.height * zoom };
}

export function handleStyle({ x, y }: Place, zoom: number): CSSProperties {
  return { left: x * zoom, top: y * zoom };
}

/** Where in the picture a pointer is. */
export function placeUnder(
  pointer: { readonly clientX: number; readonly clientY: number },
  sheet: { readonly left: number; readonly top: number },
  zoom: number,
): Place {
  return { x: (pointer.clientX - sheet.left) / zoom, y: (pointer.clientY - sheet.top) / zoom };
}

/** A thing that was taken at `from` goes as far as the pointer went: where in it the pointer took hold does not matter. */
export function dragged(
  from: Place,
  start: { readonly clientX: number; readonly clientY: number },
  now: { readonly clientX: number; readonly clientY: number },
  zoom: number,
): Place {
  return {
    x: from.x + (now.clientX - start.clientX) / zoom,
    y: from.y + (now.clientY - start.clientY) / zoom,
  };
}

/** How far a window has to be scrolled for this place to stand in its middle. */
export function scrollTo(place: Place, zoom: number, window: Size): { left: number; top: number } {
  return { left: place.x * zoom - window.width / 2, top: place.y * zoom - window.height / 2 };
}

/** A line through places of the picture, for `d` of a path. */
export function pathThrough(places: readonly Place[]): string {
  return places.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${x.toFixed(2)} ${y.toFixed(2)}`).join('');
}

export function percentOf(zoom: number): string {
  return `${Math.round(zoom * 100)} %`;
}

/** What of a picture the magnifier shows about a place. */
export function paintLoupe(canvas: HTMLCanvasElement, picture: CanvasImageSource, { x, y }: Place): void {
  const pen = canvas.getContext('2d');
  if (pen === null) return;
  const across = loupe_px / loupeZoom;
  pen.imageSmoothingEnabled = false;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.drawImage(picture, x - across / 2, y - across / 2, across, across, 0, 0, canvas.width, canvas.height);
}
