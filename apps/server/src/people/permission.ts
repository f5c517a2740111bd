import {
  type Intent,
  type MayAnswer,
  may,
  type PermittedAct,
  permissionOf,
  permittedActs,
  type Role,
  roles,
} from '@drumline/contract';
import { Problem } from '../http/problem.js';

/** Enough of an account to ask the permission table. */
export interface HasRoles {
  readonly roles: readonly Role[];
}

const order: readonly MayAnswer['kind'][] = ['allowed', 'needs a second person', 'refused'];

/** The best answer that one of the person's roles gets. */
export const mayDo = ({ roles }: HasRoles, act: PermittedAct, intent: Intent): MayAnswer => {
  const answers = roles.map((role) => may(role, act, intent));
  const best = order.flatMap((kind) => answers.filter((answer) => answer.kind === kind))[0];
  return best ?? { kind: 'refused', words: 'You have no role. Ask set-up.' };
};

/**
 * For a route that says `conditions: 'asked by the route'`: throws unless the person may do the act as it turns out
 * to be, once the route knows whose thing it is and what it is about.
 */
export const refuseUnlessMay = (person: HasRoles, act: PermittedAct, intent: Intent): void => {
  const answer = mayDo(person, act, intent);
  if (answer.kind === 'refused') throw new Problem('not-allowed', answer.words);
  if (answer.kind === 'needs a second person') throw new Problem('second-person-needed', answer.words);
};

/** Whether the person's right goes this far under any condition at all: own things, limits, a second person. */
export const hasLevel = (person: HasRoles, act: PermittedAct, to: Intent['to']): boolean =>
  person.roles.some((role) => {
    const { limit } = permissionOf(role, act);
    return may(role, act, { to, own: true, within: limit === null ? [] : [limit] }).kind !== 'refused';
  });

/** What the page shows buttons for: each act with every role's cell. */
export const cellsOf = ({ roles }: HasRoles) =>
  permittedActs.flatMap((act) =>
    roles
      .map((role) => permissionOf(role, act))
      .filter(({ level }) => level !== 'none')
      .map((permission) => ({ act, ...permission })),
  );

/** Whether this person's agreement counts where two people have to agree. */
export const mayBeOneOfTwo = ({ roles }: HasRoles, act: PermittedAct): boolean =>
  roles.some((role) => {
    const { level, second } = permissionOf(role, act);
    return second || level === 'decide';
  });

/** By which roles of these people two have to agree. */
export const rolesOfTwo = (people: readonly HasRoles[], act: PermittedAct): readonly Role[] =>
  roles.filter(
    (role) => mayBeOneOfTwo({ roles: [role] }, act) && people.some((person) => person.roles.includes(role)),
  );

/** Everybody but a customer's people. */
export const isOfTheOperator = ({ roles }: HasRoles): boolean =>
  roles.some((role) => role !== 'field leader');
