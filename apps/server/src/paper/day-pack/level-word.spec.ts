import { litres } from '@drumline/units';
import { expect, it } from 'vitest';
import { levelWord } from './level-word.js';

const at = (usable: number) =>
  levelWord({
    usableLitres: litres(usable),
    cache: { level: 'enough', minimumLitres: litres(1200) } as Parameters<typeof levelWord>[0]['cache'],
  });

it('a cache with exactly its minimum is at it, not above it', () => {
  expect([at(1200), at(1201)]).toEqual(['at minimum', 'above minimum']);
});

it('a place without a cache has no levels', () => {
  expect(levelWord({ usableLitres: litres(400), cache: null })).toBe('no levels');
});
