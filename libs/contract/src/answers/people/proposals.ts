import { z } from 'zod';
import { instant, permittedAct, role } from '../field.js';

export const shownProposalAnswer = z
  .strictObject({
    agreed: z.array(z.string()),
    agreedBy: z.array(z.string()).describe('The same people by name, the proposer among them.'),
    draftedBy: z.string(),
    signedBy: z
      .array(z.string())
      .describe('Those of them whose signature counts, by name, the first one first.'),
    stillToSign: z.strictObject({
      people: z.number(),
      roles: z
        .array(role)
        .describe(
          'Of the people who have not signed, the roles whose signature would count; none: nobody can.',
        ),
    }),
    id: z.string(),
    carriedOutBy: z
      .string()
      .describe('Who carries it out when it is agreed: the name under which a feature registered.'),
    act: permittedAct,
    subject: z.string().describe('What it is about, like `strip limit XLOR-B`.'),
    payload: z.record(z.string(), z.unknown()),
    proposedBy: z.string(),
    proposedAt: instant,
    state: z.enum(['open', 'in force', 'withdrawn']),
    settledAt: instant.nullable(),
  })
  .meta({ id: 'ShownProposal' });
