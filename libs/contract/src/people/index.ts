export { type Intent, type MayAnswer, may, permissionOf } from './may.js';
export type { Level, Limit, Permission } from './permission.js';
export { type PermittedAct, permissionTable, permittedActs } from './permission-table.js';
export { type Role, roles } from './role.js';
