import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.js';
import { entryOf, inBook, sheet } from './testing/example-lines.js';

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
