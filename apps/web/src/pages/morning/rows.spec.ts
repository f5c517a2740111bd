import { describe, expect, it } from 'vitest';
import { calendarOf } from '../../api/index.js';
import { decideRows } from './decide-rows.js';
import { handoverLines } from './handover-words.js';
import type { Morning } from './morning-read.js';
import { ageWords, awayRows, notHeardRows } from './not-heard-rows.js';
import { quietMorning } from './testing/quiet-morning.js';

const { asOf } = quietMorning;
const calendar = calendarOf(new Date(asOf), 'Etc/GMT');
const strip = (place: string): Morning['strips'][number] => ({
  ...{ place, name: place, surface: null, counts: 'dry', reportedAt: null, by: null, reported: null },
  ...{ staleAt: null, untilDate: null, radioTime: null, tailwindLimitKt: null, stripClass: 2 },
  ...{ drumsToday: 0, drumsADay: null },
});
const flight = (id: string, date: string, by: string, needsDecision: string | null = null) => ({
  id,
  state: 'offered',
  needsDecision,
  by,
  date,
  departs: '08:00',
  aircraft: 'B1',
  pilot: 'FW3',
  route: ['XALD', 'XLOR', 'XALD'],
  drums: 6,
  ifDeclined: 'Without it XLOR falls below minimum today. Without it XFAL falls below minimum on Thu.',
});

describe('what is handed over', () => {
  it('says the state of a flight, and no empty sentence where there is none', () => {
    const low = { place: 'XMAR', date: '2027-06-16', litres: 150, criticalLitres: 200 };
    const flights = [flight('F05', '2027-06-15', '2027-06-15T07:30:00Z')];
    const entries = { since: quietMorning.since, silence: null, items: [] };
    const lines = handoverLines(
      {
        morning: { ...quietMorning, flights, belowCritical: [low] as Morning['belowCritical'] },
        entries,
        said: [],
      },
      calendar,
    );
    expect(lines.map(({ words }) => words)).toEqual([
      expect.stringMatching(/^F05, B1 XALD-XLOR, 07:30\. Offered\. 6 drums/),
      expect.stringMatching(/^XMAR below critical, Wed 16\. 150 L usable/),
    ]);
  });
});

describe('decide now', () => {
  it('flights of the next day by their latest time, later days as one line each, marked ones always by themselves', () => {
    const flights = [
      flight('F05', '2027-06-15', '2027-06-15T07:30:00Z', 'XLOR is soft.'),
      flight('F09', '2027-06-18', '2027-06-17T17:00:00Z'),
      flight('F10', '2027-06-18', '2027-06-17T17:00:00Z'),
      flight('F11', '2027-06-19', '2027-06-18T17:00:00Z', 'XLOR is closed.'),
    ];
    const rows = decideRows({ ...quietMorning, flights }, calendar);
    expect(rows.map(({ time, head, needsDecision }) => [time, head, needsDecision])).toEqual([
      ['07:30', 'F05, B1 XALD-XLOR', true],
      ['Thu 17:00', '2 flights to approve for Fri 18', false],
      ['Fri 17:00', 'F11, B1 XALD-XLOR, Sat 19', true],
    ]);
    expect(rows[0]!.words).toBe(
      'XLOR is soft. If declined: XLOR falls below minimum today. And one cache more.',
    );
  });

  it('a hold comes first until everybody is called: who is left, with the way to its scripts; Handover has it too', () => {
    const hold = { hold: 'h1', reason: 'water found', by: 'K. Aske', at: asOf, drums: 44, called: 2 };
    const openCalls = [{ ...hold, of: { batch: 'J27-041' }, toCall: ['XALD', 'XLOR', 'F001'] }];
    const flights = [flight('F05', '2027-06-15', '2027-06-15T06:00:00Z')];
    const morning = { ...quietMorning, flights, openCalls };
    const [row, next] = decideRows(morning, calendar);
    expect(row).toMatchObject({
      head: 'J27-041: 3 to call, 2 called',
      state: 'HOLD',
      words: '44 drums held by K. Aske: water found. To call by radio: XALD, XLOR, F001.',
      act: { path: '/drums?act=hold&batch=J27-041' },
    });
    expect(next!.key).toBe('F05');
    const entries = { since: quietMorning.since, silence: null, items: [] };
    const [line] = handoverLines({ morning, entries, said: [] }, calendar);
    expect(line!.words).toMatch(/^J27-041: 3 to call, 2 called, .*HOLD\. 44 drums held/);
  });

  it('what is raised and can hurt people comes before every flight; the rest of what is raised last', () => {
    const raised = [
      { id: 'load', mayHurt: true, what: 'F06: the load does not hold.', whatNext: 'Ask the crew.' },
      { id: 'times', mayHurt: false, what: 'F03: two take-off times.', whatNext: 'Ask the crew.' },
    ];
    const flights = [flight('F05', '2027-06-15', '2027-06-15T06:00:00Z', 'XLOR is soft.')];
    const { by: _, ifDeclined: __, ...f01 } = { ...flight('F01', '2027-06-14', asOf), state: 'approved' };
    const rows = decideRows({ ...quietMorning, flights, raised, didTheyFly: [f01] }, calendar);
    expect(rows.map(({ time, head }) => [time, head])).toEqual([
      ['now', 'F06: the load does not hold.'],
      ['Mon 14 08:00', 'F01, B1 XALD-XLOR, Mon 14 08:00: did it fly?'],
      ['06:00', 'F05, B1 XALD-XLOR'],
      ['to see', 'F03: two take-off times.'],
    ]);
  });

  it('a base that cannot fill in time for a flight that is given is a line of its own, by its off time', () => {
    const short = ['3 drums to fill by Mon 14 Jun, and 0 can be filled by then, at 12 a day.'];
    const fillsShort = [{ place: 'XMER', short, flights: ['F015'], by: '2027-06-15T09:04:00Z' }];
    const [row] = decideRows({ ...quietMorning, fillsShort }, calendar);
    expect(row).toMatchObject({
      time: '09:04',
      head: 'XMER cannot fill in time for F015',
      words: `${short[0]} Fill them, amend the flight, or call it off.`,
    });
  });

  it('a flight whose latest time is past says by how much', () => {
    const rows = decideRows(
      { ...quietMorning, flights: [flight('F14', '2027-06-15', '2027-06-15T06:30:00Z')] },
      calendar,
    );
    expect(rows.map(({ state }) => state)).toEqual(['Offered, late by 25 min']);
  });

  it('a flight whose day is over stands before all else: did it fly; and one that was never approved says so', () => {
    const { by: _, ifDeclined: __, ...f01 } = { ...flight('F01', '2027-06-14', asOf), state: 'approved' };
    const didTheyFly = [f01, { ...f01, id: 'F03', state: 'offered' }];
    const flights = [flight('F05', '2027-06-15', '2027-06-15T06:00:00Z')];
    const rows = decideRows({ ...quietMorning, flights, didTheyFly }, calendar);
    expect(rows.map(({ head, act }) => [head, act.kind === 'open' && act.path])).toEqual([
      ['F01, B1 XALD-XLOR, Mon 14 08:00: did it fly?', '/week/F01?from=2027-06-14'],
      ['F03, B1 XALD-XLOR, Mon 14 08:00: its day is over', '/week/F03?from=2027-06-14'],
      ['F05, B1 XALD-XLOR', '/week/F05'],
    ]);
  });

  it('a change that needs two people says who has signed and who has still to sign, as Signatures does', () => {
    const open = { id: 'p', subject: 'strip limit XLOR-B', act: 'strip limits', mayAgree: true };
    const proposals = [
      {
        ...{ ...open, proposedAt: '2027-06-14T06:00:00Z', signedBy: [] },
        stillToSign: { people: 2, roles: ['operations manager', 'fuel quality'] },
      },
    ];
    const [row] = decideRows({ ...quietMorning, proposals }, calendar);
    expect(row!.state).toBe('2 of operations manager, fuel quality have still to sign');
    expect(row!.words).toBe('Not signed yet.');
  });

  // product.md, T5: CIN 2,150 L against a book of 2,400 L, 48 L tolerance.
  it('a count that differs says by how much, and what the plan uses', () => {
    const cases = [
      {
        count: 'c',
        place: 'XCIN',
        at: '2027-06-14T07:30:00Z',
        countedBy: ['RW2'],
        countedLitres: 2150,
        bookLitres: 2400,
        toleranceLitres: 48,
        proposed: 0,
      },
    ];
    const [row] = decideRows({ ...quietMorning, cases }, calendar);
    expect(row!.state).toBe('250 L short, 48 L allowed');
    expect(row!.words).toContain('The plan uses 2,150 L.');
  });
});

describe('decide now, where fuel runs short', () => {
  const below = [
    { place: 'XKNA', date: null, litres: 180, criticalLitres: 200 },
    { place: 'XLOR', date: '2027-06-16', litres: -1515, criticalLitres: 200 },
  ];

  it('a cache that no offered flight keeps above critical is a line of its own, by its day', () => {
    const flights = [flight('F05', '2027-06-16', '2027-06-15T17:00:00Z')];
    const rows = decideRows({ ...quietMorning, flights, belowCritical: below }, calendar);
    expect(rows.map(({ time, head }) => [time, head])).toEqual([
      ['now', 'XKNA below critical'],
      ['17:00', 'F05, B1 XALD-XLOR, Wed 16'],
      ['Wed 16', 'XLOR below critical'],
    ]);
    expect(rows[0]!.words).toContain('180 L usable, critical 200 L');
    expect(rows[2]!.words).toContain('Run out, 1,515 L short');
    expect(rows[2]!.act).toEqual({ kind: 'open', label: 'Open cache', path: '/caches/XLOR' });
  });

  it('a cache below its minimum, now or later, is a line too: no flight lifts it, or when it is back', () => {
    const low = { minimumLitres: 1200, date: null, litres: 1000 };
    const belowMinimum = [
      { ...low, place: 'XLOR', backOn: null },
      { ...low, place: 'XFAL', date: '2027-06-16', backOn: '2027-06-17' },
    ];
    const strips = [strip('XLOR'), strip('XFAL')];
    const rows = decideRows({ ...quietMorning, strips, belowMinimum }, calendar);
    expect(rows.map(({ time, head, words }) => [time, head, words])).toEqual([
      [
        'now',
        'XLOR below minimum',
        '1,000 L usable, minimum 1,200 L, with every approved and offered flight. Re-plan, or let less be drawn.',
      ],
      [
        'Thu 17',
        'XFAL below minimum Wed 16',
        '1,000 L usable, minimum 1,200 L, with every approved and offered flight. At its minimum again Thu 17. Re-plan, or let less be drawn.',
      ],
    ]);
  });

  it('at a pad a re-plan changes nothing: a sling is what helps', () => {
    const [pad] = decideRows(
      { ...quietMorning, strips: [strip('XLOR')], belowCritical: [below[0]!] },
      calendar,
    );
    expect(pad!.canReplan).toBe(false);
    expect(pad!.words).toBe(
      '180 L usable, critical 200 L, with every approved and offered flight. Only slings bring drums there. Plan a sling, or bring one forward, or let less be drawn.',
    );
    const [there] = decideRows(
      { ...quietMorning, strips: [strip('XKNA')], belowCritical: [below[0]!] },
      calendar,
    );
    expect(there!.canReplan).toBe(true);
  });

  it('west of Greenwich Tue 17:00 is due before Wed 16, though it is the same moment as Wed in Greenwich', () => {
    const west = calendarOf(new Date('2027-06-15T14:00:00Z'), 'Etc/GMT+8');
    const flights = [flight('F05', '2027-06-16', '2027-06-16T01:00:00Z')];
    const critical = [{ place: 'XLOR', date: '2027-06-16', litres: 100, criticalLitres: 200 }];
    const rows = decideRows({ ...quietMorning, flights, belowCritical: critical }, west);
    expect(rows.map(({ time }) => time)).toEqual(['17:00', 'Wed 16']);
  });

  it('where no plan stands the next step is to plan the week, with what falls', () => {
    const rows = decideRows({ ...quietMorning, flightsStanding: 0, belowCritical: below }, calendar);
    expect(rows).toHaveLength(1);
    expect(rows[0]).toMatchObject({
      head: 'No plan stands',
      words: 'Below critical without flights: XKNA now, XLOR Wed 16.',
      act: { label: 'Plan the week', path: '/week' },
    });
  });

  it('a picture of before, while base is silent, says of when it is and offers no plan that may be there already', () => {
    const [row] = decideRows({ ...quietMorning, flightsStanding: 0, belowCritical: below }, calendar, true);
    expect(row).toMatchObject({
      time: '06:55',
      head: 'No plan stood at 06:55',
      words:
        'Base is silent: whether one was accepted since is not known here. At 06:55: Below critical without flights: XKNA now, XLOR Wed 16.',
      act: { label: 'Open week', path: '/week' },
    });
  });

  it('a count of this morning waits before a flight that is due tonight', () => {
    const flights = [flight('F05', '2027-06-16', '2027-06-15T17:00:00Z')];
    const count = {
      count: 'c',
      place: 'XCIN',
      at: '2027-06-15T06:04:00Z',
      countedBy: ['RW2'],
      countedLitres: 2150,
      bookLitres: 2400,
      toleranceLitres: 48,
      proposed: 0,
    };
    expect(
      decideRows({ ...quietMorning, flights, cases: [count] }, calendar).map(({ time }) => time),
    ).toEqual(['06:04', '17:00']);
  });
});

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
