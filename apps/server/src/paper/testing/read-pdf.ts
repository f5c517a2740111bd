import { inflateSync } from 'node:zlib';

/** Pages of a PDF, counted in its page objects. */
export const pageCount = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type \/Page\b(?!s)/g) ?? []).length;

/** Everything that is drawn, as the operators of the page streams. */
export const drawn = (pdf: Buffer): string => {
  const text = pdf.toString('latin1');
  const streams: string[] = [];
  for (const { index, 0: found } of text.matchAll(/stream\r?\n/g)) {
    const start = index + found.length;
    const bytes = pdf.subarray(start, text.indexOf('endstream', start));
    try {
      streams.push(inflateSync(bytes).toString('latin1'));
    } catch {
      // A stream that is not packed: a page made uncompressed.
      streams.push(bytes.toString('latin1'));
    }
  }
  return streams.join('\n');
};
