import { type Level, type Limit, levels, none, type Permission } from './permission.js';
import { type PermittedAct, permissionTable } from './permission-table.js';
import { type Role, roles } from './role.js';

/** How somebody wants to act. */
export interface Intent {
  readonly to: Exclude<Level, 'none'>;
  /** The thing is the person's own: flight, duty, programme. */
  readonly own?: boolean;
  /** Role of a second, different person who agrees; null or absent: nobody has yet. */
  readonly second?: Role | null;
  /** Limits that are kept to. */
  readonly within?: readonly Limit[];
}

export type MayAnswer =
  | { readonly kind: 'allowed' }
  | { readonly kind: 'needs a second person'; readonly roles: readonly Role[]; readonly words: string }
  | { readonly kind: 'refused'; readonly words: string };

/** The cell of the permission table. */
export function permissionOf(role: Role, act: PermittedAct): Permission {
  const line: Readonly<Partial<Record<Role, Permission>>> = permissionTable[act];
  return line[role] ?? none;
}

/**
 * Whether a role may do an act. A second person has to have a right to it of the same kind; that it is another person
 * is for the caller to see to. Limits and second persons bind whatever is more than a look.
 */
export function may(role: Role, act: PermittedAct, { to, own, second, within }: Intent): MayAnswer {
  const permission = permissionOf(role, act);
  if (rank(permission.level) < rank(to)) return refused(beyond(role, act, to, permission));
  if (permission.own && !own) return refused(`${role}: ${act} is open for your own only.`);
  if (to === 'view') return { kind: 'allowed' };
  if (permission.limit !== null && !within?.includes(permission.limit))
    return refused(`${role}: ${act} is open ${permission.limit} only.`);
  if (!permission.second) return { kind: 'allowed' };
  const seconds = roles.filter((each) => mayBeSecond(each, act));
  if (second && seconds.includes(second)) return { kind: 'allowed' };
  const words = `${act}: a second person has to agree, as ${orWords(seconds)}.`;
  return { kind: 'needs a second person', roles: seconds, words };
}

function mayBeSecond(role: Role, act: PermittedAct): boolean {
  const { level, second } = permissionOf(role, act);
  return second || level === 'decide';
}

function beyond(role: Role, act: PermittedAct, to: Level, { level }: Permission): string {
  const able = roles.filter((each) => rank(permissionOf(each, act).level) >= rank(to));
  const ask = able.length === 0 ? '' : ` Ask: ${orWords(able)}.`;
  return level === 'none'
    ? `${role}: ${act} is not open to you.${ask}`
    : `${role}: you may ${level} in ${act}, not ${to}.${ask}`;
}

const rank = (level: Level): number => levels.indexOf(level);

const refused = (words: string): MayAnswer => ({ kind: 'refused', words });

const orWords = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1)}`;
