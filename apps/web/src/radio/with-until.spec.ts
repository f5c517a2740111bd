import { expect, it } from 'vitest';
import { withUntil } from './with-until.js';

it('a last day is written behind its own report, whatever else the line says', () => {
  expect(withUntil('LOR soft 0652 helper', 0, 'Wed')).toBe('LOR soft 0652 helper until Wed');
  expect(withUntil('HAS dry 0640,, LOR soft 0652 helper ; GAN dry', 1, 'Thu')).toBe(
    'HAS dry 0640,, LOR soft 0652 helper until Thu; GAN dry',
  );
});
