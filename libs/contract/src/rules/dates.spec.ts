import { describe, expect, it } from 'vitest';
import { afterSpoiling, type SpoiltCase } from '../tiny-document.js';

describe('days and times come in an order that can be', () => {
  it.each<SpoiltCase>([
    [
      'retest before filling',
      (d) => {
        d.batches[0].retestDue = '2030-08-01';
      },
      'batches[0].retestDue: 2030-08-01 is before 2030-09-01, the day of filling. Correct one of the two.',
    ],
    [
      'a drum opened before it was filled',
      (d) => {
        d.drums[2].openedOn = '2030-07-01';
      },
      'drums[2].openedOn: 2030-07-01 is before 2030-09-01, the day its batch was filled. Correct one of the two.',
    ],
    [
      'an absence that ends before it starts',
      (d) => {
        d.aircraft[0].absences[0].until = '2031-03-05';
      },
      'aircraft[0].absences[0].until: 2031-03-05 is before 2031-03-06, the first day of the absence. Correct one of the two.',
    ],
    [
      'a notice that ends before it starts',
      (d) => {
        d.notices[0].until = '2031-03-06T05:00Z';
      },
      'notices[0].until: 2031-03-06T05:00Z is before 2031-03-06T06:00Z, the start of the notice. Correct one of the two.',
    ],
    [
      'a report that holds until before it was made',
      (d) => {
        d.surfaceReports[0].untilDate = '2031-03-01';
      },
      'surfaceReports[0].untilDate: 2031-03-01 is before 2031-03-02, the day of the report. Correct one of the two.',
    ],
    [
      'a last landing before the first departure',
      (d) => {
        d.policy.flyingDay.lastLanding = '06:00';
      },
      'policy.flyingDay.lastLanding: 06:00 is before 07:00, the first departure. Correct one of the two.',
    ],
    [
      'a task after the last day',
      (d) => {
        d.helicopterTasks[0].date = '2031-03-08';
      },
      'helicopterTasks[0].date: 2031-03-08 is outside the days looked ahead, 2031-03-03 to 2031-03-07. Correct the day, or take the line out.',
    ],
    [
      'a booked flight before the first day',
      (d) => {
        d.bookedFlights[0].date = '2031-03-02';
      },
      'bookedFlights[0].date: 2031-03-02 is outside the days looked ahead, 2031-03-03 to 2031-03-07. Correct the day, or take the line out.',
    ],
    [
      'more days offered than looked ahead',
      (d) => {
        d.offeredDays = 6;
      },
      'offeredDays: 6 days are offered of 5 looked ahead. Give at most 5.',
    ],
    [
      'a picture later than the plan',
      (d) => {
        d.asOf = '2031-04-01T05:00Z';
      },
      'asOf: 2031-04-01T05:00Z is after the last day looked ahead, 2031-03-07. Correct asOf or firstDay.',
    ],
    [
      'a time zone that is not on the list',
      (d) => {
        d.timeZone = 'Etc/GTM';
      },
      'timeZone: Etc/GTM is not a time zone of the IANA list. Write one like Etc/GMT or Europe/Oslo.',
    ],
  ])('%s', (_name, spoil, said) => {
    expect(afterSpoiling(spoil).faults).toEqual([said]);
  });
});
