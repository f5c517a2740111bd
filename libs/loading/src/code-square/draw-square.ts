import qrcode from 'qrcode-generator';

/** A code square (QR) as one drawing, so that no hairlines stand between its modules. */
export interface DrawnSquare {
  /** Modules on a side, without the white that has to stay round it. */
  readonly side: number;
  /** SVG path of the dark modules, one unit a module. */
  readonly path: string;
}

/**
 * Draws the text of a sheet's code square: runs of the 45 signs that a code square packs best as such, every other sign
 * by its bytes in UTF-8. Error correction M, as paper gets creased and glass scratched. Four modules of white have to
 * stay round it. Source: ISO/IEC 18004.
 */
export function drawSquare(text: string): DrawnSquare {
  const square = qrcode(0, 'M');
  for (const run of text.match(/[0-9A-Z $%*+\-./:]+|[^0-9A-Z $%*+\-./:]+/g) ?? [])
    if (/^[0-9A-Z $%*+\-./:]/.test(run)) square.addData(run, 'Alphanumeric');
    else square.addData(bytesOf(run), 'Byte');
  square.make();
  const side = square.getModuleCount();
  const rows = Array.from({ length: side }, (_, row) =>
    Array.from({ length: side }, (_, column) => square.isDark(row, column)),
  );
  const runs = rows.flatMap((row, y) =>
    runsOf(row).map(([x, length]) => `M${x} ${y}h${length}v1h-${length}z`),
  );
  return { side, path: runs.join('') };
}

/** A sign a byte, as the maker of squares takes them. */
const bytesOf = (text: string): string =>
  encodeURIComponent(text).replace(/%([0-9A-F]{2})/g, (_, hex: string) =>
    String.fromCharCode(Number.parseInt(hex, 16)),
  );

/** Where each run of dark modules begins, and how long it is. */
function runsOf(row: readonly boolean[]): readonly (readonly [at: number, length: number])[] {
  const runs: [number, number][] = [];
  row.forEach((isDark, at) => {
    const last = runs.at(-1);
    if (!isDark) return;
    if (last !== undefined && last[0] + last[1] === at) last[1]++;
    else runs.push([at, 1]);
  });
  return runs;
}
