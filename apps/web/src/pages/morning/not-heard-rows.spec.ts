import { describe, expect, it } from 'vitest';
import { ageWords, awayRows, notHeardRows } from './not-heard-rows.js';
import { asOf, calendar } from './testing/morning-parts.js';
import { quietMorning } from './testing/quiet-morning.js';

describe('not heard from', () => {
  it('a strip without a fresh report is unknown, never dry, and says what is planned on', () => {
    const strip = {
      place: 'XISK',
      name: 'Isk',
      surface: null,
      counts: 'dry' as const,
      reportedAt: '2027-06-14T07:02:00Z',
      by: 'survey camp',
      reported: 'damp' as const,
      staleAt: '2027-06-14T19:02:00Z',
      untilDate: null,
      radioTime: '07:00',
      tailwindLimitKt: 3,
      stripClass: 3,
      drumsToday: 0,
      drumsADay: 6,
    };
    const report = {
      place: 'XISK',
      state: 'soft',
      at: '2027-06-15T06:40Z',
      by: 'J. Holm, by radio',
    } as const;
    const [waiting] = notHeardRows(
      { ...quietMorning, strips: [strip] },
      calendar,
      new Map([['XISK', { report, isRefused: false }]]),
    );
    expect(waiting!.words).toBe(
      'Mon 07:02: damp, survey camp. The plan counts on dry. Kept here, not sent: soft, 06:40, J. Holm, by radio.',
    );
    expect(
      notHeardRows(
        { ...quietMorning, strips: [strip, { ...strip, place: 'XLOR', surface: 'soft' }] },
        calendar,
      ),
    ).toEqual([
      {
        key: 'strip XISK',
        time: 'due 07:00',
        head: 'XISK surface',
        words: 'Mon 07:02: damp, survey camp. The plan counts on dry.',
      },
    ]);
  });

  it('a draw that was planned yesterday and that nobody has reported: its litres are still on the level', () => {
    const lor = { date: '2027-06-14', place: 'XLOR', helicopter: 'H2', programme: 'P3', litres: 795 };
    const [row] = notHeardRows(
      { ...quietMorning, notHeard: { ...quietMorning.notHeard, draws: [lor] } },
      calendar,
    );
    expect([row!.time, row!.head]).toEqual(['Mon 14', 'H2, draw at XLOR']);
    expect(row!.words).toBe(
      '795 L planned for P3, no report. The level still counts on them: ask H2, or ask for a count.',
    );
  });

  it('old counts each by themselves, places that were never counted in one line', () => {
    const caches = [
      { place: 'XKNA', countedAt: '2027-06-03T16:00:00Z', why: ['The last count is more than 7 days old.'] },
      { place: 'XBIR', countedAt: null, why: [] },
      { place: 'XFAL', countedAt: null, why: [] },
    ];
    const rows = notHeardRows({ ...quietMorning, notHeard: { ...quietMorning.notHeard, caches } }, calendar);
    expect(rows.map(({ time, head }) => [time, head])).toEqual([
      ['11 days', 'XKNA, last count Thu 3 June'],
      ['never', 'Not counted yet'],
    ]);
    expect(rows[1]!.words).toContain('XBIR, XFAL.');
  });

  it.each([
    ['2027-06-15T06:30:00Z', '25 min'],
    ['2027-06-14T06:00:00Z', '24 h'],
    ['2027-06-03T16:00:00Z', '11 days'],
  ])('%s is %s ago', (since, words) => {
    expect(ageWords(since, asOf)).toBe(words);
  });
});

describe('who is away', () => {
  const away = (word: 'in the circuit' | 'overdue' | 'down and well') => ({
    ...quietMorning,
    away: [
      {
        flight: 'F01',
        state: 'away',
        aircraft: 'A1',
        pilot: 'FW1',
        fromPlace: 'XMER',
        toPlace: 'XMER',
        stops: [{ place: 'XGAN', drums: 4 }],
        offAt: '2027-06-15T05:00:00Z',
        landedAt: null,
        expectedBackAt: '2027-06-15T06:20:00Z',
        overdueAt: '2027-06-15T06:50:00Z',
        word,
      },
    ],
  });
  it('overdue says what to do and by which rule; in the circuit says when it would be', () => {
    const [overdue] = awayRows(away('overdue'), calendar);
    expect(overdue).toMatchObject({ head: 'F01, A1 XMER-XGAN, FW1', grave: true });
    expect(overdue!.words).toContain('Call it, its strips and the other crews on the radio now.');
    expect(overdue!.words).toContain('manual 4.2');
    expect(awayRows(away('in the circuit'), calendar)[0]!.words).toContain('Overdue at 06:50.');
  });
});
