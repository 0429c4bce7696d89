import type { Picture } from '../../store/tracing/tracingStore.ts';

/** Pictures of dots that every browser shows. */
export const takenTypes: readonly string[] = [
  'image/png',
  'image/jpeg',
  'image/webp',
  'image/gif',
  'image/avif',
  'image/bmp',
];

const largest_B = 8e6;
const mostPixels = 40e6;
const fewestPixels = 60;
const taken = 'A PNG, JPEG, WebP, GIF, AVIF or BMP picture of up to 8 MB can be taken.';

export type PictureFile =
  | { readonly ok: true; readonly picture: Omit<Picture, 'owner'> }
  | { readonly ok: false; readonly reason: string };

/** A file as a picture with its size, or one sentence on why it cannot be taken and what can. */
export async function readPictureFile(file: File): Promise<PictureFile> {
  const refusal = refuseFile(file);
  if (refusal !== null) return { ok: false, reason: refusal };
  const size = await sizeOf(file);
  if (size === null)
    return { ok: false, reason: `The browser cannot show “${file.name}” as a picture. ${taken}` };
  const { width, height } = size;
  if (width * height > mostPixels)
    return {
      ok: false,
      reason: `This picture has ${width} × ${height} pixels; at most 40 million can be held. Make it smaller, or cut out the curve.`,
    };
  if (Math.min(width, height) < fewestPixels)
    return {
      ok: false,
      reason: `This picture has ${width} × ${height} pixels; nothing can be read off so few. At least ${fewestPixels} each way.`,
    };
  return { ok: true, picture: { blob: file, name: file.name, width, height } };
}

function refuseFile({ name, type, size }: File): string | null {
  if (type === 'application/pdf')
    return 'A PDF is not a picture. Show its page as large as it goes, take a picture of the screen, and paste that here.';
  if (type === 'image/svg+xml')
    return 'An SVG is a drawing in words, which may hold more than lines, and is not opened. Save it as PNG.';
  if (!takenTypes.includes(type)) return `“${name}” is not a picture that can be taken. ${taken}`;
  return size > largest_B
    ? `This file has ${(size / 1e6).toFixed(1)} MB; at most 8 MB are taken. Cut out the curve, or save it smaller.`
    : null;
}

/** Size as shown: a photograph may carry a turn. @returns `null` where the browser cannot decode it */
async function sizeOf(file: Blob): Promise<{ width: number; height: number } | null> {
  const address = URL.createObjectURL(file);
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    return { width: image.naturalWidth, height: image.naturalHeight };
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(address);
  }
}
