import type { Design } from '../model/design.ts';
import { designSchema } from '../model/design.ts';
import { largestDesignFile_B } from '../model/designText.ts';

/** Begins the fragment of a link that holds a design; the number is that of the packing, not of the design. */
const mark = '#box1=';

export type LinkRead =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/**
 * The part of an address, after its #, that holds the whole design: JSON, compressed as gzip (RFC 1952, whose check sum
 * tells a link that was cut or changed on its way), in base64 for addresses (RFC 4648, section 5). What stands after a
 * # is never sent to a server.
 */
export async function designFragment(design: Design): Promise<string> {
  const text = JSON.stringify(designSchema.parse(design));
  const packed = await through(new TextEncoder().encode(text), new CompressionStream('gzip'));
  return mark + toBase64Url(packed);
}

export function holdsDesign(fragment: string): boolean {
  return fragment.startsWith(mark);
}

/** The text of the design file in a link. Unpacks no more than a design file may have. */
export async function readFragment(fragment: string): Promise<LinkRead> {
  const packed = fromBase64Url(fragment.slice(mark.length));
  if (packed === null) return { ok: false, reason: damaged };
  try {
    const bytes = await through(packed, new DecompressionStream('gzip'), largestDesignFile_B);
    return { ok: true, text: new TextDecoder('utf-8', { fatal: true }).decode(bytes) };
  } catch (error) {
    return { ok: false, reason: error instanceof TooLarge ? tooMuch : damaged };
  }
}

const damaged = 'The link is damaged: part of it is missing or was changed on its way. Ask for it again.';
const tooMuch = 'What this link unpacks to is larger than any design.';

class TooLarge extends Error {}

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
  most_B = Number.POSITIVE_INFINITY,
): Promise<Uint8Array<ArrayBuffer>> {
  const reader = new Blob([bytes]).stream().pipeThrough(stream).getReader();
  const chunks: Uint8Array[] = [];
  let size_B = 0;
  for (let read = await reader.read(); !read.done; read = await reader.read()) {
    size_B += read.value.length;
    if (size_B > most_B) {
      await reader.cancel();
      throw new TooLarge();
    }
    chunks.push(read.value);
  }
  const all = new Uint8Array(size_B);
  let at = 0;
  for (const chunk of chunks) {
    all.set(chunk, at);
    at += chunk.length;
  }
  return all;
}

function toBase64Url(bytes: Uint8Array): string {
  const text = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64Url(text: string): Uint8Array<ArrayBuffer> | null {
  if (!/^[\w-]+$/.test(text)) return null;
  try {
    const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(plain, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}
