import { makeLoadSheet } from '@drumline/loading';
import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { Report } from '../../phone/index.js';
import { dayRow } from '../day/day-row.js';
import { differences } from '../day/newer-version.js';
import { oddTime } from '../drums-here/odd-time.js';
import { flightAsFlown } from '../loaded/as-loaded.js';
import { ownReports, type ReportedDrum } from '../reports/own-reports.js';
import { notOff, tookOff } from '../reports/reports.js';
import { exampleDay, exampleFlight, exampleReporter } from '../testing/example-flight.js';
import { drumsOnLeg, legWords, stripWords, surfaceAt } from './leg-words.js';
import { reportedWords } from './reported-words.js';
import { tooManyFor } from './soft-rule.js';

const xgan = exampleDay.places[0]!;

describe('the words of a leg', () => {
  const words = legWords(exampleFlight, 0)!;

  it('name the drums aboard; on the way home there are none', () => {
    expect(words.drums).toEqual(['0434', '0435', '0437']);
    expect(legWords(exampleFlight, 1)!.drums).toEqual([]);
  });

  it('say tailwind, committal point, and what a soft strip takes off', () => {
    expect(words.goBack.main).toBe('Tailwind more than 3 kt');
    expect(words.goBack.rest.join(' ')).toContain('Decide by 1.1 NM final, at the stream fork');
  });

  it('let the heavier of plan and named drums decide whether to unload or stay', () => {
    expect(words.leave!.over).toBe(false);
    const stop = exampleFlight.stops[0]!;
    const heavy = { ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } };
    const leave = legWords({ ...exampleFlight, stops: [heavy] }, 0)!.leave!;
    expect(leave).toMatchObject({ over: true, main: 'Stay: 11 lb too heavy, dry' });
    expect(leave.rest[0]).toContain('7,911 lb, take-off limit 7,900 lb dry');
    expect(leave.rest[1]).toMatch(/: .* lb, .* spare$/);
  });

  it('tell the soft landing only where it would be nearer than the limit that binds', () => {
    const { sheet } = exampleFlight;
    const [leg, ...others] = sheet!.legs;
    const withSpare =
      (beginning: string, end: string, spareLb: number) => (row: NonNullable<typeof leg>['rows'][number]) =>
        row.label.startsWith(beginning) && row.label.endsWith(end)
          ? { ...row, limit: { lb: pounds(8000), spareLb: pounds(spareLb), holds: spareLb >= 0 } }
          : row;
    const told = (softLb: number) => {
      const rows = leg!.rows
        .map(withSpare('take-off ', '', 20))
        .map(withSpare('land ', '', 700))
        .map(withSpare('land ', ', soft', softLb));
      const flight = { ...exampleFlight, sheet: { ...sheet!, legs: [{ ...leg!, rows }, ...others] } };
      return legWords(flight, 0)!.binds.rest;
    };
    expect(told(100)).not.toContain('soft');
    expect(told(-80)).toContain('landing soft: 80 lb over');
    const rows = leg!.rows.map(withSpare('land ', ', soft', -80));
    const flight = { ...exampleFlight, sheet: { ...sheet!, legs: [{ ...leg!, rows }, ...others] } };
    // Reported soft, or unknown: that is what binds.
    expect(legWords(flight, 0, true)!.binds.main).toBe('XGAN landing, soft');
    expect(legWords(flight, 0, true)!.binds.rest).toMatch(/^80 lb over · /);
  });

  it('on the way home say where else to land, never to go back to the strip', () => {
    const { goBack } = legWords(exampleFlight, 1)!;
    expect(goBack).toMatchObject({
      of: 'If XMER closes',
      main: 'No alternate within fuel and limits',
    });
    expect(goBack.rest[0]).toBe('Hear from XMER before you leave XGAN');
  });

  it('are none without a sheet', () => {
    expect(legWords({ ...exampleFlight, sheet: null }, 0)).toBeNull();
  });
});

describe('the surface as it counts now', () => {
  const report = { place: 'XGAN', state: 'dry' as const, at: '2027-06-15T05:35Z', by: 'strip helper' };
  const at = (clock: string) =>
    surfaceAt(exampleDay, [report], { code: 'XGAN', now: new Date(`2027-06-15T${clock}:00Z`) });

  it('is the last report while that is fresh, then unknown; the report is still named', () => {
    expect(at('06:00').state).toBe('dry');
    expect(at('12:00')).toEqual({ state: null, report });
    expect(surfaceAt(exampleDay, [], { code: 'XGAN', now: new Date() })).toEqual({
      state: null,
      report: null,
    });
  });
});

it('a strip is told with its length, slope, and that it is one-way', () => {
  expect(stripWords(xgan)).toBe('1,250 ft, earth, 8 % slope, one-way.');
});

describe('a newer version', () => {
  it('is told by what differs, the drums first, without the totals that are typed blind', () => {
    const [stop] = exampleFlight.stops;
    const newer = { ...exampleFlight, version: 4, departs: '08:00', stops: [{ ...stop!, drums: ['0434'] }] };
    expect(differences(exampleFlight, newer).map(({ of, opened, newest }) => [of, opened, newest])).toEqual([
      ['Drums', '3', '1'],
      ['Off the load', '', '0435 0437'],
      ['Off at', '07:10', '08:00'],
    ]);
  });

  it('and where a drum stands: one that changed its position is named with both', () => {
    const { request } = exampleFlight;
    const drums = request!.load.drums.map((drum) =>
      drum.number === '0437' ? { ...drum, position: 'R2R' } : drum,
    );
    const sheet = makeLoadSheet({ ...request!, load: { ...request!.load, drums } });
    const rows = differences(exampleFlight, { ...exampleFlight, version: 4, sheet });
    expect(rows[0]).toEqual({ of: '0437 in', opened: 'R2L', newest: 'R2R' });
    expect(rows.map(({ of }) => of)).toContain('Check code');
  });

  it('the surface and the limit of each landing, the route and the pilot', () => {
    const request = exampleFlight.request!;
    const [out, home] = request.load.request.legs;
    const soft = { ...out!, to: { ...out!.to, surface: 'soft' as const } };
    const load = { ...request.load, request: { ...request.load.request, legs: [soft, home!] } };
    const sheet = makeLoadSheet({ ...request, load, flight: { ...request.flight, pilot: 'FW2' } });
    const rows = differences(exampleFlight, { ...exampleFlight, version: 4, sheet });
    const told = rows.map(({ of }) => of);
    expect(told).toEqual(expect.arrayContaining(['Pilot', 'XGAN is', 'Limit XGAN']));
    expect(rows.find(({ of }) => of === 'XGAN is')).toMatchObject({ opened: 'dry', newest: 'soft' });
  });
});

describe('drums that were brought back', () => {
  const back = { id: 'm1', drum: '0437', kind: 'brought home', place: 'XMER', leg: 2, at: '' } as const;
  const left = (drum: string) =>
    ({ ...back, drum, id: drum, kind: 'left at', place: 'XGAN', leg: 1, condition: 'sound' }) as const;
  const said = [left('0434'), left('0435'), { ...back, condition: 'leaking' as const }];

  it('are on the leg home: in its drums, its weights, its dangerous goods and its code square', () => {
    const { request } = exampleFlight;
    const fields = [{ label: 'Drums', value: { from: 'drum numbers' } }] as const;
    const goods = { ...request!.goods, set: { ...request!.goods.set!, fields } };
    const flown = flightAsFlown({ ...exampleFlight, request: { ...request!, goods } }, said);
    expect(drumsOnLeg(flown, 1, said).onSheet).toEqual(['0437']);
    const zeroFuel = ({ sheet }: typeof flown) =>
      sheet!.legs[1]!.rows.find(({ label }) => label === 'zero fuel')!.lb;
    // 180.4 kg is printed 398 lb.
    expect(zeroFuel(flown) - zeroFuel(exampleFlight)).toBe(398);
    expect(flown.sheet!.legs[1]!.particulars).toMatchObject([{ label: 'Drums', value: '0437' }]);
    expect(flown.sheet!.square).not.toBe(exampleFlight.sheet!.square);
  });

  it('and were on no sheet, as an empty, are named as being in no weight', () => {
    const empty = { ...back, drum: '0399', condition: 'sound' as const };
    expect(drumsOnLeg(exampleFlight, 1, [empty])).toEqual({ onSheet: [], besides: ['0399'] });
    expect(drumsOnLeg(exampleFlight, 0, [empty]).besides).toEqual([]);
  });
});

describe('once drums are reported on a leg', () => {
  const at = { place: 'XGAN', leg: 1, at: '' } as const;
  const left = (drum: string) => ({ ...at, drum, id: drum, kind: 'left at', condition: 'sound' }) as const;
  const back = (drum: string) =>
    ({
      ...at,
      leg: 2,
      place: 'XMER',
      drum,
      id: drum,
      kind: 'brought home',
      condition: 'seal broken',
    }) as const;
  const after = (...reported: readonly ReportedDrum[]) => {
    const flown = flightAsFlown(exampleFlight, reported);
    return { flown, words: reportedWords(flown, 0, { planned: exampleFlight, reported, softCounts: false }) };
  };
  const arrivalLb = exampleFlight.sheet!.legs[0]!.goBack.leaveAgain!.arrivalLb;

  it('what is still aboard is named, and weighed: 395 and 396 lb less than on arrival', () => {
    const { words } = after(left('0434'), left('0435'), back('0437'));
    expect(words).toMatchObject({
      aboard: ['0437'],
      left: ['0434', '0435'],
      back: 1,
      leave: { over: false },
    });
    const figure = (arrivalLb - 395 - 396).toLocaleString('en-GB');
    expect(words!.leave!.rest[0]).toContain(`With what is still aboard: ${figure} lb, take-off limit`);
  });

  it('a drum of which nothing is said yet is still aboard', () => {
    expect(after(left('0434')).words!.aboard).toEqual(['0435', '0437']);
    const empty = after(left('0434'), left('0435'), left('0437')).words!;
    expect(empty.aboard).toEqual([]);
    expect(empty.leave!.main).toMatch(/^May leave empty/);
  });

  it('left somewhere else: where it lies is said, and nothing is figured as if the aeroplane stood at the planned strip', () => {
    const { words } = after(left('0434'), { ...left('0435'), place: 'XCIN' });
    expect(words!.leftWords).toBe('Left here: 0434. Left at XCIN: 0435');
    expect(words!.leave).toMatchObject({ over: true, main: 'Not figured for XCIN' });
    expect(words!.leave!.rest.join(' ')).toContain('are of XGAN, as planned');
    expect(after(left('0434')).words!.leftWords).toBe('Left here: 0434');
  });

  it('nothing on another leg, or before any report, is told so', () => {
    const { flown } = after(left('0434'));
    expect(
      reportedWords(flown, 1, {
        planned: exampleFlight,
        reported: [left('0434'), back('0437')],
        softCounts: false,
      }),
    ).toBeNull();
    expect(after().words).toBeNull();
  });

  it('no line of the legs to come leaves, takes or moves a drum: it lands with what is aboard or not', () => {
    const { flown } = after(left('0434'), left('0435'), back('0437'));
    const home = flown.sheet!.legs[1]!.goBack;
    expect(home.ifSoft).toMatchObject({ take: 1, leave: [], moves: [] });
    expect(home.lines.join(' ')).not.toMatch(/0434|0435|leave 0|take \d| to R\d/);
    expect(home.lines.join(' ')).toMatch(/If XMER is soft: lands with [\d,]+ lb, within its soft limit\./);
    expect(flown.sheet!.square).not.toContain('LEAVE 0');
  });
});

describe('the list of the day', () => {
  const none = { drums: [], downAt: null };
  const at = { place: 'XGAN', leg: 1, at: '', condition: 'sound' } as const;
  const left = (drum: string) => ({ ...at, drum, id: drum, kind: 'left at' }) as const;
  const stop = exampleFlight.stops[0]!;
  const heavy = {
    ...exampleFlight,
    stops: [{ ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } }],
  };

  it('says of a surface that counts as soft what the card says, with the surface named', () => {
    for (const softCounts of [true, false]) {
      const { leave, binds } = legWords(heavy, 0, softCounts)!;
      expect(dayRow(heavy, none, softCounts)).toEqual({
        drums: '3 drums',
        lines: [
          { of: 'Binds', words: `${binds.main}, ${binds.rest}` },
          { of: null, words: leave!.main },
        ],
      });
    }
    expect(dayRow(heavy, none, true).lines[1]!.words).toBe('Stay: 511 lb too heavy, soft');
    expect(dayRow(heavy, none, false).lines[1]!.words).toBe('Stay: 11 lb too heavy, dry');
  });

  it('after a report it says what is still aboard, and no weight of the plan', () => {
    const back = { ...at, drum: '0437', id: '0437', leg: 2, place: 'XMER', kind: 'brought home' } as const;
    const drums = [left('0434'), left('0435'), back];
    expect(dayRow(heavy, { drums, downAt: null }, true)).toEqual({
      drums: '1 still aboard',
      lines: [{ of: null, words: '2 left, 1 brought back, by this phone' }],
    });
    expect(dayRow(heavy, { drums, downAt: '2027-06-15T09:00Z' }, true).drums).toBe('3 drums');
  });
});

describe('where soft counts', () => {
  it('unload or stay has the soft figure first, by its name, and the dry one after it', () => {
    const stop = exampleFlight.stops[0]!;
    const heavy = { ...stop, planned: { arrivalLb: pounds(7911), overLb: pounds(11) } };
    const leave = legWords({ ...exampleFlight, stops: [heavy] }, 0, true)!.leave!;
    // 7,911 less (7,900 less 500 when soft).
    expect(leave.main).toBe('Stay: 511 lb too heavy, soft');
    expect(leave.rest.at(-1)).toBe('If dry: 11 lb over');
  });

  it('more drums than soft takes wait, and the sheet says which stays behind; a fresh dry report lets them go', () => {
    const [tooMany] = tooManyFor(exampleFlight, () => null);
    expect(tooMany).toMatchObject({ place: 'XGAN', aboard: 3, mayGo: 2 });
    expect(tooMany!.words).toBe('No report of XGAN is fresh, so soft counts: 2 drums may go, 3 are aboard.');
    expect(tooManyFor(exampleFlight, () => 'soft')[0]!.words).toContain('XGAN is soft');
    expect(tooManyFor(exampleFlight, () => 'dry')).toEqual([]);
    expect(tooManyFor(exampleFlight, () => 'closed')[0]!.mayGo).toBeNull();
  });
});

describe('took off', () => {
  const day = 'Tuesday 15 June';
  const at = (today: string, clock: string) => oddTime(exampleFlight, { day, today, clock });

  it('is one tap on its day and half of the day; on another it is asked once', () => {
    expect(at(day, '07:20')).toBeNull();
    expect(at('Monday 14 June', '07:20')).toBe(
      'F06 is for Tuesday 15 June 07:10; now it is Monday 14 June 07:20.',
    );
    expect(at(day, '13:20')).toBe('F06 is for Tuesday 15 June 07:10; now it is 13:20.');
  });

  it('by mistake is taken back: base is told, and the phone has it on the ground again', () => {
    const kept = (report: Report) => ({ flight: 'F06', requests: report.requests });
    const off = kept(tookOff(exampleReporter, exampleFlight));
    const not = kept(notOff(exampleReporter, exampleFlight));
    expect(ownReports([off], 'F06')).toMatchObject({ offAt: '2027-06-15T06:21:30Z', notOff: false });
    // The newest first.
    expect(ownReports([not, off], 'F06')).toMatchObject({ offAt: null, notOff: true });
    expect(ownReports([off, not, off], 'F06').notOff).toBe(false);
    expect(not.requests[0]!.body).toMatchObject({
      kind: 'problem',
      words: 'Wrongly reported: F06 took off. It has not taken off.',
    });
  });
});
