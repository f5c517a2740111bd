import { readLine as readSurfaceLine } from '../../../radio/read-line.js';
import { isSurface } from '../../../radio/who-spoke.js';
import { readDelivery, speaker } from './delivery-line.js';
import { readFlight } from './flight-line.js';
import { type LineEntry, LineFault, type ReadLine, type Sheet } from './sheet.js';
import { stockLines } from './stock-lines.js';
import { partLine, toldBy } from './tail.js';

/** One line of a day sheet, or a delivery as it came in a message; null: nothing is written yet. */
export const readLine = (line: string, sheet: Sheet): ReadLine | null => {
  const text = line.trim();
  if (text === '') return null;
  try {
    return readText(text, sheet);
  } catch (fault) {
    if (!(fault instanceof LineFault)) throw fault;
    return { kind: 'fault', words: fault.message };
  }
};

const readText = (text: string, sheet: Sheet): LineEntry => {
  const [first = '', second = ''] = text.split(/\s+/);
  if (/^[A-Z0-9-]+\/\d+$/i.test(first)) return readDelivery(text, sheet);
  if (isSurface(second)) return readSurface(text, sheet);
  const parted = partLine(text, sheet);
  const flight = sheet.flights.find(({ id }) => id === first.toUpperCase());
  if (flight !== undefined) return readFlight(parted, sheet, flight);
  const other = sheet.notGiven.find(({ id }) => id === first.toUpperCase());
  if (other !== undefined)
    throw new LineFault(
      other.state === 'offered'
        ? `${other.id} is offered, not given to a pilot: approve and give it on Week, then write what its crew said.`
        : `${other.id} is ${other.state}: nothing more is reported of it.`,
    );
  const stockLine = stockLines[first.toLowerCase()];
  if (stockLine !== undefined) return stockLine(parted, sheet);
  if (/^[A-Z]{1,2}\d+$/i.test(first))
    throw new LineFault(
      `${first.toUpperCase()} is no flight that base has told this machine of, from two days before the sheet to a day after it. Look at the day of the sheet; if base is silent, keep the paper and write this line when it answers.`,
    );
  throw new LineFault(
    `"${first}" begins no line: a flight (F06), drawn, counted, slung, dropped, held, rejected, filled, or a place with its surface.`,
  );
};

/** "LOR soft 0652 helper until Wed", as on the radio; the day is that of the sheet. */
const readSurface = (text: string, sheet: Sheet): LineEntry => {
  const timed = text.replace(/(?<!\b(?:at|until\s+\S+|written))\s(\d{4})(?=\s|$)/i, ' at $1');
  const parted = partLine(timed, sheet);
  const line = [...parted.rest, ...(parted.by === null ? [] : ['by', parted.by])].join(' ');
  const [said] = readSurfaceLine(line, {
    ...{ places: sheet.places, timeZone: sheet.timeZone },
    ...{ now: parted.at ?? sheet.now, speaker: sheet.by },
  });
  if (said === undefined || said.kind === 'fault') throw new LineFault(said?.words ?? 'Which strip?');
  const told = toldBy({ ...parted, by: said.who }, sheet, null);
  const { report } = said;
  return {
    kind: 'entry',
    ...told,
    words: `${report.place} ${report.state}${report.untilDate === undefined ? '' : `, to the end of ${report.untilDate}`}`,
    flight: null,
    wanted: [{ to: 'surface-reports', body: { ...report, by: speaker(told.by, told.means) } }],
    doubts: [],
  };
};
