import { centimetres, kilograms, kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { keptLine } from './keep.js';
import { readLine } from './read-line.js';
import type { LineEntry, Sheet, SheetDrum } from './sheet.js';
import { startsOf } from './starts.js';
import { toldCode, toldTotals, unlikeWords } from './use-own-sheet.js';

const inBook = (number: string, inIt: number, place: string): SheetDrum => ({
  ...{ number, litres: litres(inIt), place, sealed: true, held: false, retestDue: '2028-04-19' },
});

const sheet: Sheet = {
  day: '2027-06-16',
  means: 'paper',
  by: '',
  now: '2027-06-16T14:00:00Z',
  timeZone: 'Etc/GMT',
  places: ['XLOR', 'XESK', 'XMAR', 'XGAN', 'XALD', 'XMER', 'YGAN'].map((code) => ({ code, name: code })),
  flights: [
    {
      id: 'F08',
      ...{ state: 'given', version: 2, date: '2027-06-16', departs: '08:00', pilot: 'FW3' },
      ...{ fromPlace: 'XALD', toPlace: 'XALD', stops: [{ place: 'XLOR' }], legs: 2 },
      loads: ['0490', '0491', '0492'].map((drum) => ({ place: 'XLOR', drum })),
    },
  ],
  drums: [
    inBook('0447', 200, 'XESK'),
    inBook('0448', 80, 'XESK'),
    ...['0490', '0491', '0492'].map((number) => inBook(number, 200, 'XALD')),
  ],
  programmes: ['P1', 'P3'],
  fillLitres: 200,
  countTolerance: { percentOfBook: 2, litresPerOpenDrum: litres(10), reference: 'stock manual 4.2' },
  batches: [{ id: 'J27-041', densityAt15KgPerLitre: kilogramsPerLitre(0.804) }],
  densityTolerance: {
    ...{ percent: 1, reference: 'fuel manual 6.3' },
    ...{ scaleErrorKg: kilograms(0.5), dipErrorLitres: litres(2) },
  },
  mayFill: true,
  bookDensityKgPerLitre: kilogramsPerLitre(0.8),
  notGiven: [
    { id: 'F04', state: 'offered' },
    { id: 'F01', state: 'closed' },
  ],
  dipTables: [
    {
      ...{ name: 'upright drum', kind: 'upright drum', stickMarksCm: centimetres(1), reference: 'test' },
      ...{ innerDiameterCm: centimetres(57.2), innerHeightCm: centimetres(84.1) },
    },
    {
      ...{ name: 'lying drum', kind: 'lying drum', stickMarksCm: centimetres(1), reference: 'test' },
      ...{ innerDiameterCm: centimetres(57.2), innerLengthCm: centimetres(84.1) },
    },
  ],
};
const entryOf = (line: string, on: Partial<Sheet> = {}): LineEntry => {
  const read = readLine(line, { ...sheet, ...on });
  if (read?.kind !== 'entry') throw new Error(read?.words ?? 'nothing');
  return read;
};
const faultOf = (line: string): string => {
  const read = readLine(line, sheet);
  return read?.kind === 'fault' ? read.words : 'no fault';
};

describe('a flight on paper, line by line', () => {
  it('loaded: the drums set aside, and both totals from two hands', () => {
    const { wanted, words, by } = entryOf('F08 loaded 07:40 load 1205/1205 lb take-off 7355/7355 lb');
    expect(by).toBe('FW3');
    expect(words).toContain('with 0490, 0491, 0492; load 1205 lb by the sheet, 1205 lb by hand');
    expect(wanted).toEqual([
      {
        to: 'flight-reports',
        body: {
          ...{ kind: 'load', flight: 'F08', version: 2, bySoftFigures: false, by: 'FW3', means: 'paper' },
          ...{ happenedAt: '2027-06-16T07:40Z', writtenAt: '2027-06-16T07:40Z' },
          totals: {
            load: { bySheetLb: 1205, byHandLb: 1205 },
            takeOff: { bySheetLb: 7355, byAircraftLb: 7355 },
          },
          drums: ['0490', '0491', '0492'].map((drum) => ({ drum, to: 'XLOR' })),
        },
      },
    ]);
  });

  it('loaded with a drum that no book has: what its crew says it weighs is kept, and asked for', () => {
    const line = 'F08 loaded 07:40 load 1205/1205 lb take-off 7355/7355 lb 0490 0491 9999';
    const { wanted, words, doubts } = entryOf(`${line} weighs 190 kg`);
    expect(words).toContain('with 0490, 0491, 9999 (190.0 kg); load');
    expect(wanted[0]!.body.drums).toEqual([
      { drum: '0490', to: 'XLOR' },
      { drum: '0491', to: 'XLOR' },
      { drum: '9999', to: 'XLOR', grossKg: 190 },
    ]);
    expect(doubts).toEqual([expect.stringMatching(/^9999 is in no book/)]);
    expect(entryOf(line).doubts).toContain(
      'On the sheet 9999 counts as planned: if the crew says what it weighs, write 9999 weighs 190 kg.',
    );
    expect(faultOf(`${line} weighs 419 lb`)).toMatch(/^What does 9999 weigh, drum and fuel\? In kg/);
  });

  it('totals that differ are asked about; the commander signs with a reason', () => {
    const line = 'F08 loaded 07:40 load 1205/1295 lb take-off 7355/7355 lb';
    expect(entryOf(line).doubts).toEqual([expect.stringMatching(/^Two totals differ/)]);
    // The server wants two persons; the commander alone cannot sign.
    expect(entryOf(`${line} because scale read again`).doubts).toEqual([
      expect.stringMatching(/two people sign.*by FW1 with S\. Keeper because/),
    ]);
    const signed = entryOf(`${line} by FW3 with S. Keeper because scale read again`);
    expect(signed.doubts).toEqual([]);
    expect(signed.wanted[0]!.body).toMatchObject({
      by: 'FW3',
      signed: { by: 'FW3', second: 'S. Keeper', reason: 'scale read again' },
    });
  });

  it('a problem that the crew has, with its own words', () => {
    const { words, wanted } = entryOf('F08 problem cannot unload at 0820 because 0491 is jammed in R2L');
    expect(words).toBe('F08 has a problem: cannot unload, "0491 is jammed in R2L"');
    expect(wanted).toMatchObject([
      {
        to: 'flight-reports',
        body: { kind: 'problem', what: 'cannot unload', words: '0491 is jammed in R2L' },
      },
    ]);
  });

  it('off, home, turned back, ended elsewhere, reported, refused', () => {
    const said = (line: string) => {
      const { words, wanted } = entryOf(line);
      return [words, wanted[0]!.body.kind];
    };
    expect(said('F08 off at 802')).toEqual(['F08 off', 'take off']);
    expect(said('f08 home 09:40')).toEqual(['F08 down at XALD', 'land']);
    expect(said('F08 turned back MER 08:31')).toEqual(['F08 turned back, down at XMER', 'turn back']);
    expect(said('F08 ended ESK 08:31')).toEqual(['F08 ended elsewhere, down at XESK', 'end elsewhere']);
    expect(said('F08 reported 09:50')).toEqual(['F08 reported: every drum accounted for', 'report']);
    expect(said('F08 refused 07:00 because fog')).toEqual(['F08 refused by its crew', 'refuse']);
  });

  it('left and brought back, drum by drum, with when it was written', () => {
    const { wanted, writtenAt, words } = entryOf('F08 left LOR 0490 0491 damaged at 0849 written 0900');
    expect(writtenAt).toBe('2027-06-16T09:00Z');
    expect(words).toBe('F08, 2 left at XLOR: 0490, 0491 damaged');
    expect(wanted.map(({ body }) => [body.kind, body.drum, body.condition, body.leg])).toEqual([
      ['left at', '0490', 'sound', 1],
      ['left at', '0491', 'damaged', 1],
    ]);
    const back = entryOf('F08 back 0492 seal at 09:40');
    expect(back.words).toBe('F08, 1 brought home to XALD: 0492 seal broken');
    expect(back.wanted[0]!.body).toMatchObject({
      kind: 'brought home',
      place: 'XALD',
      condition: 'seal broken',
      // As a phone has it: on the last leg, whatever leg the line is of.
      leg: 2,
    });
    expect(entryOf('F08 left LOR all at 0849').wanted).toHaveLength(3);
  });

  it('a number that is not on the load is asked about, with what it may be; it is kept as written', () => {
    const { doubts, wanted } = entryOf('F08 left LOR 0409 at 0849');
    expect(doubts).toEqual([
      '0409 is in no book: nearest 0490. Kept so, it is an unknown drum, and nobody knows what is in it.',
    ]);
    expect(wanted[0]!.body.drum).toBe('0409');
    expect(entryOf('F08 left LOR 0447 at 0849').doubts).toEqual(['0447 is not on the load of F08.']);
    expect(entryOf('F08 left LOR 0490 8888 at 0849').doubts[0]).toMatch(
      /^8888 is in no book: none is near it/,
    );
  });

  it('a delivery as it came in a message, by its own day', () => {
    const { wanted, words, by } = entryOf(
      'F08/1 LOR 2027-06-16 0849 LEFT 0490 0491 BACK 0492 SEAL SURFACE DAMP BY FW3',
      { means: 'radio' },
    );
    expect([by, words]).toEqual([
      'FW3',
      'F08, 2 left at XLOR: 0490, 0491; 1 brought home to XALD: 0492 seal broken; XLOR damp',
    ]);
    expect(wanted.at(-1)).toEqual({
      to: 'surface-reports',
      body: { place: 'XLOR', state: 'damp', at: '2027-06-16T08:49Z', by: 'FW3, by radio' },
    });
  });
});

describe('a load from paper beside the sheet of base', () => {
  const line = 'F08 loaded 07:40 load 718/718 lb take-off 7355/7355 lb';

  it('is asked about with what the line says stands on the sheet, where it is of those drums', () => {
    const asked = (text: string) => toldTotals(readLine(text, sheet), sheet);
    expect(asked(line)).toEqual([
      { flight: 'F08', of: 'load', typedLb: 718 },
      { flight: 'F08', of: 'take-off weight', typedLb: 7355 },
    ]);
    expect(asked(`${line} 0490 0491`)).toEqual([]);
    expect(asked(`${line} v1`)).toEqual([]);
    expect(asked('F08 off at 0802')).toEqual([]);
  });

  it('with the check code that stands on it; four figures are a code there, and no drum', () => {
    const withCode = `${line} code 7943 by FW3`;
    expect(entryOf(withCode).words).toMatch(/0490, 0491, 0492; load .*; check code 7943$/);
    expect(entryOf(`${line} code u9xa`).wanted[0]!.body.checkCode).toBe('U9XA');
    expect(toldCode(readLine(withCode, sheet), sheet)).toEqual({ flight: 'F08', version: 2, code: '7943' });
    expect(toldCode(readLine(line, sheet), sheet)).toBeNull();
    expect(faultOf(`${line} code by FW3`)).toMatch(/^Which check code\?/);
  });

  it('718 where the sheet says 1,583 lb is told with the likely slip, never which is right', () => {
    const compared = {
      ...{ of: 'load' as const, agrees: false, advice: 'Look at both figures where they came from.' },
      words: '1,583 lb and 718 lb: 865 lb apart',
      slips: [{ title: 'Kilograms for pounds', words: '1,583 lb is 718 kg.' }],
    };
    expect(unlikeWords(compared)).toEqual([
      "The load by base's sheet, and as it is written here: 1,583 lb and 718 lb: 865 lb apart. Kilograms for pounds: 1,583 lb is 718 kg. Look at both figures where they came from.",
    ]);
    expect(unlikeWords({ ...compared, agrees: true })).toEqual([]);
  });
});

describe('stock on paper', () => {
  it('uplifts: drum after drum, with what the book says otherwise', () => {
    const { wanted, doubts, words } = entryOf(
      'drawn ESK 0447 200 L 0448 120L into H1 P1 at 0610 by RW1 radio',
    );
    expect(words).toBe('200 L from 0447, 120 L from 0448 drawn at XESK into H1 for P1');
    expect(doubts).toEqual(['0448 holds 80 L by the book.']);
    expect(wanted.map(({ body }) => [body.millilitres, body.by, body.means])).toEqual([
      [200_000, 'RW1', 'radio'],
      [120_000, 'RW1', 'radio'],
    ]);
    expect(entryOf('drawn LOR 0447 2000 L into H1 P1 at 0610 by RW1').doubts).toEqual([
      '2,000 L is more than a drum holds, 200 L.',
    ]);
  });

  it('a draw in lb, with what was looked at on the slip and the gauge', () => {
    const line = 'drawn ESK 0447 300 lb into H1 P1 seal date clear dry gauge 640/940 lb at 0915 by RW1';
    const { wanted, words, doubts } = entryOf(line);
    // 300 lb = 136.1 kg, at 0.8 kg/L 170.1 L.
    expect(words).toMatch(/^170\.1 L \(300 lb\) from 0447 drawn at XESK into H1 for P1; Looked at: seal/);
    expect(wanted[0]!.body).toMatchObject({
      millilitres: 170_100,
      note: 'Looked at: seal or bung, date, clear and bright, no water. Gauge 640 lb before, 940 lb after.',
    });
    expect(doubts).toEqual([]);
    expect(entryOf(line.replace('940', '840')).doubts).toEqual([
      expect.stringMatching(/is written, and the gauge took 200 lb/),
    ]);
  });

  it('out of the medevac reserve with why; another drum than the first in order with why', () => {
    const draw = 'drawn ESK 0448 50 L into H1 P1';
    expect(entryOf(`${draw} medevac at 0915 by RW1 because patient at GAN`).wanted[0]!.body.medevac).toBe(
      'patient at GAN',
    );
    const told = entryOf(`${draw} at 0915 by RW1 because 0447 is buried`);
    expect([told.wanted[0]!.body.note, told.doubts]).toEqual(['Because 0447 is buried.', []]);
    expect(entryOf(`${draw} at 0915 by RW1`).doubts).toEqual([
      '0447 comes before 0448: it is part used or older. If it was 0448, end with because and why.',
    ]);
    const opened = { ...inBook('0448', 80, 'XESK'), sealed: false };
    const drums = [inBook('0447', 200, 'XESK'), opened];
    expect(entryOf(`${draw} at 0915 by RW1`, { drums }).doubts).toEqual([]);
  });

  it('a drum held, rejected before pumping, or dropped from a sling', () => {
    const said = (line: string) => entryOf(line).wanted.map(({ body }) => body);
    expect(said('held 0447 at 0810 by RW1 because seal broken')).toMatchObject([
      { kind: 'held', of: { drum: '0447' }, reason: 'seal broken' },
    ]);
    expect(said('rejected 0448 at 0915 by RW1 because water found')).toMatchObject([
      { kind: 'held', reason: 'rejected before pumping: water found; marked X' },
    ]);
    expect(said('dropped ESK MAR H1 0447 at 1010 by RW1')).toMatchObject([
      { kind: 'lost', place: 'XESK', note: 'Dropped from under H1 between XESK and XMAR.' },
    ]);
  });

  it('a fill that is 2.9 % heavier than its batch is asked about, and not by whom may not enter it', () => {
    const fill = (gross: string, more = '') =>
      `filled ALD 0777 J27-041 200 L tare 19.7 gross ${gross}${more} at 1130 by SK`;
    const [doubt] = entryOf(fill('185.1')).doubts;
    expect(doubt).toContain('0.827 kg/L at 15 °C against 0.804 kg/L of its batch, 2.9 % heavier');
    expect(entryOf(fill('185.1')).wanted[0]!.body.note).toBe(doubt);
    expect(doubt).toContain('No temperature is written: taken as 15 °C.');
    expect(entryOf(fill('180.5')).doubts).toEqual([]);
    // Cold fuel is heavier: at -14 °C the same figures are those of the batch.
    expect(entryOf(fill('185.1', ' temp -14')).doubts).toEqual([]);
    const read = readLine(fill('180.5'), { ...sheet, mayFill: false });
    expect(read).toMatchObject({
      kind: 'fault',
      words: expect.stringContaining('entered by the storekeeper'),
    });
  });

  it('a count, a sling move, a fill, a surface', () => {
    expect(
      entryOf('counted LOR 2150 L 10 sealed 1 open 3 empty 09:00 by helper').wanted[0]!.body,
    ).toMatchObject({
      ...{ kind: 'counted', place: 'XLOR', method: 'dip', seenFrom: 'ground', millilitres: 2_150_000 },
      ...{ sealedDrums: 10, openDrums: 1, emptyDrums: 3 },
    });
    const dipped = entryOf('counted LOR 10 sealed 2 open 3 empty stick 34, 51.5 cm 09:00 by helper');
    expect(dipped.wanted[0]!.body).toMatchObject({
      ...{ method: 'dip', millilitres: 2_220_000, sealedDrums: 10, openDrums: 2 },
      note: 'By stick, upright drum, 34 cm = 87 L, ± 1.3 L; 51.5 cm = 132 L, ± 1.3 L.',
    });
    const left = entryOf('drawn ESK 0447 120 L left 28.6 cm lying into H1 P1 at 0915 by RW1');
    expect(left.words).toContain(', 108 L left in it, lying drum, 28.6 cm = 108 L');
    expect(left.wanted.map(({ body }) => [body.drum, body.millilitres, body.leftMillilitres])).toEqual([
      ['0447', 120_000, 108_000],
    ]);
    expect(entryOf('slung ESK MAR H1 0447 0448 at 1010 by RW1').words).toBe(
      '2 slung by H1 from XESK to XMAR: 0447, 0448',
    );
    const filled = 'filled ALD 0777 J27-041 200 L tare 19.7 gross 280.1 at 1130 by SK';
    expect(entryOf(filled).doubts[0]).toMatch(
      /^260\.4 kg in 200 L is 1\.302 kg\/L: weigh or measure again\./,
    );
    const { wanted, by } = entryOf('LOR soft 0652 helper until Fri');
    expect([by, wanted[0]!.body]).toEqual([
      'strip helper',
      {
        ...{ place: 'XLOR', state: 'soft', at: '2027-06-16T06:52Z' },
        ...{ by: 'strip helper, from paper', untilDate: '2027-06-18' },
      },
    ]);
  });

  it('another day than that of the sheet', () => {
    expect(entryOf('F08 off at 1802 on Tue').happenedAt).toBe('2027-06-15T18:02Z');
  });
});

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
