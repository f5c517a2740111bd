import { areTwoPeople } from '@drumline/loading';

/** Null: a difference may be signed for. It takes two people, the second by name: nobody can be asked without a line. */
export const whyNotSigned = (by: string, reason: string, second: string): string | null => {
  if (reason.trim() === '') return 'The reason first';
  if (second.trim() === '') return 'The second person first';
  return areTwoPeople(by, second) ? null : 'Somebody else than yourself';
};

/** With everything that was typed: a first attempt stays on record. */
export const reasonWords = (reason: string, attempts: readonly string[]): string =>
  `${reason.trim()}. Typed: ${attempts.join('; ')}`.slice(0, 1000);
