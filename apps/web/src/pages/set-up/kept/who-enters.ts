import { type PermittedAct, permissionOf, roles } from '@drumline/contract';

/** Why a form is off for somebody who may only look, with whom to ask. */
export const askWords = (act: PermittedAct): string => {
  const able = roles.filter((role) => ['enter', 'decide'].includes(permissionOf(role, act).level));
  return `You may look at it only. Ask: ${able.join(', ')}.`;
};
