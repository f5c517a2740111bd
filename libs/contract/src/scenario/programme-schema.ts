import { z } from 'zod';
import {
  clockTime,
  drums,
  hours,
  isoDate,
  kg,
  litres,
  nm,
  percent,
  persons,
  placeCode,
  price,
  reference,
  text,
} from './field.js';

const rechargeSchema = z.discriminatedUnion(
  'kind',
  [
    z
      .strictObject({
        kind: z
          .literal('delivered cost')
          .meta({ description: 'Fuel, flight and handling', examples: ['delivered cost'] }),
        marginPercent: percent('Margin on it', 8),
      })
      .meta({ id: 'DeliveredCost', description: 'Charged on at what the litre cost where it was drawn' }),
    z
      .strictObject({
        kind: z.literal('fixed price').meta({ description: 'Agreed', examples: ['fixed price'] }),
        centsPerLitre: price('Price', 520),
      })
      .meta({ id: 'FixedPrice', description: 'Charged on at an agreed price' }),
    z
      .strictObject({
        kind: z
          .literal('not recharged')
          .meta({ description: "The operator's own", examples: ['not recharged'] }),
      })
      .meta({ id: 'NotRecharged', description: 'Not charged on' }),
  ],
  'kind is "delivered cost" (with marginPercent), "fixed price" (with centsPerLitre) or "not recharged"',
);

export const programmeSchema = z
  .strictObject({
    code: text('Code', 'P1'),
    name: text('Name', 'ridge survey'),
    recharge: rechargeSchema.meta({ description: 'How the litres are charged on' }),
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
    from: placeCode('From cache; listed in `caches`', 'XLOR'),
    to: placeCode('To cache; listed in `caches`', 'XOGR'),
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
    id: text('Flight', 'X1'),
    date: isoDate('Day', '2027-06-14'),
    aircraft: reference('aircraft', 'Tail', 'A1'),
    configuration: text('Cabin configuration of its type', 'seats'),
    purpose: text('What for', 'survey crew change'),
    legs: z.array(bookedLegSchema).min(1).meta({ description: 'Legs, in order' }),
    heldHours: hours('Aircraft time taken out of the day, turn-rounds included', 2.2),
    departs: clockTime('Departure; absent: not fixed', '13:00').exactOptional(),
    approval: text(
      'Number of the approval cited for drums beside its passengers; listed in `approvals`',
      'CA 17/27',
    ).exactOptional(),
    note: text('Anything else', '3 drums spare outbound').exactOptional(),
  })
  .meta({ id: 'BookedFlight', description: 'A flight that flies anyway; its spare payload may take drums' });

export const approvalSchema = z
  .strictObject({
    number: text('Number, as the authority gives it', 'CA 17/27'),
    authority: text('Who gave it', 'civil aviation authority'),
    scope: text('What it is for, in its own words', 'fuel drums beside field staff, B1'),
    legs: z
      .array(z.tuple([placeCode('One end', 'XALD'), placeCode('The other end', 'XCIN')]))
      .nullable()
      .meta({ description: 'Legs it covers, either way; null: every leg', examples: [[['XALD', 'XCIN']]] }),
    aircraft: z
      .array(reference('aircraft', 'Tail', 'B1'))
      .nullable()
      .meta({ description: 'Aircraft it covers; null: all', examples: [['B1']] }),
    mostDrums: drums('Most drums; null: no number is given', 2).nullable(),
    mostPassengers: persons('Most passengers; null: no number is given', 3).nullable(),
    conditions: text('Its conditions, in its own words', 'drums behind the passengers, door side free'),
    from: isoDate('First day', '2027-06-01'),
    until: isoDate('Last day on which it holds', '2027-09-30'),
    agreedBy: z
      .array(text('Name', 'K. Aske'))
      .readonly()
      .meta({ description: 'The two people who put their names to it; absent: it covers nothing yet' })
      .exactOptional(),
  })
  .meta({ id: 'Approval', description: 'An approval of the authority for passengers and drums on one leg' });

export const standingState = z
  .enum(['offered', 'approved', 'given', 'loaded', 'away', 'home', 'reported', 'closed'])
  .meta({ description: 'How far it is; from approved on it does not move', examples: ['approved'] });

const stopSchema = z
  .strictObject({
    place: placeCode('Strip; listed in `caches`', 'XLOR'),
    drums: drums('Drums unloaded', 6),
    heldDrums: drums('Of them, on hold: they count in no level', 2).exactOptional(),
  })
  .meta({ id: 'Stop', description: 'Drums left at a strip' });

export const standingFlightSchema = z
  .strictObject({
    id: text('Flight', 'F05'),
    state: standingState,
    date: isoDate('Day', '2027-06-15'),
    aircraft: reference('aircraft', 'Tail', 'B1'),
    from: placeCode('Base; listed in `bases`', 'XALD'),
    stops: z.array(stopSchema).min(1).meta({ description: 'Stops, in order' }),
    to: placeCode('Base; listed in `bases`', 'XALD'),
    pilot: reference('pilots', 'Pilot', 'FW2').exactOptional(),
    departs: clockTime('Departure', '07:00').exactOptional(),
  })
  .meta({ id: 'StandingFlight', description: 'A positioning flight that already stands' });
