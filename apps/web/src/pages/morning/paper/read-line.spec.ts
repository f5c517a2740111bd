import { describe, expect, it } from 'vitest';
import { keptLine } from './keep.js';
import { readLine } from './read-line.js';
import { startsOf } from './starts.js';
import { entryOf, faultOf, sheet } from './testing/example-lines.js';

describe('what is wrong with a line, and what to write', () => {
  it.each([
    ['F08 off', 'When? Write the time with a colon, 08:05, or as at 0805.'],
    ['F08 off at 2575', '2575 is no time of day: write 0805.'],
    [
      'F08 off at 1802',
      '18:02 of 2027-06-16 is still to come: put the day of the sheet right, or write on Tue.',
    ],
    [
      'F08 sunk at 0802',
      'F08 what? loaded, off, left, back, home, turned back, ended, refused, reported or problem.',
    ],
    ['F08 loaded 07:40 load 1205', 'Write both totals in lb, by the sheet and by hand: load 2378/2378 lb.'],
    [
      'F08 loaded 07:40 load 1205/1205 take-off 7355/7355 lb',
      '1205/1205 what? Write lb after it, if it is lb: load 1205/1205 lb.',
    ],
    [
      'F08 loaded 07:40 load 547/547 kg take-off 7355/7355 lb',
      'The sheet adds up in lb: read the load in lb, by the sheet and by hand: load 2378/2378 lb.',
    ],
    ['F08 problem engine at 0820', expect.stringMatching(/^What problem\? wrong drum, cannot unload/)],
    [
      'F04 off at 0802',
      'F04 is offered, not given to a pilot: approve and give it on Week, then write what its crew said.',
    ],
    ['F01 off at 0802', 'F01 is closed: nothing more is reported of it.'],
    ['drawn ESK 0447 100 into H1 P1 at 0610 by RW1', '100 what from 0447, L or lb? Write 100 L, or 100 lb.'],
    [
      'drawn ESK 0447 100 L into H1 P1 gauge 640 at 0610 by RW1',
      'The gauge before and after, in lb: write gauge 640/992 lb.',
    ],
    ['rejected 0447 at 0610 by RW1', expect.stringMatching(/^Why\? End with because/)],
    ['F08 left GAN 0490 at 0849', 'GAN may be XGAN or YGAN: write the whole code.'],
    ['F08 left LOR at 0849', 'No drum is named: write LEFT or BACK and the drum numbers.'],
    ['drawn ESK 0447 200 L into H1 at 0610 by RW1', 'For which programme? P1, P3.'],
    [
      'drawn ESK 0447 200 L into H1 P1 at 0610',
      'Who wrote or said it? Write by RW1, or fill in the field above.',
    ],
    [
      'counted LOR 10 sealed 1 open 3 empty stick 34 51 cm 09:00 by RW1',
      '2 read by stick and 1 open: write a figure for each open drum.',
    ],
    ['drawn ESK 0447 120 L left 99 cm into H1 P1 at 0915 by RW1', 'No upright drum is deeper than 84.1 cm.'],
    ['counted LOR 2150 L 10 sealed 1 open 09:00 by RW1', 'How many empty drums? Write 0 empty for none.'],
    ['F001 off 0705', expect.stringMatching(/^F001 is no flight that base has told this machine of/)],
    ['hello', expect.stringMatching(/^"hello" begins no line/)],
    ['LOR soft dry 0640 helper', expect.stringMatching(/^XLOR: two surfaces/)],
    ['LOR soft 0640 by helper 10 kt', expect.stringMatching(/^"10 kt" is not understood/)],
    ['GAN closed 0640 helper until Wed 14:00', 'GAN may be XGAN or YGAN: write the whole code.'],
    ['LOR closed 0640 helper until Wed 14:00', expect.stringMatching(/holds to the end of a day/)],
    ['LOR soft 0640 helper 06:50', expect.stringMatching(/^Two times, 06:40 and 06:50: when was it/)],
  ])('%s', (line, words) => {
    expect(faultOf(line)).toEqual(words);
  });

  it('nothing is written yet', () => {
    expect(readLine('  ', sheet)).toBeNull();
  });
});

it('what is likely next stands ready, and goes on as lines are kept', () => {
  expect(startsOf(sheet, [])).toEqual(['F08 loaded load ']);
  const kept = ['F08 loaded 07:40 load 1205/1205 lb take-off 7355/7355 lb', 'F08 off at 0802'].map(
    (line) => ({
      requests: entryOf(line).wanted,
    }),
  );
  expect(startsOf(sheet, kept)).toEqual(['F08 left XLOR all at ']);
  const message = { requests: entryOf('F08/1 LOR 2027-06-16 0849 LEFT 0490 0491 0492 BY FW3').wanted };
  expect(startsOf(sheet, [...kept, message])).toEqual(['F08 home at ']);
});

it('of a flight whose day is over it may be said that it flew, although it was only approved', () => {
  const approved = (day: string) => ({
    ...sheet,
    day,
    flights: sheet.flights.map((flight) => ({ ...flight, date: day, state: 'approved' })),
  });
  expect(startsOf(approved('2027-06-15'), [])[0]).toMatch(/ off at $/);
  expect(startsOf(approved(sheet.now.slice(0, 10)), [])).toEqual([]);
});

it('a kept line has an id for everything it says', () => {
  let made = 0;
  const line = keptLine(entryOf('F08 loaded 07:40 load 1205/1205 lb take-off 7355/7355 lb'), {
    ...{ text: 'as typed', enteredAt: sheet.now, enteredBy: 'A. Dispatcher' },
    newId: () => {
      made += 1;
      return `id-${made}`;
    },
  });
  expect(line.requests[0]!.path).toBe('/api/flight-reports/id-2');
  expect(line.requests[0]!.body).toMatchObject({ drums: [{ movement: 'id-3' }, { movement: 'id-4' }, {}] });
});
