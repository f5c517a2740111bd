import { calendarOf } from '../../../api/index.js';
import type { Morning } from '../morning-read.js';
import { quietMorning } from './quiet-morning.js';

export const { asOf } = quietMorning;
export const calendar = calendarOf(new Date(asOf), 'Etc/GMT');
export const strip = (place: string): Morning['strips'][number] => ({
  ...{ place, name: place, surface: null, counts: 'dry', reportedAt: null, by: null, reported: null },
  ...{ staleAt: null, untilDate: null, radioTime: null, tailwindLimitKt: null, stripClass: 2 },
  ...{ drumsToday: 0, drumsADay: null },
});
export const flight = (id: string, date: string, by: string, needsDecision: string | null = null) => ({
  id,
  state: 'offered',
  needsDecision,
  by,
  date,
  departs: '08:00',
  aircraft: 'B1',
  pilot: 'FW3',
  route: ['XALD', 'XLOR', 'XALD'],
  drums: 6,
  ifDeclined: 'Without it XLOR falls below minimum today. Without it XFAL falls below minimum on Thu.',
});
