import { z } from 'zod';
import { clockTime, drums, isoDate, placeCode } from '../scenario/field.js';
import { longText, shortText } from './written-field.js';

const reason = longText('Why, in a few words', 'cloud on the pass all week').min(
  3,
  'a reason is at least three letters',
);

/** For acts that the operator wants a reason of. */
export const reasonSchema = z.strictObject({ reason }).meta({ id: 'Reason', description: 'Why it is done' });

/** For acts that may go without a reason. */
export const optionalReasonSchema = z
  .strictObject({ reason: reason.exactOptional() })
  .meta({ id: 'OptionalReason', description: 'Why it is done, if that is worth saying' });

const amendedStopSchema = z
  .strictObject({
    place: placeCode('Strip; listed in `caches`', 'XLOR'),
    drums: drums('Drums unloaded', 4).min(1).max(100),
    numbers: z
      .array(shortText('Drum number', '0451'))
      .max(100)
      .meta({
        description:
          'Drums by number; absent or too few: the oldest fit are taken, and the rest stands to be filled',
        examples: [['0451', '0452']],
      })
      .exactOptional(),
  })
  .meta({ id: 'AmendedStop', description: 'Drums for a strip' });

/** What is to be other than it is; what is left out stays. Nothing at all: unfit drums are replaced. */
export const amendmentSchema = z
  .strictObject({
    date: isoDate('Day', '2027-06-16').exactOptional(),
    departs: clockTime('Departure', '07:30')
      .nullable()
      .meta({ description: 'Departure; null: as early as aircraft and pilot allow', examples: ['07:30'] })
      .exactOptional(),
    aircraft: shortText('Tail; listed in `aircraft`', 'A2').exactOptional(),
    pilot: shortText('Pilot; listed in `pilots`', 'FW2')
      .nullable()
      .meta({ description: 'Pilot; null: nobody named yet', examples: ['FW2'] })
      .exactOptional(),
    stops: z.array(amendedStopSchema).min(1).max(20).meta({ description: 'Stops, in order' }).exactOptional(),
    reason: reason.exactOptional(),
  })
  .meta({ id: 'Amendment', description: 'A change of one flight' });

export type Amendment = z.output<typeof amendmentSchema>;

/** Several flights in one named action: all of them, or none. */
export const letGoSchema = z
  .strictObject({
    flights: z
      .array(
        z.strictObject({
          id: shortText('Flight', 'F012'),
          revision: z
            .number()
            .int()
            .min(1)
            .meta({ description: 'As it was read', examples: [3] }),
        }),
      )
      .min(1)
      .max(100),
    reason,
  })
  .meta({ id: 'LetGo', description: 'Approved flights that a re-plan may change again' });

export type LetGo = z.output<typeof letGoSchema>;
