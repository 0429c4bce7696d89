import type { Picture } from './picture.ts';

/** Sharp when printed at its own size. */
const scale = 3;
/** Phones refuse larger canvases. */
const mostPixels = 16e6;

/** The same picture in pixels. Throws where the browser does not let a page paint. */
export async function pngOf({ svg, width, height }: Picture): Promise<Blob> {
  const times = Math.min(scale, Math.sqrt(mostPixels / (width * height)));
  const address = URL.createObjectURL(new Blob([svg], { type: 'image/svg+xml;charset=utf-8' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(width * times);
    canvas.height = Math.round(height * times);
    const pen = canvas.getContext('2d');
    if (pen === null) throw new Error('no canvas');
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    const png = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/png'));
    if (png === null) throw new Error('no PNG');
    return png;
  } finally {
    URL.revokeObjectURL(address);
  }
}
