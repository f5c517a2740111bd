import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import pdfmake from 'pdfmake';
import { type PaperSize, papers } from './paper-size.js';
import type { Block } from './parts.js';

/** The font of the pages: it has the accents of every Latin script, figures of one width, and a slashed zero. */
const fonts = join(
  dirname(createRequire(import.meta.url).resolve('@ibm/plex-sans-condensed/package.json')),
  'fonts/complete/woff',
);

pdfmake.setFonts({
  Plex: {
    normal: join(fonts, 'IBMPlexSansCondensed-Medium.woff'),
    bold: join(fonts, 'IBMPlexSansCondensed-Bold.woff'),
  },
});
// Nothing is fetched, and nothing is read but the font.
pdfmake.setUrlAccessPolicy(() => false);
pdfmake.setLocalAccessPolicy((path) => path.startsWith(fonts));

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
