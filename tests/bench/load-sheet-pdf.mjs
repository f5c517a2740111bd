// Seconds of processor for the load sheet of a full flight as PDF: `node tests/bench/load-sheet-pdf.mjs`. Build the server first.
// The first of a process opens the font; those after it are what a running server takes.

import { loadSheetPages } from '../../apps/server/dist/paper/load-sheet-pages.js';
import { makePdf } from '../../apps/server/dist/paper/make-pdf.js';
import { demo, fullFlight, printOf, sheetOf } from '../../apps/server/dist/paper/testing/example-sheet.js';

const scenario = demo();
const sheet = sheetOf(scenario, fullFlight);
const seconds = async () => {
  const before = process.cpuUsage();
  const pages = loadSheetPages(sheet, printOf(scenario, 'a4'));
  await makePdf({ title: 'Load sheet', paper: 'a4', pages });
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1e6;
};

const first = await seconds();
const later = [];
for (let run = 0; run < 20; run++) later.push(await seconds());
later.sort((one, other) => one - other);
process.stdout.write(
  `first ${first.toFixed(2)} s; then, of ${later.length}: median ${later[10].toFixed(2)} s, worst ${later.at(-1).toFixed(2)} s\n`,
);
