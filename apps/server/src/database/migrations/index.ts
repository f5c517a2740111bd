import { AppRole1700000000001 } from './0001-app-role.js';
import { People1700000000002 } from './0002-people.js';
import { Audit1700000000003 } from './0003-audit.js';
import { Territory1700000000004 } from './0004-territory.js';
import { Movements1700000000005 } from './0005-movements.js';

/** In order. A migration that has run somewhere is never changed: write the next one. */
export const migrations = [
  AppRole1700000000001,
  People1700000000002,
  Audit1700000000003,
  Territory1700000000004,
  Movements1700000000005,
] as const;
