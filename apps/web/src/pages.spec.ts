import { pagePaths } from '@drumline/contract';
import { expect, it } from 'vitest';
import { pages } from './pages.js';

it('every page that the server answers is in the list of pages, in the same order', () => {
  expect(pages.map(({ path }) => path)).toEqual(pagePaths);
});
