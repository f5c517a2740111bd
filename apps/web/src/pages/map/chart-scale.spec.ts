import { describe, expect, it } from 'vitest';
import { chartBorder, scaleBarNm } from './chart-border.js';
import { chartScale } from './chart-scale.js';
import { place, size } from './testing/example-map.js';

describe('chart', () => {
  const north = place('XNOR', { latitudeDeg: 67, longitudeDeg: 1 });
  const south = place('XSOU', { latitudeDeg: 65, longitudeDeg: 1 });
  const west = place('XWES', { latitudeDeg: 65, longitudeDeg: -2 });

  it('north is up, east is right, and every place stands inside the border', () => {
    const scale = chartScale([north, south, west], size);
    expect(scale.at(north).y).toBeLessThan(scale.at(south).y);
    expect(scale.at(north).x).toBeCloseTo(scale.at(south).x, 6);
    expect(scale.at(west).x).toBeLessThan(scale.at(south).x);
    for (const spot of [north, south, west]) {
      const { x, y } = scale.at(spot);
      expect(x).toBeGreaterThan(scale.frame.x);
      expect(x).toBeLessThan(scale.frame.x + scale.frame.width);
      expect(y).toBeGreaterThan(scale.frame.y);
      expect(y).toBeLessThan(scale.frame.y + scale.frame.height);
    }
  });

  it('a territory over 180 degrees is one territory, and of one place there is a chart too', () => {
    const scale = chartScale(
      [place('XEAS', { longitudeDeg: 179 }), place('XWES', { longitudeDeg: -179 })],
      size,
    );
    const [east, over] = [scale.xOf(179), scale.xOf(-179)];
    expect(east).toBeLessThan(over);
    expect(over - east).toBeLessThan(size.width);
    const alone = chartScale([north], size);
    expect(Number.isFinite(alone.at(north).x)).toBe(true);
    expect(alone.pixelsPerNm).toBeLessThan(size.height);
  });

  it('a mark of the border is 10 minutes of latitude high and 30 of longitude wide', () => {
    const scale = chartScale([north, south, west], size);
    const { marks } = chartBorder(scale);
    const upright = marks.filter(({ width }) => width === 4);
    expect(upright.some(({ y }) => Math.abs(y - scale.yOf(66.5)) < 1e-6)).toBe(true);
    const found = upright.find(({ y }) => Math.abs(y - scale.yOf(66.5)) < 1e-6)!;
    expect(found.height).toBeCloseTo(scale.yOf(66 + 2 / 6) - scale.yOf(66.5), 6);
    const level = marks.filter(({ height }) => height === 4);
    const halfDegree = scale.xOf(1) - scale.xOf(0.5);
    expect(level.some(({ width }) => Math.abs(width - halfDegree) < 1e-6)).toBe(true);
  });

  it('the scale bar is a round length that fits, as long as a minute of latitude is a mile', () => {
    expect(scaleBarNm(3.7, 180)).toBe(20);
    expect(scaleBarNm(3.6, 180)).toBe(50);
    const scale = chartScale([north, south], size);
    const middle = scale.yOf(65.9) - scale.yOf(66.1);
    expect(scale.pixelsPerNm).toBeCloseTo(middle / 12, 1);
  });
});
