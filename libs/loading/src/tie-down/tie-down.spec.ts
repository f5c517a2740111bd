import { pounds } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import { type AircraftRating, aircraftRating, type RoadRating } from './rating.js';
import { type LoadFactors, type TieDownKit, tieDown } from './tie-down.js';

const rated = (ultimateLb: number, reference: string): AircraftRating => ({
  use: 'aircraft',
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
const road: RoadRating = { use: 'road', workingLoadLb: pounds(3335) };

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
      'Tie down for 9 g forward, 1.5 aft, 1.5 sideways, 3 up (loading manual 4.2): 4 straps against forward, 2 against aft, in pairs to both sides; straps 30 degrees above the floor, 30 off the axis; floor ring decides, 2,000 lb (floor drawing).',
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
    expect(along.words).toContain('change the angles');
  });
});

describe('ratings', () => {
  it('a road working load is refused at the door', () => {
    expect(aircraftRating(road)).toMatchObject({ ok: false });
  });

  it('a road working load does not compile as part of a kit', () => {
    // @ts-expect-error: a road rating is no aircraft rating.
    const wrong: TieDownKit = { ...kit, strap: road };
    expect(wrong.strap).toBe(road);
  });

  it('a rating without its document is refused', () => {
    expect(aircraftRating(rated(5000, ' '))).toMatchObject({ ok: false });
    expect(aircraftRating(rated(5000, 'approval 12'))).toMatchObject({ ok: true });
  });
});
