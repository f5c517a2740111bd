import type { Batch, Cache, Drum, DrumToOpen } from '@drumline/stock';
import { splitDraw } from '@drumline/stock';
import { kilogramsPerLitre, litres } from '@drumline/units';
import { describe, expect, it } from 'vitest';
import type { CacheView } from '../cache-view.js';
import { checkedWords, checksOf, gaugeKept, gaugeWords, judgeDraw, missingChecks } from './draw.js';
import { stickWaits, stickWords } from './draw-stick.js';

const batch = { id: 'J27-012', filledOn: '2027-02-08', retestDue: '2028-02-08' } as Batch;
const row = (number: string, there: number, rest: Partial<Drum> = {}): DrumToOpen => ({
  drum: { number, litres: litres(there), content: 'filled sealed', ...rest } as Drum,
  batch,
  fitness: 'fit',
  hold: null,
});
const part = row('0468', 175, { content: 'part used', openedOn: '2027-06-14' });
const sealed = row('0469', 200);
const held: DrumToOpen = {
  ...row('0503', 200),
  fitness: 'held',
  hold: { reason: 'water found', by: 'QA', at: '2027-06-14T12:05Z' },
};
const view = {
  levels: { medevacReserveLitres: litres(400) } as Cache,
  drawableLitres: litres(175),
} as CacheView;
const density = kilogramsPerLitre(0.8);
const judge = (drums: readonly DrumToOpen[], drawn: number, gauge: readonly [number, number] | null = null) =>
  judgeDraw(view, drums, {
    draw: { litres: drawn, beforeLb: gauge?.[0] ?? null, afterLb: gauge?.[1] ?? null },
    density,
  });

describe('checks before pumping', () => {
  it('a drum that was closed again has no tell-tale, and is tested for water again', () => {
    expect(checksOf(sealed).map(({ word }) => word)).toEqual([
      'Seal whole',
      'In date',
      'Clear and bright',
      'No water',
    ]);
    expect(checksOf(part)[0]).toMatchObject({
      word: 'Bung closed',
      how: 'as it was left, opened 14 Jun 2027',
    });
    expect(checksOf(part)[3]?.how).toBe('test again: it was closed and left');
  });

  it('says what is not ticked', () => {
    const checks = checksOf(sealed);
    expect(missingChecks(checks, new Set(['seal', 'date', 'clear']))).toBe('No water: not ticked yet');
    expect(missingChecks(checks, new Set(checks.map(({ id }) => id)))).toBeNull();
  });

  it('what was looked at is kept with the draw; so is that a drum was held', () => {
    expect(checkedWords([sealed, held])).toBe(
      'Before pumping 0469. Looked at: seal or bung, date, clear and bright, no water. 0503 was held: water found. Drawn before it was read.',
    );
  });
});

describe('a draw before it is kept', () => {
  it('says how many litres come out of the reserve; held fuel is none of it', () => {
    expect(judge([part, sealed], 225).fromReserveLitres).toBe(50);
    expect(judge([part], 175).fromReserveLitres).toBe(0);
    expect(judge([held], 200).fromReserveLitres).toBe(0);
  });

  it('is held against the gauge, and never told which is right', () => {
    expect(judge([part], 175).gauge).toBeNull();
    expect(gaugeWords(judge([part, sealed], 225, [410, 806]).gauge!, 225, density)).toEqual({
      word: 'Agrees.',
      title: '396 lb is 224.5 L at 0.80 kg/L.',
      rest: 'You wrote 225 L: 0.5 L apart.',
    });
    expect(gaugeWords(judge([part, sealed], 252, [410, 806]).gauge!, 252, density)).toEqual({
      word: 'Check.',
      title: '396 lb is 224.5 L at 0.80 kg/L.',
      rest: 'You wrote 252 L: 27.5 L apart. Read both again. Either may be the slip.',
    });
  });
});

describe('what is kept with a draw', () => {
  const split = splitDraw([{ number: '0468', litres: litres(175) }], litres(50));
  const table = {
    name: 'upright drum',
    kind: 'upright drum',
    innerDiameterCm: 57.2,
    innerHeightCm: 84.1,
    stickMarksCm: 1,
    reference: 'spec',
  };
  const stepWith = (typed: object) =>
    ({ draft: { dipTable: 'upright drum', ...typed }, here: { places: { dipTables: [table] } } }) as never;

  it('has the gauge as far as it was read', () => {
    expect(gaugeKept({ beforeLb: '410', afterLb: '806' })).toBe(
      'Engine fuel gauge 410 lb before, 806 lb after.',
    );
    expect(gaugeKept({ beforeLb: '410', afterLb: '' })).toBe('Engine fuel gauge 410 lb before.');
    expect(gaugeKept({ beforeLb: '', afterLb: '' })).toBe('');
  });

  it('has the stick in cm with its drum; one begun and not typed, or too deep, keeps Keep off', () => {
    const judged = { split };
    expect(stickWords(stepWith({ leftCm: '47' }), judged)).toBe('By stick, upright drum: 47 cm in 0468.');
    expect(stickWaits(stepWith({ leftCm: '47' }), judged)).toBeNull();
    expect(stickWaits(stepWith({}), judged)).toBe('The stick in cm, or “Not looked at”');
    expect(stickWaits(stepWith({ leftCm: '900' }), judged)).toMatch(/not that deep/);
    expect(stickWaits(stepWith({ dipTable: null }), judged)).toBeNull();
  });
});
