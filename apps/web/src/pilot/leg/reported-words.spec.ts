import { describe, expect, it } from 'vitest';
import { flightAsFlown } from '../loaded/as-loaded.js';
import { type ReportedDrum } from '../reports/own-reports.js';
import { exampleFlight } from '../testing/example-flight.js';
import { drumsOnLeg } from './leg-words.js';
import { reportedWords } from './reported-words.js';

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
