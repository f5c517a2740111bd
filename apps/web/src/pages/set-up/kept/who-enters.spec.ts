import { expect, it } from 'vitest';
import { askWords } from './who-enters.js';

it('somebody who may only look at batches is told that the storekeeper enters them', () => {
  expect(askWords('fill')).toBe('You may look at it only. Ask: storekeeper.');
});
