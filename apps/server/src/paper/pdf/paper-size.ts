export const paperSizes = ['a4', 'letter'] as const;
export type PaperSize = (typeof paperSizes)[number];

/** Points in a millimetre. */
export const mm = 72 / 25.4;

/** Width of what is printed, on either paper. */
export const bodyWidth = 190 * mm;

interface Paper {
  readonly pageSize: { readonly width: number; readonly height: number };
  readonly margins: readonly [left: number, top: number, right: number, bottom: number];
  readonly bodyHeight: number;
  /** What A4 has more than Letter in height: it goes to what is written in by hand, never to type. */
  readonly moreToWriteIn: number;
}

const paper = (width: number, height: number, moreToWriteIn: number): Paper => {
  const side = (width * mm - bodyWidth) / 2;
  return {
    pageSize: { width: width * mm, height: height * mm },
    margins: [side, 6.5 * mm, side, 7.5 * mm],
    bodyHeight: (height - 14) * mm,
    moreToWriteIn: moreToWriteIn * mm,
  };
};

export const papers: Readonly<Record<PaperSize, Paper>> = {
  a4: paper(210, 297, 16),
  letter: paper(215.9, 279.4, 0),
};
