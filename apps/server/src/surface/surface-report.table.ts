import type { SurfaceReport } from '@drumline/network';
import { EntitySchema } from 'typeorm';

/** A report as somebody gave it. A better one is a later one: nothing is overwritten. */
export interface StoredSurfaceReport {
  readonly id: string;
  readonly place: string;
  readonly data: SurfaceReport;
  readonly accountId: string | null;
  readonly receivedAt: Date;
}

export const surfaceReportTable = new EntitySchema<StoredSurfaceReport>({
  name: 'surface_report',
  tableName: 'surface_reports',
  columns: {
    id: { type: 'uuid', primary: true },
    place: { type: 'text' },
    data: { type: 'jsonb' },
    accountId: { type: 'uuid', nullable: true },
    receivedAt: { type: 'timestamptz' },
  },
});
