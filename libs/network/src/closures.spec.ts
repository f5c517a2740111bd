import { nauticalMiles } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { closures } from './closures.js';
import type { HazardNotice } from './place.js';

const at = (code: string, latitudeDeg: number, longitudeDeg: number) => ({ code, latitudeDeg, longitudeDeg });
const ash = at('ASH', 65, -4);
const bek = at('BEK', 67, -4);
const col = at('COL', 65, 0);
const hours = { timeZone: 'Etc/GMT', firstDeparture: '07:00', lastLanding: '19:00' };
const notice = (rest: Partial<HazardNotice>): HazardNotice => ({
  id: 'N1',
  places: [],
  from: '2027-03-02T00:00Z',
  until: '2027-03-03T00:00Z',
  source: 'radio',
  text: 'blasting',
  ...rest,
});
// On the line from ASH to BEK, half way.
const midway = { latitudeDeg: 66, longitudeDeg: -4, radiusNm: nauticalMiles(10) };
const day = '2027-03-02';

describe('hazard notices', () => {
  it('hazard notices: a named place is closed, and every leg to and from it', () => {
    const named = notice({ places: ['BEK'] });
    const closed = closures([named], hours);
    expect(closed.ofPlace(bek, day)).toBe(named);
    expect(closed.ofPlace(ash, day)).toBeNull();
    expect(closed.ofLeg(ash, bek, day)).toBe(named);
    expect(closed.ofLeg(bek, col, day)).toBe(named);
    expect(closed.ofLeg(ash, col, day)).toBeNull();
  });

  it('hazard notices: a leg that crosses the circle is closed both ways, its places stay open', () => {
    const circle = notice({ circle: midway });
    const closed = closures([circle], hours);
    expect(closed.ofLeg(ash, bek, day)).toBe(circle);
    expect(closed.ofLeg(bek, ash, day)).toBe(circle);
    expect(closed.ofLeg(ash, col, day)).toBeNull();
    expect([ash, bek, col].map((place) => closed.ofPlace(place, day))).toEqual([null, null, null]);
  });

  it('hazard notices: a circle beside the line closes the leg only where the line enters it', () => {
    // A degree of longitude at 66 N is some 24.5 NM: the centre stands that far east of the line.
    const beside = (radius: number) => ({
      latitudeDeg: 66,
      longitudeDeg: -3,
      radiusNm: nauticalMiles(radius),
    });
    expect(closures([notice({ circle: beside(24) })], hours).ofLeg(ash, bek, day)).toBeNull();
    expect(closures([notice({ circle: beside(25) })], hours).ofLeg(ash, bek, day)).not.toBeNull();
  });

  it('hazard notices: a circle on the line beyond its end leaves the leg open', () => {
    const beyond = { latitudeDeg: 68, longitudeDeg: -4, radiusNm: nauticalMiles(50) };
    expect(closures([notice({ circle: beyond })], hours).ofLeg(ash, bek, day)).toBeNull();
  });

  it('hazard notices: a place inside the circle is closed', () => {
    const around = notice({ circle: { latitudeDeg: 65.1, longitudeDeg: -4, radiusNm: nauticalMiles(10) } });
    expect(closures([around], hours).ofPlace(ash, day)).toBe(around);
    expect(closures([around], hours).ofPlace(bek, day)).toBeNull();
  });

  it('hazard notices: closed on a day of which any minute of the flying hours is covered', () => {
    const closedOn = (from: string, until: string, timeZone = 'Etc/GMT') => {
      const closed = closures([notice({ places: ['ASH'], from, until })], { ...hours, timeZone });
      return ['2027-03-01', '2027-03-02', '2027-03-03'].filter((date) => closed.ofPlace(ash, date));
    };
    expect(closedOn('2027-03-01T18:59Z', '2027-03-02T07:01Z')).toEqual(['2027-03-01', '2027-03-02']);
    expect(closedOn('2027-03-01T19:00Z', '2027-03-02T07:00Z')).toEqual([]);
    expect(closedOn('2027-03-02T10:00Z', '2027-03-02T10:01Z')).toEqual(['2027-03-02']);
    expect(closedOn('2027-03-01T19:00Z', '2027-03-01T20:00Z', 'Etc/GMT-12')).toEqual(['2027-03-02']);
  });

  it('hazard notices: the notice that holds on the day is the one named', () => {
    const first = notice({
      id: 'N1',
      places: ['ASH'],
      from: '2027-03-01T00:00Z',
      until: '2027-03-02T00:00Z',
    });
    const second = notice({ id: 'N2', places: ['ASH'] });
    const closed = closures([first, second], hours);
    expect(closed.ofPlace(ash, '2027-03-01')).toBe(first);
    expect(closed.ofPlace(ash, '2027-03-02')).toBe(second);
    expect(closed.ofPlace(ash, '2027-03-03')).toBeNull();
  });
});
