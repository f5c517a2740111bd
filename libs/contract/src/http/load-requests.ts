import { z } from 'zod';
import { drums, lb, placeCode } from '../scenario/field.js';
import { shortText } from './written-field.js';

/** A total as somebody added it, to be compared with the sheet's. */
export const typedTotalSchema = z
  .strictObject({
    of: z.enum(['load', 'take-off weight']).meta({ description: 'Which total', examples: ['load'] }),
    typedLb: lb('As added by hand, or as the aircraft shows it', 2378)
      .refine((weight) => Number.isInteger(weight), 'a total is whole pounds')
      .refine((weight) => weight <= 1_000_000, 'no aeroplane of this trade weighs so much'),
    leg: z
      .number()
      .int()
      .min(0)
      .max(20)
      .default(0)
      .meta({ description: 'Leg, from 0', examples: [0] }),
  })
  .meta({ id: 'TypedTotal', description: 'A total that was added without sight of the sheet’s' });

export type TypedTotal = z.output<typeof typedTotalSchema>;

/** Where every drum of a flight stands. */
export const positionsSchema = z
  .strictObject({
    positions: z
      .array(
        z.strictObject({
          drum: shortText('Number of the drum', '0451'),
          position: shortText('Place', 'R1L'),
        }),
      )
      .min(1)
      .max(100)
      .meta({ description: 'Every drum of the flight, in its place' }),
  })
  .meta({ id: 'Positions', description: 'A hand-made loading' });

export type Positions = z.output<typeof positionsSchema>;

/** Drums on a flight that flies anyway. */
export const addDrumsSchema = z
  .strictObject({
    place: placeCode('Landing at which they come off', 'XISK'),
    drums: drums('Drums', 2).min(1).max(100),
    approval: shortText('Number of the approval of the authority that is cited', 'CA-1').exactOptional(),
  })
  .meta({ id: 'AddDrums', description: 'Drums for a landing of a booked flight' });

export type AddDrums = z.output<typeof addDrumsSchema>;

/** What of them is looked at before anybody adds them; nothing named: as many as go where most go. */
export const bookedLoadQuery = z.strictObject({
  place: addDrumsSchema.shape.place.exactOptional(),
  drums: z
    .string()
    .regex(/^(\d{1,2}|100)$/, 'drums are a whole number from 0 to 100')
    .transform(Number)
    .exactOptional()
    .meta({ description: 'Drums' }),
  approval: addDrumsSchema.shape.approval,
});

export type BookedLoadQuery = z.output<typeof bookedLoadQuery>;
