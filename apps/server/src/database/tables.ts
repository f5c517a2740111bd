import type { EntitySchema } from 'typeorm';
import { auditTable } from '../audit/audit.table.js';
import { flightHistoryTable, flightTable, legTable, loadTable } from '../flights/store/flight.table.js';
import { flightReportTable } from '../flights/store/flight-report.table.js';
import { accountTable } from '../people/account.table.js';
import { sessionTable } from '../people/session.table.js';
import { planAcceptanceTable, planRunTable } from '../plans/plan-run.table.js';
import { agreementTable, proposalTable } from '../proposals/proposal.table.js';
import { surfaceReportTable } from '../surface/surface-report.table.js';
import { entryTable } from '../territory/entry.table.js';

/** Every table that is read and written through TypeORM. */
export const tables: readonly EntitySchema[] = [
  accountTable,
  sessionTable,
  auditTable,
  entryTable,
  proposalTable,
  agreementTable,
  surfaceReportTable,
  planRunTable,
  planAcceptanceTable,
  flightTable,
  legTable,
  loadTable,
  flightHistoryTable,
  flightReportTable,
];
