/** From the bytes of a text file to its text: UTF-8, UTF-16 with its mark, else what older spreadsheet programs write. */

export interface Decoded {
  readonly text: string;
  readonly encoding: 'UTF-8' | 'UTF-16' | 'Windows-1252';
}

export function decodeText(bytes: Uint8Array): Decoded {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return read(bytes, 'utf-16le', 'UTF-16');
  if (first === 0xfe && second === 0xff) return read(bytes, 'utf-16be', 'UTF-16');
  try {
    return { text: new TextDecoder('utf-8', { fatal: true }).decode(bytes), encoding: 'UTF-8' };
  } catch {
    return read(bytes, 'windows-1252', 'Windows-1252');
  }
}

function read(bytes: Uint8Array, label: string, encoding: Decoded['encoding']): Decoded {
  return { text: new TextDecoder(label).decode(bytes), encoding };
}
