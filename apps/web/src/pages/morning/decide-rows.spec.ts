import { describe, expect, it } from 'vitest';
import { decideRows } from './decide-rows.js';
import { handoverLines } from './handover-words.js';
import { asOf, calendar, flight } from './testing/morning-parts.js';
import { quietMorning } from './testing/quiet-morning.js';

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
      {
        id: 'load',
        mayHurt: true,
        place: null,
        what: 'F06: the load does not hold.',
        whatNext: 'Ask the crew.',
      },
      {
        id: 'times',
        mayHurt: false,
        place: null,
        what: 'F03: two take-off times.',
        whatNext: 'Ask the crew.',
      },
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

  it('a booked flight that cannot be flown as it is booked is a line with its passengers, by its day pack', () => {
    const booked = [
      {
        id: 'X2',
        date: '2027-06-16',
        aircraft: 'C1',
        route: ['XALD', 'XCIN', 'XALD'],
        purpose: 'building panels to XCIN',
        passengers: 2,
        needsDecision: 'X2, Wed 16 Jun, XCIN: XCIN is reported closed. Wait for a report that it is open.',
        by: '2027-06-15T17:00:00Z',
      },
    ];
    const [row] = decideRows({ ...quietMorning, booked }, calendar);
    expect(row).toMatchObject({ head: 'X2, C1 XALD-XCIN, Wed 16', state: 'Booked', needsDecision: true });
    expect(row!.words).toBe(
      'XCIN is reported closed. Wait for a report that it is open. It is booked: building panels to XCIN, 2 passengers. Tell whoever booked it.',
    );
  });

  it('what is raised of a cache leads to it', () => {
    const what = 'XCIN count by Demo storekeeper cannot be so.';
    const raised = [{ id: 'c', mayHurt: true, place: 'XCIN', what, whatNext: 'Ask again.' }];
    const fuel = [
      {
        ...{ place: 'XCIN', usableLitres: 2150, bookLitres: 2400, heldLitres: 0, pastRetestLitres: 0 },
        ...{ reserveLitres: 0, reserveSetLitres: 0, notReportedLitres: 0, countedAt: null },
        confidence: 'high' as const,
      },
    ];
    const [row] = decideRows({ ...quietMorning, raised, fuel }, calendar);
    expect(row!.act).toEqual({ kind: 'seen', raised: 'c', path: '/caches/XCIN' });
    const [elsewhere] = decideRows({ ...quietMorning, raised }, calendar);
    expect(elsewhere!.act).toEqual({ kind: 'seen', raised: 'c' });
  });

  it('more is raised than the page lists: how many is said after each kind, with the way to all of it', () => {
    const raised = [
      {
        id: 'load',
        mayHurt: true,
        place: null,
        what: 'F06: the load does not hold.',
        whatNext: 'Ask the crew.',
      },
      {
        id: 'times',
        mayHurt: false,
        place: null,
        what: 'F03: two take-off times.',
        whatNext: 'Ask the crew.',
      },
    ];
    const rows = decideRows({ ...quietMorning, raised, moreRaised: { mayHurt: 3, rest: 12 } }, calendar);
    expect(rows.map(({ time, head }) => [time, head])).toEqual([
      ['now', 'F06: the load does not hold.'],
      ['now', '3 more raised'],
      ['to see', 'F03: two take-off times.'],
      ['to see', '12 more raised'],
    ]);
    expect(rows[1]!.words).toBe('They can hurt people. Listed on Drums, Raised.');
    expect(rows[3]!.act).toMatchObject({ label: '12 more: Drums, Raised', path: '/drums?view=raised' });
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

  it('an approved flight past its hour stands until it is given, moved or called off, and says what that takes', () => {
    const f06 = { ...flight('F06', '2027-06-15', '2027-06-15T06:43:00Z'), state: 'approved' };
    const [row] = decideRows({ ...quietMorning, flights: [f06] }, calendar);
    expect(row).toMatchObject({
      time: '06:43',
      state: 'Approved, not given, 12 min late',
      words:
        '6 drums, FW3. Give it, move it, or call it off. If it does not fly: XLOR falls below minimum today. And one cache more.',
      act: { label: 'Open flight', path: '/week/F06' },
    });
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
