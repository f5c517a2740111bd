import { expect, it } from 'vitest';
import type { LegLimits } from './card-read.js';
import { fewerWords, unknownWords } from './card-words.js';

const landing = { name: 'strip landing limit', place: 'XKNA', positions: null };
const dry = { ...landing, surface: 'dry' as const, limitLb: 6650, spareLb: 301, binds: false };
const soft = { ...landing, surface: 'soft' as const, limitLb: 5950, spareLb: -399, binds: true };
const leg = (changes: Partial<LegLimits>): LegLimits => ({
  ...{ from: 'XESK', to: 'XKNA', surface: 'dry', drumsAboard: 3, drumsPossible: 4 },
  limits: [soft, dry],
  ...changes,
});

it('a soft limit of a strip that is planned on dry says why it stands there', () => {
  expect(unknownWords(leg({}))).toBe(
    'Nobody knows the surface of XKNA: unknown counts as soft. Planned as dry.',
  );
  expect(unknownWords(leg({ limits: [dry] }))).toBeNull();
  expect(unknownWords(leg({ surface: 'soft' }))).toBeNull();
});

it('where it binds it is not said that nothing does', () => {
  expect(fewerWords({ ifDeclined: null }, leg({}))).toBeNull();
  expect(fewerWords({ ifDeclined: null }, leg({ limits: [dry] }))).toContain('Nothing binds at 3 drums');
});
