import type { FlightReportBody, MovementBody } from '@drumline/contract';
import type { KeptRequest, Report } from '../../phone/index.js';
import type { Reporter } from '../../phone/reporting.js';

/** What is kept with one press. */
export const entry = (reporter: Reporter, rest: Pick<Report, 'words' | 'flight' | 'requests'>): Report => ({
  by: reporter.by,
  clock: reporter.clock,
  ...rest,
});

export const movement = (reporter: Reporter, body: MovementBody): KeptRequest => ({
  path: `/api/movements/${reporter.newId()}`,
  body,
});

export const flightReport = (reporter: Reporter, body: FlightReportBody): KeptRequest => ({
  path: `/api/flight-reports/${reporter.newId()}`,
  body,
});
