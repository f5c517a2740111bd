import { describe, expect, it } from 'vitest';
import { drawnLegs } from './chart-legs.js';
import { chartScale } from './chart-scale.js';
import { dayInWords, movedOn } from './day-legs.js';
import { flight, place, size, sling } from './testing/example-map.js';

describe('legs of a day', () => {
  it('the way back over the same ground is not drawn again', () => {
    const [f05] = movedOn({ flights: [flight('F05')], booked: [], slings: [] });
    expect(f05!.route).toEqual(['XALD', 'XLOR', 'XALD']);
    expect(f05!.legs).toMatchObject([{ from: 'XALD', to: 'XLOR', line: 'offered', label: 'F05, 6 drums' }]);
  });

  it('each leg says the drums that are still aboard', () => {
    const stops = [
      { place: 'XCIN', drums: 2 },
      { place: 'XLOR', drums: 4 },
    ];
    const [moved] = movedOn({ flights: [flight('F05', { stops })], booked: [], slings: [] });
    expect(moved!.load).toBe('6 drums');
    expect(moved!.legs.map(({ from, to, label }) => `${from}-${to} ${label}`)).toEqual([
      'XALD-XCIN F05, 6 drums',
      'XCIN-XLOR F05, 4 drums',
      'XLOR-XALD ',
    ]);
  });

  it('a flight that needs a decision says so in words; what was declined is not there', () => {
    const moved = movedOn({
      flights: [flight('F05', { needsDecision: 'XLOR is soft' }), flight('F06', { state: 'declined' })],
      booked: [],
      slings: [],
    });
    expect(moved.map(({ id }) => id)).toEqual(['F05']);
    expect(moved[0]!.legs[0]).toMatchObject({
      line: 'in question',
      label: 'F05, 6 drums, needs a decision',
    });
  });

  it('booked flights say what they have aboard, slings what hangs below', () => {
    const moved = movedOn({
      flights: [],
      booked: [
        { id: 'X2', aircraft: 'C1', route: ['XALD', 'XCIN', 'XALD'], passengers: 1, spareDrums: 2 },
        { id: 'X1', aircraft: 'A1', route: ['XMER', 'XISK'], passengers: 0, spareDrums: 0 },
      ],
      slings: [sling()],
    });
    expect(moved.map(({ load }) => load)).toEqual(['1 passenger, spare 2 drums', 'no drums', '4 drums']);
    expect(moved[2]!.legs).toMatchObject([{ line: 'sling', label: 'Sling, 4 drums' }]);
    expect(dayInWords(moved, 'Tue 15 June 2027')).toBe('Tue 15 June 2027: 2 flights, 0 drums; 1 sling move.');
    expect(dayInWords([], 'Sun 20 June 2027')).toBe('Sun 20 June 2027: nothing flies.');
  });

  it('a sling of drums that a flight has still to land, and somebody to decide on, says so', () => {
    const [asked] = movedOn({
      ...{ flights: [], booked: [] },
      slings: [sling({ inQuestion: { drums: 2, litres: 400 } })],
    });
    expect(asked).toMatchObject({
      load: '4 drums, 2 of a flight that needs a decision',
      legs: [{ label: 'Sling, 4 drums ?' }],
    });
  });

  it('a sling that finds less than is planned says of how many', () => {
    const [short] = movedOn({ flights: [], booked: [], slings: [sling({ load: { drums: 3 } })] });
    expect(short).toMatchObject({ load: '3 of 4 drums', legs: [{ label: 'Sling, 3 of 4 drums' }] });
  });

  it('two flights on one leg lie side by side and share the distance', () => {
    const places = [place('XALD', { latitudeDeg: 65 }), place('XLOR', { latitudeDeg: 67 })];
    const scale = chartScale(places, size);
    const moved = movedOn({ flights: [flight('F05'), flight('F08')], booked: [], slings: [] });
    const drawn = drawnLegs(
      moved.flatMap(({ legs }) => legs),
      { scale, spotOf: new Map(places.map((each) => [each.code, each])), distanceNm: () => 150.3 },
    );
    expect(Math.abs(drawn[0]!.points[3]!.x - drawn[1]!.points[3]!.x)).toBeCloseTo(6, 1);
    expect(drawn[0]!.captions).toEqual(['F05, 6 drums', 'F08, 6 drums', '150.3 NM']);
    expect(drawn[1]!.captions).toEqual([]);
  });
});
