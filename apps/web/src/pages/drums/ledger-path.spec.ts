import { expect, it } from 'vitest';
import { ledgerPath } from './ledger-path.js';

const path = (words: Readonly<Record<string, string>>, zone = 'UTC') =>
  ledgerPath((name) => words[name] ?? '', zone);

it('without words: the newest hundred', () => {
  expect(path({})).toBe('/api/movements?limit=100');
});

it('days are whole days at the territory, the last one too', () => {
  const query = new URLSearchParams(
    path({ from: '2027-06-14', to: '2027-06-15' }, 'Etc/GMT+3').split('?')[1],
  );
  expect([query.get('from'), query.get('until')]).toEqual([
    '2027-06-14T03:00:00.000Z',
    '2027-06-16T03:00:00.000Z',
  ]);
});

it('half a date asks for nothing', () => {
  expect(path({ from: '2027-06', place: 'XLOR', of: ' 0514 ' })).toBe(
    '/api/movements?limit=100&place=XLOR&drum=0514',
  );
});
