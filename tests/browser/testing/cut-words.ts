/** In the browser: words that do not stand whole in their box, each with its box. */
export const cutWords = (boxes: readonly Element[]): readonly string[] =>
  boxes.flatMap((box) => {
    const { right, bottom } = box.getBoundingClientRect();
    return [...box.querySelectorAll<HTMLElement>(':scope *:not(.unseen)')]
      .filter((part) => part.offsetParent !== null && part.getBoundingClientRect().width > 1)
      .filter((part) => {
        const place = part.getBoundingClientRect();
        const isCut = part.clientWidth > 0 && part.scrollWidth > part.clientWidth + 1;
        return place.right > right + 1 || place.bottom > bottom + 1 || isCut;
      })
      .map((part) => `${box.textContent}: ${part.textContent}`);
  });

/** In the browser: words that begin on one line and end on another; a hyphen parts two words. */
export const brokenWords = (within: Element): readonly string[] => {
  const broken: string[] = [];
  const texts = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
  for (let text = texts.nextNode(); text !== null; text = texts.nextNode())
    for (const { index, 0: word } of text.textContent!.matchAll(/[\p{L}\d]+/gu)) {
      const place = document.createRange();
      place.setStart(text, index);
      place.setEnd(text, index + word.length);
      const lines = new Set([...place.getClientRects()].map(({ top }) => Math.round(top)));
      if (lines.size > 1) broken.push(word);
    }
  return broken;
};
