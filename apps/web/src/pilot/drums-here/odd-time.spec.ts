import { describe, expect, it } from 'vitest';
import type { Report } from '../../phone/index.js';
import { ownReports } from '../reports/own-reports.js';
import { notOff, tookOff } from '../reports/reports.js';
import { exampleFlight, exampleReporter } from '../testing/example-flight.js';
import { oddTime } from './odd-time.js';

describe('took off', () => {
  const day = 'Tuesday 15 June';
  const at = (today: string, clock: string) => oddTime(exampleFlight, { day, today, clock });

  it('is one tap on its day and half of the day; on another it is asked once', () => {
    expect(at(day, '07:20')).toBeNull();
    expect(at('Monday 14 June', '07:20')).toBe(
      'F06 is for Tuesday 15 June 07:10; now it is Monday 14 June 07:20.',
    );
    expect(at(day, '13:20')).toBe('F06 is for Tuesday 15 June 07:10; now it is 13:20.');
  });

  it('by mistake is taken back: base is told, and the phone has it on the ground again', () => {
    const kept = (report: Report) => ({ flight: 'F06', requests: report.requests });
    const off = kept(tookOff(exampleReporter, exampleFlight));
    const not = kept(notOff(exampleReporter, exampleFlight));
    expect(ownReports([off], 'F06')).toMatchObject({ offAt: '2027-06-15T06:21:30Z', notOff: false });
    // The newest first.
    expect(ownReports([not, off], 'F06')).toMatchObject({ offAt: null, notOff: true });
    expect(ownReports([off, not, off], 'F06').notOff).toBe(false);
    expect(not.requests[0]!.body).toMatchObject({
      kind: 'problem',
      words: 'Wrongly reported: F06 took off. It has not taken off.',
    });
  });
});
