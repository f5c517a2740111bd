/** What a person is here for; the words are those shown on screen. */
export const roles = [
  'operations manager',
  'dispatcher',
  'pilot',
  'helicopter crew',
  'storekeeper',
  'fuel quality',
  'accounts',
  'engineering',
  'set-up',
  'field leader',
] as const;

export type Role = (typeof roles)[number];
