import { z } from 'zod';
import {
  clockTime,
  drums,
  hours,
  isoDate,
  kg,
  litres,
  nm,
  persons,
  placeCode,
  reference,
  text,
} from './field.js';

export const programmeSchema = z
  .strictObject({
    code: text('Code', 'P1'),
    name: text('Name', 'ridge survey'),
    recharge: z
      .discriminatedUnion(
        'kind',
        [
          z.strictObject({
            kind: z.literal('delivered cost'),
            marginPercent: z
              .number()
              .min(0)
              .max(100)
              .meta({ description: 'Margin on it', unit: '%', examples: [8] }),
          }),
          z.strictObject({
            kind: z.literal('fixed price'),
            centsPerLitre: z
              .number()
              .nonnegative()
              .meta({ description: 'Price', unit: 'cent/L', examples: [520] }),
          }),
          z.strictObject({ kind: z.literal('not recharged') }),
        ],
        'kind is "delivered cost" (with marginPercent), "fixed price" (with centsPerLitre) or "not recharged"',
      )
      .meta({
        description: 'How the litres are charged on',
        examples: [{ kind: 'delivered cost', marginPercent: 8 }],
      }),
  })
  .meta({ id: 'Programme', description: 'Who the fuel is for' });

export const helicopterTaskSchema = z
  .strictObject({
    date: isoDate('Day', '2027-06-14'),
    helicopter: reference('helicopters', 'Helicopter', 'H1'),
    programme: reference('programmes', 'Programme', 'P1'),
    place: placeCode('Cache drawn from; listed in `caches`', 'XESK'),
    hours: hours('Flight hours', 4),
    litres: litres('Fuel drawn', 450),
    note: text('Anything else', 'then standby').exactOptional(),
  })
  .meta({ id: 'HelicopterTask', description: 'Helicopter work of a day, drawing from one cache' });

export const slingMoveSchema = z
  .strictObject({
    date: isoDate('Day', '2027-06-15'),
    helicopter: reference('helicopters', 'Helicopter', 'H2'),
    from: placeCode('Cache; listed in `caches`', 'XLOR'),
    to: placeCode('Cache; listed in `caches`', 'XOGR'),
    drums: drums('Filled drums', 4),
    distanceNm: nm('Distance', 13.7),
  })
  .meta({ id: 'SlingMove', description: 'Drums carried under a helicopter from one cache to another' });

const bookedLegSchema = z
  .strictObject({
    from: placeCode('From; listed in `places`', 'XMER'),
    to: placeCode('To; listed in `places`', 'XISK'),
    passengers: persons('Passengers', 4),
    passengersKg: kg('Their weight with baggage', 360),
    freightKg: kg('Freight', 120),
  })
  .meta({ id: 'BookedLeg', description: 'One leg of a booked flight' });

export const bookedFlightSchema = z
  .strictObject({
    id: text('Id', 'X1'),
    date: isoDate('Day', '2027-06-14'),
    aircraft: reference('aircraft', 'Tail', 'A1'),
    configuration: text('Cabin configuration of its type', 'seats'),
    purpose: text('What for', 'survey crew change'),
    legs: z.array(bookedLegSchema).min(1).meta({ description: 'Legs, in order' }),
    heldHours: hours('Aircraft time taken out of the day, turn-rounds included', 2.2),
    departs: clockTime('Departure; absent: in the morning if it fits', '13:00').exactOptional(),
    note: text('Anything else', '3 drums spare outbound').exactOptional(),
  })
  .meta({ id: 'BookedFlight', description: 'A flight that flies anyway; its spare payload may take drums' });

const stopSchema = z
  .strictObject({ place: placeCode('Strip; listed in `places`', 'XLOR'), drums: drums('Drums unloaded', 6) })
  .meta({ id: 'Stop', description: 'Drums left at a strip' });

export const standingFlightSchema = z
  .strictObject({
    id: text('Id', 'F05'),
    state: z
      .enum(['offered', 'approved', 'given', 'loaded', 'away', 'home', 'reported', 'closed'])
      .meta({ description: 'How far it is; from approved on it does not move', examples: ['approved'] }),
    date: isoDate('Day', '2027-06-15'),
    aircraft: reference('aircraft', 'Tail', 'B1'),
    from: placeCode('Base; listed in `places`', 'XALD'),
    stops: z.array(stopSchema).min(1).meta({ description: 'Stops, in order' }),
    to: placeCode('Base; listed in `places`', 'XALD'),
    pilot: reference('pilots', 'Pilot', 'FW2').exactOptional(),
    departs: clockTime('Departure', '07:00').exactOptional(),
  })
  .meta({ id: 'StandingFlight', description: 'A positioning flight that already stands' });
