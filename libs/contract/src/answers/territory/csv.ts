import { z } from 'zod';
import { shownProposalAnswer } from '../people/proposals.js';
import { faultAnswer } from '../words.js';

export const csvImportedAnswer = z
  .strictObject({
    added: z.number(),
    changed: z.number(),
    unchanged: z.number(),
    removed: z.number(),
    dryRun: z.boolean(),
    notInFile: z
      .array(z.string())
      .describe(
        'What is there and has no line in the file, in words: it stays unless it is asked to be removed.',
      ),
    doubts: z.array(faultAnswer).describe('What looks wrong, by line, and kept the file not out.'),
    proposal: shownProposalAnswer.describe('Waits for a second person.').exactOptional(),
  })
  .meta({ id: 'CsvImported' });

export const csvAddedAnswer = csvImportedAnswer
  .omit({ removed: true, notInFile: true, proposal: true })
  .meta({ id: 'CsvAdded' });
