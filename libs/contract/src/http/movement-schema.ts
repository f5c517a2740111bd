import type { Movement, MovementKind } from '@drumline/stock';
import { z } from 'zod';
import { isoDate, placeCode } from '../scenario/field.js';
import {
  degreesC,
  drumCount,
  grossKg,
  longText,
  millilitres,
  moment,
  shortText,
  written,
} from './written-field.js';

const drum = shortText('Number of the drum, or a provisional one', '0447');
const place = placeCode('Where', 'XLOR');
const batch = shortText('Batch', 'J27-041');
const reason = longText('Why', 'water in the sample');
const amount = millilitres('Fuel', 200_000);
const weights = { tareKg: grossKg('Weight empty', 19.7), grossKg: grossKg('Weight now', 179.1) };
const of = z
  .union([z.strictObject({ drum }), z.strictObject({ batch })])
  .meta({ description: 'A drum or a batch' });
const onLeg = {
  drum,
  place,
  flight: shortText('Flight', 'F05'),
  leg: z
    .number()
    .int()
    .min(1)
    .max(99)
    .meta({ description: 'Leg of the flight, from 1', examples: [1] }),
  condition: z.enum(['sound', 'seal broken', 'damaged', 'leaking']),
  foundMillilitres: millilitres('What was found in it; null: nobody looked', 200_000).nullable(),
};
const content = z.enum(['filled sealed', 'part used', 'clean empty', 'empty with residue', 'drained']);

const kind = <Kind extends MovementKind, Fields extends z.ZodRawShape>(name: Kind, fields: Fields) =>
  z.strictObject({ kind: z.literal(name), ...written, ...fields }).meta({ title: name });

/** Each kind of movement as it is sent in; its id is in the address, and the server says when it was received. */
export const movementBodySchema = z.discriminatedUnion('kind', [
  kind('received', {
    drum,
    place,
    batch,
    content,
    millilitres: amount,
    openedAt: moment('When it was opened', '2027-06-09T08:00Z').exactOptional(),
    ...weights,
  }),
  kind('filled', {
    drum,
    place,
    batch,
    millilitres: amount,
    ...weights,
    temperatureC: degreesC('How warm the fuel was', 11).exactOptional(),
  }),
  kind('loaded', { ...onLeg, bound: z.enum(['out', 'home']) }),
  kind('left at', onLeg),
  kind('brought home', onLeg),
  kind('opened', { drum, place }),
  kind('drawn', {
    drum,
    place,
    millilitres: amount,
    into: shortText('Aircraft that took it', 'H1'),
    programme: shortText('Programme', 'P1'),
    leftMillilitres: millilitres('What is left in the drum; null: nobody looked', 80_000).nullable(),
    medevac: longText('Why the medevac reserve was drawn', 'patient at XGAN').exactOptional(),
  }),
  kind('dipped', { drum, place, millilitres: amount }),
  kind('counted', {
    place,
    method: z.enum(['dip', 'drums seen']),
    seenFrom: z.enum(['ground', 'air']),
    millilitres: amount,
    sealedDrums: drumCount('Sealed drums', 10),
    openDrums: drumCount('Open drums', 1),
    emptyDrums: drumCount('Empty drums', 3),
  }),
  kind('held', { of, reason }),
  kind('released', { of, reason }),
  kind('condemned', { drum, reason }),
  kind('emptied', { drum, place, leaves: z.enum(['clean empty', 'empty with residue', 'drained']) }),
  kind('slung', {
    drum,
    helicopter: shortText('Helicopter', 'H1'),
    from: placeCode('From', 'XESK'),
    to: placeCode('To', 'XMAR'),
  }),
  kind('weighed', { drum, place, grossKg: weights.grossKg }),
  kind('retest passed', {
    of,
    certificate: shortText('Certificate of the laboratory', 'L-2027-118'),
    retestDue: isoDate('Last day of use', '2028-06-14'),
  }),
  kind('transferred', { drum, place, into: drum, batch, millilitres: amount }),
  kind('spilled', { drum, place, millilitres: amount, cause: longText('Cause', 'bung came off') }),
  kind('lost', { drum, place }),
  kind('found', { drum, place }),
  kind('joined', { provisional: drum, drum }),
  kind('corrected', {
    corrects: z.uuid().toLowerCase().meta({ description: 'Id of the movement that was wrong' }),
    reason,
  }),
]);

/** A hold as it is set in one action. */
export const holdBodySchema = z.strictObject({ ...written, of, reason });

export type HoldBody = z.output<typeof holdBodySchema>;

export type MovementBody = z.output<typeof movementBodySchema>;

const movementId = z
  .uuid()
  .toLowerCase()
  .meta({ description: 'Made by the sender; the same id is the same movement' });

/** What a phone has kept while it was out of reach, sent at once and answered one by one. */
export const movementOutboxSchema = z
  .array(z.strictObject({ id: movementId, movement: movementBodySchema }))
  .min(1)
  .max(500);

export type MovementOutbox = z.output<typeof movementOutboxSchema>;

/** What the server adds: who sends it where nobody is named, and when it came in. A release names two persons. */
type Added = 'id' | 'receivedAt' | 'by' | 'second';
type Sent<M> = M extends Movement ? Omit<M, Added> : never;
type Whole<T> = T extends MovementBody | Sent<Movement> ? Omit<T, 'by'> : never;
type Assignable<From extends To, To> = From;

/** Does not compile when the bodies and the movements of the ledger part ways. */
export type SameMovements = [
  Assignable<Whole<MovementBody>, Whole<Sent<Movement>>>,
  Assignable<Whole<Sent<Movement>>, Whole<MovementBody>>,
];
