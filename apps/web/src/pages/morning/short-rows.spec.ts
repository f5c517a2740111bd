import { describe, expect, it } from 'vitest';
import { calendarOf } from '../../api/index.js';
import { decideRows } from './decide-rows.js';
import { calendar, flight, strip } from './testing/morning-parts.js';
import { quietMorning } from './testing/quiet-morning.js';

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
        'Wed 16',
        'XFAL below minimum',
        '1,000 L usable, minimum 1,200 L, with every approved and offered flight. At its minimum again Thu 17. Re-plan, or let less be drawn.',
      ],
    ]);
  });

  it('a cache that flights lift again is due by the day it falls short; one that is short now, by this evening', () => {
    const low = { minimumLitres: 1200, litres: 1000, backOn: '2027-06-18' };
    const belowMinimum = [
      { ...low, place: 'XKNA', date: null },
      { ...low, place: 'XMAR', date: '2027-06-16' },
    ];
    const flights = [
      flight('F05', '2027-06-15', '2027-06-15T17:00:00Z', 'XLOR is soft.'),
      flight('F06', '2027-06-17', '2027-06-16T17:00:00Z', 'XLOR is soft.'),
    ];
    const rows = decideRows({ ...quietMorning, flights, belowMinimum }, calendar);
    expect(rows.map(({ time, head }) => `${time} ${head}`)).toEqual([
      '17:00 F05, B1 XALD-XLOR',
      'Tue 15 XKNA below minimum now',
      'Wed 16 XMAR below minimum',
      'Wed 17:00 F06, B1 XALD-XLOR, Thu 17',
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
      act: { label: 'Plan the week', path: '/week#plan' },
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
