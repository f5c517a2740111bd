import { describe, expect, it } from 'vitest';
import { readLine } from './read-line.js';
import { entryOf, faultOf, sheet } from './testing/example-lines.js';
import { toldCode, toldTotals, unlikeWords } from './use-own-sheet.js';

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
