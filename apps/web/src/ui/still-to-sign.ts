interface StillToSign {
  readonly people: number;
  readonly roles: readonly string[];
}

/** "fuel quality has still to sign". */
export const stillToSignWords = ({ people, roles }: StillToSign): string => {
  if (people === 0) return '';
  if (roles.length === 0) return 'Nobody else may sign: set-up adds a person.';
  const who = roles.join(' or ');
  return people === 1 ? `${who} has still to sign` : `${people} of ${roles.join(', ')} have still to sign`;
};
