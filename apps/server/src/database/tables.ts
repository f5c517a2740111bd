import type { EntitySchema } from 'typeorm';
import { auditTable } from '../audit/audit.table.js';
import { accountTable } from '../people/account.table.js';
import { sessionTable } from '../people/session.table.js';
import { agreementTable, proposalTable } from '../proposals/proposal.table.js';
import { movementTable } from '../stock/movement.table.js';
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
  movementTable,
];
