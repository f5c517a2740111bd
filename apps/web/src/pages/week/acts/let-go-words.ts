interface LetGo {
  readonly id: string;
  readonly state: string;
}

/** What becomes of flights that are let go, said before the press. */
export const letGoWords = (flights: readonly LetGo[]): string => {
  const [be, they, their] = flights.length === 1 ? ['is', 'it', 'Its'] : ['are', 'they', 'Their'];
  const given = flights.filter(({ state }) => state === 'given').map(({ id }) => id);
  return [
    `${namesOf(flights)} ${be} offered again: a re-plan may change ${flights.length === 1 ? 'it' : 'them'}, and to fly ${they} must be approved anew.`,
    `${their} named drums go back to the pick list.`,
    ...(given.length === 0
      ? []
      : [`Tell the ${given.length === 1 ? 'pilot' : 'pilots'} of ${given.join(', ')}.`]),
  ].join(' ');
};

/** The same where a plan is asked for in the same press: the plan is not waited for. */
export const letGoBeforePlanWords = (flights: readonly LetGo[]): string =>
  `Before the plan is made, at this press: ${letGoWords(flights)} This stays so, whether the plan is accepted or not.`;

/** Beside a plan that was asked for so, while it is not accepted. */
export const wereLetGoWords = (ids: readonly string[]): string =>
  `${ids.join(', ')} ${ids.length === 1 ? 'was' : 'were'} let go when this plan was asked for. Keeping what stands does not bring that back: approve ${ids.length === 1 ? 'it' : 'them'} anew on Week.`;

const namesOf = (flights: readonly LetGo[]): string => flights.map(({ id }) => id).join(', ');
