import { z } from 'zod';
import { lb } from '../field.js';

export const restraintDirection = z.enum(['forward', 'aft', 'sideways', 'up']);

export const restraintNeedAnswer = z
  .strictObject({
    direction: restraintDirection,
    neededLb: lb,
    eachLb: lb.describe('What one strap holds that way at its angles.'),
    straps: z
      .number()
      .nullable()
      .describe('Sideways: on each side. Null: straps at these angles hold nothing that way.'),
  })
  .meta({
    id: 'RestraintNeed',
    description: 'What must be held in one direction, and by how many straps that pull that way.',
  });

export const tieDownAnswer = z
  .strictObject({
    loadLb: lb,
    deciding: z.strictObject({
      part: z.enum(['strap', 'fitting', 'floor ring']),
      figure: z.literal('ultimate load in an aircraft'),
      ultimateLb: lb,
      reference: z.string().describe('Approval, standard or manual that rates it for aircraft.'),
    }),
    needs: z.array(restraintNeedAnswer),
    layout: z
      .strictObject({
        forwardStraps: z.number(),
        aftStraps: z.number(),
      })
      .nullable()
      .describe(
        'Straps in pairs, one to each side: those that hold forward, and those that hold aft. Null: not possible so.',
      ),
    words: z.string().describe('Straps by direction and in all, what decides, and by which figures.'),
    brief: z.string().describe('The same in one breath, for paper.'),
    caution: z.string(),
  })
  .meta({
    id: 'TieDown',
    description: 'A planning aid: what the approved loading manual says goes before it.',
  });

export const sheetTieDownAnswer = z
  .strictObject({
    counted: tieDownAnswer
      .nullable()
      .describe('Null: not counted, and `words` say what is missing and where it is entered.'),
    words: z.string(),
    brief: z.string().describe('For paper.'),
    caution: z.string(),
  })
  .meta({ id: 'SheetTieDown', description: 'Straps for each drum, reckoned by the heaviest.' });
