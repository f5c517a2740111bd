import { drawSquare } from '@drumline/loading/code-square';
import type { Block } from './parts.js';

/** The code square of a text. `side` in points. */
export const codeSquare = (text: string, side: number): Block => {
  const { side: modules, path } = drawSquare(text);
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${modules} ${modules}"><path fill="#000" d="${path}"/></svg>`,
    width: side,
    height: side,
  };
};
