import { InputError } from '../../simulator/index.ts';

/** The most bytes that a packed text may grow to when it is unpacked. */
export const MOST_UNPACKED = 256_000;

/** Packs a text into letters, digits, `-` and `_`: deflated (RFC 1951), in base64url (RFC 4648). */
export async function pack(text: string): Promise<string> {
  const packed = await passed(new TextEncoder().encode(text), new CompressionStream('deflate-raw'));
  const letters = Array.from(packed, (byte) => String.fromCharCode(byte)).join('');
  return btoa(letters).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/**
 * The text that was packed.
 *
 * @param name what is unpacked, as errors call it.
 * @throws InputError when it was not packed by {@link pack}, or is larger than {@link MOST_UNPACKED}.
 */
export async function unpack(name: string, packed: string): Promise<string> {
  try {
    const letters = atob(packed.replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
    const text = await passed(bytes, new DecompressionStream('deflate-raw'), MOST_UNPACKED);
    return new TextDecoder('utf-8', { fatal: true }).decode(text);
  } catch (error) {
    if (error instanceof InputError) throw error;
    throw problem(
      name,
      'a whole link',
      'one that is damaged',
      'Copy all of it, to its last letter.',
    );
  }
}

/** Bytes after they went through a stream. What comes out is counted while it comes. */
async function passed(
  bytes: Uint8Array<ArrayBuffer>,
  through: CompressionStream | DecompressionStream,
  most = Infinity,
): Promise<Uint8Array> {
  const chunks: Uint8Array[] = [];
  let length = 0;
  const stream = new Blob([bytes]).stream().pipeThrough(through);
  for (const reader = stream.getReader(); ; ) {
    const { done, value } = await reader.read();
    if (done) break;
    length += value.length;
    if (length > most) {
      await reader.cancel();
      throw problem('a link', `at most ${most} bytes`, 'more', 'Save it as a file instead.');
    }
    chunks.push(value);
  }
  const whole = new Uint8Array(length);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.length;
  }
  return whole;
}

/** What is wrong with something that was shared. */
export const problem = (name: string, expected: string, found: string, hint: string): InputError =>
  new InputError(name, [{ place: '', expected, found, hint }]);
