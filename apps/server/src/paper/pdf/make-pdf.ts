import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import pdfmake from 'pdfmake';
import { type PaperSize, papers } from './paper-size.js';
import type { Block } from './parts.js';
import { unpackWoff } from './unpack-woff.js';

/** The font of the pages: it has the accents of every Latin script, figures of one width, and a slashed zero. */
const fonts = join(
  dirname(createRequire(import.meta.url).resolve('@ibm/plex-sans-condensed/package.json')),
  'fonts/complete/woff',
);

/** Files in memory, which its types do not list. */
const { virtualfs } = pdfmake as unknown as {
  readonly virtualfs: { writeFileSync: (name: string, content: Buffer) => void };
};

/** The name under which that weight of the font is kept in memory. */
const keptFont = (weight: string): string => {
  const name = `${weight}.ttf`;
  virtualfs.writeFileSync(name, unpackWoff(readFileSync(join(fonts, `IBMPlexSansCondensed-${weight}.woff`))));
  return name;
};

pdfmake.setFonts({ Plex: { normal: keptFont('Medium'), bold: keptFont('Bold') } });
// Nothing is fetched, and no file is read.
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy(() => false);

/** Pages in order: each begins on new paper. Black only. */
export interface PrintedPages {
  readonly title: string;
  readonly paper: PaperSize;
  readonly pages: readonly Block[];
  /** Under every page, before its number of the whole; absent: no line there. */
  readonly foot?: string;
  /** As text in the file: for tests that read it. */
  readonly uncompressed?: boolean;
}

export const makePdf = ({
  title,
  paper,
  pages,
  foot,
  uncompressed = false,
}: PrintedPages): Promise<Buffer> => {
  const { pageSize, margins } = papers[paper];
  return pdfmake
    .createPdf({
      info: { title, creator: 'Drumline', producer: 'Drumline' },
      lang: 'en',
      compress: !uncompressed,
      pageSize,
      pageMargins: [...margins],
      ...(foot === undefined ? {} : { footer: footer(foot) }),
      content: pages.map((page, index) => ({
        stack: [page],
        ...(index === 0 ? {} : { pageBreak: 'before' }),
      })),
      defaultStyle: { font: 'Plex', fontSize: 10, lineHeight: 0.9, color: '#000', fontFeatures: ['zero'] },
    } as Parameters<typeof pdfmake.createPdf>[0])
    .getBuffer();
};

const footer = (words: string) => (page: number, pages: number) => ({
  text: `${words} · page ${page} of ${pages}`,
  alignment: 'center',
});
