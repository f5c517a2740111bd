import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { AircraftRating, RoadRating } from './rating.js';
import { type LoadFactors, type TieDownKit, tieDown } from './tie-down.js';
import { everyType, tieDownFor } from './tie-down-setting.js';

const rated = (ultimateLb: number, reference: string): AircraftRating => ({
  figure: 'ultimate load in an aircraft',
  ultimateLb: pounds(ultimateLb),
  reference,
});
const factors: LoadFactors = { forward: 9, aft: 1.5, sideways: 1.5, up: 3, reference: 'loading manual 4.2' };
const kit: TieDownKit = {
  strap: rated(5000, 'strap approval'),
  fitting: rated(4500, 'fitting approval'),
  floorRing: rated(2000, 'floor drawing'),
  angles: { aboveFloorDeg: 30, offAxisDeg: 30 },
};
const road: RoadRating = { figure: 'working load for the road', workingLoadLb: pounds(3335) };

describe('tie-down of one drum of 400 lb', () => {
  const down = tieDown(pounds(400), factors, kit);

  it('the weakest of strap, fitting and floor ring decides', () => {
    expect(down.deciding).toMatchObject({ part: 'floor ring', ultimateLb: 2000 });
    const weakFitting = { ...kit, fitting: rated(900, 'fitting approval') };
    expect(tieDown(pounds(400), factors, weakFitting).deciding.part).toBe('fitting');
  });

  it('each direction has its need and its straps', () => {
    // 3,600 / 1,500; 600 / 1,500; 600 / 866; 1,200 / 1,000.
    expect(down.needs.map(({ direction, neededLb, straps }) => [direction, neededLb, straps])).toEqual([
      ['forward', 3600, 3],
      ['aft', 600, 1],
      ['sideways', 600, 1],
      ['up', 1200, 2],
    ]);
  });

  it('straps come in pairs, and their words name the references', () => {
    expect(down.layout).toEqual({ forwardStraps: 4, aftStraps: 2 });
    expect(down.words).toBe(
      'Straps for 400 lb: 3 forward, 1 aft, 1 to each side, 2 up; in pairs 4 against forward, 2 against aft. The floor ring decides: 2,000 lb (floor drawing). 9 g forward, 1.5 aft, 1.5 sideways, 3 up (loading manual 4.2); straps 30° above the floor, 30° off the axis; friction not counted.',
    );
    expect(down.brief).toBe(
      'straps 3 forward, 1 aft, 1 to each side, 2 up (in pairs 4 forward, 2 aft) at 30° up, 30° off axis. The floor ring decides, 2,000 lb; loading manual 4.2.',
    );
    expect(down.caution).toContain('approved loading manual decides');
  });

  it('more straps where lifting or the sides ask for them', () => {
    const lifting = tieDown(pounds(400), { ...factors, forward: 0, aft: 0, up: 9 }, kit);
    expect(lifting.layout).toEqual({ forwardStraps: 0, aftStraps: 4 });
  });

  it('straps along the axis hold nothing sideways, and that is said', () => {
    const along = tieDown(pounds(400), factors, { ...kit, angles: { aboveFloorDeg: 30, offAxisDeg: 0 } });
    expect(along.needs[2]).toMatchObject({ direction: 'sideways', straps: null });
    expect(along.layout).toBeNull();
    expect(along.words).toContain('none hold to each side, 2 up; straps at these angles do not hold every');
  });
});

it('a road working load does not compile as part of a kit', () => {
  // @ts-expect-error: a road rating is no aircraft rating.
  const wrong: TieDownKit = { ...kit, strap: road };
  expect(wrong.strap).toBe(road);
});

describe('the setting for a type', () => {
  const every = { type: everyType, factors, kit };
  const own = { ...every, type: 'B' };

  it('is its own, else the one for every type, else none', () => {
    expect(tieDownFor([every, own], 'B')).toBe(own);
    expect(tieDownFor([every, own], 'A')).toBe(every);
    expect(tieDownFor([own], 'A')).toBeNull();
  });
});
