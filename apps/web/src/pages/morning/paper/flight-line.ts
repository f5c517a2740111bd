import { problemWords } from '@drumline/contract';
import { readLeft } from './delivery-line.js';
import { isPlace, placeIn } from './find.js';
import { readLoaded } from './load-line.js';
import { type LineEntry, LineFault, type Sheet, type SheetFlight } from './sheet.js';
import { type Parted, toldBy } from './tail.js';

/** "F06 off 08:02", "F06 home 09:36": what a crew reports of its flight. */
export const readFlight = (parted: Parted, sheet: Sheet, flight: SheetFlight): LineEntry => {
  const verb = (parted.rest[1] ?? '').toLowerCase();
  if (verb === 'loaded') return readLoaded(parted, sheet, flight);
  if (verb === 'left' || verb === 'back') return readLeft(parted, sheet, flight);
  if (verb === 'problem') return readProblem(parted, sheet, flight);
  const act = acts[verb];
  if (act === undefined)
    throw new LineFault(
      `${flight.id} what? loaded, off, left, back, home, turned back, ended, refused, reported or problem.`,
    );
  const word = parted.rest.slice(2).find((each) => isPlace(each, sheet));
  const place = word === undefined ? flight.toPlace : placeIn(word, sheet);
  if (verb === 'ended' && word === undefined)
    throw new LineFault(`Where did it end? ${flight.id} ended ALD.`);
  const told = toldBy(parted, sheet, flight.pilot);
  const { kind, words, at } = act;
  return {
    kind: 'entry',
    ...told,
    words: `${flight.id} ${words}${at ? ` ${place}` : ''}`,
    flight: flight.id,
    wanted: [
      {
        to: 'flight-reports',
        body: {
          ...{ kind, flight: flight.id, ...told },
          ...(at ? { place } : {}),
          ...(kind === 'refuse' && parted.because !== null ? { reason: parted.because } : {}),
        },
      },
    ],
    doubts: [],
  };
};

/** "F06 problem cannot unload at 0820 because drum 0575 jammed in R2L": somebody at base has to look. */
const readProblem = (parted: Parted, sheet: Sheet, flight: SheetFlight): LineEntry => {
  const told = toldBy(parted, sheet, flight.pilot);
  const said = parted.rest.slice(2).join(' ').toLowerCase();
  const what = problemWords.find((each) => each === said);
  if (what === undefined)
    throw new LineFault(`What problem? ${problemWords.join(', ')}; then because and the words.`);
  return {
    kind: 'entry',
    ...told,
    words: `${flight.id} has a problem: ${what}${parted.because === null ? '' : `, "${parted.because}"`}`,
    flight: flight.id,
    wanted: [
      {
        to: 'flight-reports',
        body: {
          ...{ kind: 'problem', flight: flight.id, ...told, what },
          ...(parted.because === null ? {} : { words: parted.because }),
        },
      },
    ],
    doubts: [],
  };
};

interface Act {
  readonly kind: string;
  readonly words: string;
  /** It says where. */
  readonly at?: boolean;
}

const home: Act = { kind: 'land', words: 'down at', at: true };
const acts: Readonly<Record<string, Act>> = {
  off: { kind: 'take off', words: 'off' },
  home,
  down: home,
  landed: home,
  turned: { kind: 'turn back', words: 'turned back, down at', at: true },
  ended: { kind: 'end elsewhere', words: 'ended elsewhere, down at', at: true },
  refused: { kind: 'refuse', words: 'refused by its crew' },
  reported: { kind: 'report', words: 'reported: every drum accounted for' },
};
