import { describe, expect, it } from 'vitest';
import { at, corrected, drawn, flownOut, leftAt, ml } from './example-movements.js';
import { asItWasAt, asKnownAt } from './replay.js';

describe('the picture of another moment', () => {
  const late = leftAt('0451', '07:00', { receivedAt: at('18:00') });
  const movements = [...flownOut('0451').slice(0, 2), late];

  it('as known at noon the drum is aboard; as it was at noon it stands at the strip', () => {
    expect(asKnownAt(movements, at('12:00')).drums.get('0451')!.where.kind).toBe('aboard');
    expect(asItWasAt(movements, at('12:00')).drums.get('0451')!.where.kind).toBe('at');
    expect(asItWasAt(movements, at('06:30')).drums.get('0451')!.where.kind).toBe('aboard');
  });

  it('as it was is told with the corrections of today', () => {
    const wrong = drawn('0451', '09:00', 60);
    const all = [...flownOut('0451'), wrong, corrected(wrong.id, '15:00')];
    expect(asItWasAt(all, at('12:00')).drums.get('0451')!.millilitres).toBe(ml(200));
    expect(asKnownAt(all, at('12:00')).drums.get('0451')!.millilitres).toBe(ml(140));
  });
});
