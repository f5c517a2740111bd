import type { Role } from './role.js';

/** What a person may do in a line of the permission table; each includes those before it. */
export const levels = ['none', 'view', 'enter', 'decide'] as const;

export type Level = (typeof levels)[number];

/** A condition under which a permission stands; the caller knows whether it holds. */
export type Limit =
  | 'from now, inside the week'
  | 'inside the week'
  | 'as commander'
  | 'by radio'
  | 'at base'
  | 'one drum'
  | 'as a draft'
  | 'export';

/** A cell of the permission table. */
export interface Permission {
  readonly level: Level;
  /** Own flights, duties or programme only. */
  readonly own: boolean;
  /** A second person has to agree to whatever is more than a look. */
  readonly second: boolean;
  /** Binds whatever is more than a look. */
  readonly limit: Limit | null;
}

/** A line of the table: a role that is not named may do nothing. */
export type Line = Readonly<Partial<Record<Role, Permission>>>;

const cell = (level: Level, rest: Partial<Permission> = {}): Permission => ({
  level,
  own: false,
  second: false,
  limit: null,
  ...rest,
});

export const none = cell('none');
export const view = cell('view');
export const enter = cell('enter');
export const decide = cell('decide');
export const viewOwn = cell('view', { own: true });
export const decideOwn = cell('decide', { own: true });
export const enterWithSecond = cell('enter', { second: true });
export const decideWithSecond = cell('decide', { second: true });
export const enterIf = (limit: Limit): Permission => cell('enter', { limit });
export const decideIf = (limit: Limit): Permission => cell('decide', { limit });
