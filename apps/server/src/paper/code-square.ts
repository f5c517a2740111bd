import qrcode from 'qrcode-generator';
import type { Block } from './parts.js';

/**
 * The code square of a text, as rows of dark modules. The text is of the 45 signs that a code square packs best; error
 * correction M, as paper gets creased.
 */
export const squareModules = (text: string): readonly (readonly boolean[])[] => {
  const square = qrcode(0, 'M');
  square.addData(text, 'Alphanumeric');
  square.make();
  const side = square.getModuleCount();
  return Array.from({ length: side }, (_, row) =>
    Array.from({ length: side }, (_, column) => square.isDark(row, column)),
  );
};

/** The square as one drawing, so that no hairlines stand between its modules. `side` in points. */
export const codeSquare = (text: string, side: number): Block => {
  const modules = squareModules(text);
  const path = modules.flatMap((row, y) =>
    runsOf(row).map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`),
  );
  const viewBox = `0 0 ${modules.length} ${modules.length}`;
  return {
    svg: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}"><path fill="#000" d="${path.join('')}"/></svg>`,
    width: side,
    height: side,
  };
};

/** Where each run of dark modules begins, and how long it is. */
const runsOf = (row: readonly boolean[]): readonly (readonly [at: number, length: number])[] => {
  const runs: [number, number][] = [];
  row.forEach((isDark, at) => {
    const last = runs.at(-1);
    if (!isDark) return;
    if (last !== undefined && last[0] + last[1] === at) last[1]++;
    else runs.push([at, 1]);
  });
  return runs;
};
