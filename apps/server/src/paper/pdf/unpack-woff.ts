import { inflateSync } from 'node:zlib';

/**
 * A WOFF file (version 1, https://www.w3.org/TR/WOFF/) as the plain font that it packs. The maker of the PDF reads WOFF
 * too, but unpacks its tables anew for every glyph: most of the time of a page went there.
 */
export const unpackWoff = (woff: Buffer): Buffer => {
  if (woff.toString('latin1', 0, 4) !== 'wOFF') throw new Error('the font is no WOFF file of version 1');
  const count = woff.readUInt16BE(12);
  const tables = Array.from({ length: count }, (_, at) => tableAt(woff, woffHead + at * woffEntry));
  const directory = Buffer.alloc(fontHead + count * fontEntry);
  woff.copy(directory, 0, 4, 8);
  directory.writeUInt16BE(count, 4);
  const power = Math.floor(Math.log2(count));
  directory.writeUInt16BE(16 * 2 ** power, 6);
  directory.writeUInt16BE(power, 8);
  directory.writeUInt16BE(16 * count - 16 * 2 ** power, 10);
  let offset = directory.length;
  tables.forEach(({ tag, checksum, content }, at) => {
    const entry = fontHead + at * fontEntry;
    directory.write(tag, entry, 'latin1');
    directory.writeUInt32BE(checksum, entry + 4);
    directory.writeUInt32BE(offset, entry + 8);
    directory.writeUInt32BE(content.length, entry + 12);
    offset += padded(content.length);
  });
  const contents = tables.map(({ content }) =>
    Buffer.concat([content, Buffer.alloc(padded(content.length) - content.length)]),
  );
  return Buffer.concat([directory, ...contents]);
};

/** Bytes of the heads of the two formats, and of one table's entry in each. */
const [woffHead, woffEntry, fontHead, fontEntry] = [44, 20, 12, 16];

/** Tables begin at multiples of four bytes. */
const padded = (length: number): number => Math.ceil(length / 4) * 4;

const tableAt = (woff: Buffer, entry: number) => {
  const [offset, packed, length, checksum] = [4, 8, 12, 16].map((at) => woff.readUInt32BE(entry + at)) as [
    number,
    number,
    number,
    number,
  ];
  const bytes = woff.subarray(offset, offset + packed);
  return {
    tag: woff.toString('latin1', entry, entry + 4),
    checksum,
    content: packed < length ? inflateSync(bytes) : bytes,
  };
};
