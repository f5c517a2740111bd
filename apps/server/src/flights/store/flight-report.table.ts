import type { FlightReportBody } from '@drumline/contract';
import { EntitySchema } from 'typeorm';

/** A report as somebody gave it: kept as it came, whatever became of it. */
export interface FlightReport {
  readonly id: string;
  readonly flightId: string;
  readonly kind: FlightReportBody['kind'];
  readonly happenedAt: Date;
  readonly receivedAt: Date;
  /** As it was sent. */
  readonly data: FlightReportBody;
  /** Who reports; it stays so, whoever sends it. */
  readonly author: string;
  /** Whose session sent it first. */
  readonly sentBy: string;
  readonly accountId: string | null;
  /** What it leaves to be looked at. */
  readonly raised: readonly string[];
}

export const flightReportTable = new EntitySchema<FlightReport>({
  name: 'flight_report',
  tableName: 'flight_reports',
  columns: {
    id: { type: 'uuid', primary: true },
    flightId: { type: 'text' },
    kind: { type: 'text' },
    happenedAt: { type: 'timestamptz' },
    receivedAt: { type: 'timestamptz' },
    data: { type: 'jsonb' },
    author: { type: 'text' },
    sentBy: { type: 'text' },
    accountId: { type: 'uuid', nullable: true },
    raised: { type: 'jsonb' },
  },
});
