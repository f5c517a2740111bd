import type { Movement } from '@drumline/stock';
import { dateWords } from '@drumline/units';
import type { Proposal } from '../drums-read.js';

/** What two people are asked to agree to. */
export const sentenceOfProposal = ({ subject, payload }: Proposal): string => {
  const movement = payload.movement as Partial<Movement> | undefined;
  if (movement?.kind === 'released') return `Proposed: ${subject}. Found: ${movement.reason}.`;
  if (movement?.kind === 'retest passed')
    return `${subject}. Certificate ${movement.certificate}, next retest due ${dateWords(movement.retestDue!)}.`;
  if (movement?.kind === 'corrected') return `An entry is to be reversed: ${movement.reason}.`;
  return subject;
};
