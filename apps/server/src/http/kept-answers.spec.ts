import { expect, it } from 'vitest';
import { KeptAnswers } from './kept-answers.js';

const openKept = () => {
  let made = 0;
  const kept = new KeptAnswers<number, string>({ mayServe: (from, now) => from === now, most: 2 });
  const read = async (version: number, key = 'week') =>
    (
      await kept.read(key, version, async () => {
        made += 1;
        return `${key} ${version}, made ${made}`;
      })
    ).answer;
  return { kept, read };
};

it('is made once for what it is made from, also for those who ask at once, and anew when that has changed', async () => {
  const { read } = openKept();
  expect(await Promise.all([read(1), read(1)])).toEqual(['week 1, made 1', 'week 1, made 1']);
  expect([await read(1), await read(2), await read(2)]).toEqual([
    'week 1, made 1',
    'week 2, made 2',
    'week 2, made 2',
  ]);
});

it('what failed is tried again', async () => {
  const { kept, read } = openKept();
  await expect(kept.read('week', 1, () => Promise.reject(new Error('no database')))).rejects.toThrow();
  expect(await read(1)).toBe('week 1, made 1');
});

it('keeps no more than so many', async () => {
  const { read } = openKept();
  await read(1, 'a');
  await read(1, 'b');
  await read(1, 'c');
  expect(await read(1, 'a')).toBe('a 1, made 4');
});
