import { z } from 'zod';
import {
  chance,
  drums,
  hours,
  isoDate,
  litresPerHour,
  minutes,
  placeCode,
  reference,
  speedKt,
  text,
} from './field.js';
import { stripClass } from './place-schema.js';

const absenceSchema = z
  .strictObject({
    from: isoDate('First day', '2027-06-17'),
    until: isoDate('Last day', '2027-06-18'),
    reason: text('Why', 'scheduled inspection'),
  })
  .meta({ id: 'Absence', description: 'Days on which a tail or a helicopter does not fly, both included' });

export const aircraftSchema = z
  .strictObject({
    tail: text('Tail', 'A1'),
    type: reference('aircraftTypes', 'Type', 'A'),
    home: placeCode('Home base; listed in `bases`', 'XMER'),
    absences: z.array(absenceSchema).meta({ description: 'Days away' }),
  })
  .meta({ id: 'Aircraft', description: 'One tail' });

const slingingSchema = z
  .strictObject({
    speedKt: speedKt('Speed, a load out and empty back, on the mean', 60),
    minutesPerLift: minutes('Hooking on, rigging and setting down, a lift', 10),
    reference: text('Document it stands in', 'operations manual, sling loads, revision 1'),
  })
  .meta({ id: 'Slinging', description: 'How long a helicopter takes under a sling, by the operator' });

export const helicopterSchema = z
  .strictObject({
    id: text('Helicopter', 'H1'),
    name: text('Name', 'light turbine helicopter'),
    fuelLitresPerHour: litresPerHour('Fuel use', 112),
    drumsPerLift: drums('Drums under the hook', 3),
    slinging: slingingSchema
      .meta({ description: 'Under a sling; absent: its hours are not worked out' })
      .exactOptional(),
    absences: z
      .array(absenceSchema)
      .meta({ description: 'Days away, of the machine or its crew; absent: none' })
      .exactOptional(),
  })
  .meta({ id: 'Helicopter', description: 'A helicopter that draws from caches' });

const lastLandingSchema = z
  .strictObject({ place: placeCode('Strip; listed in `places`', 'XGAN'), date: isoDate('Day', '2027-05-30') })
  .meta({ id: 'LastLanding', description: 'The last landing of a pilot at a strip' });

const flownSchema = z
  .strictObject({ date: isoDate('Day', '2027-06-12'), blockHours: hours('Block hours', 4.5) })
  .meta({ id: 'Flown', description: 'Hours flown before the first day, for the rolling limit' });

export const pilotSchema = z
  .strictObject({
    id: text('Pilot', 'FW1'),
    types: z
      .array(reference('aircraftTypes', 'Type', 'A'))
      .min(1)
      .meta({ description: 'Types flown; listed in `aircraftTypes`', examples: [['A', 'B']] }),
    stripClasses: z
      .array(stripClass)
      .min(1)
      .meta({ description: 'Strip classes cleared for', examples: [[1, 2, 3]] }),
    lastLandings: z.array(lastLandingSchema).meta({ description: 'Last landing at each strip' }),
    daysOff: z
      .array(isoDate('Day off', '2027-06-19'))
      .meta({ description: 'Days off', examples: [['2027-06-19']] }),
    flown: z.array(flownSchema).meta({ description: 'Hours before the first day' }),
    note: text('Anything else', 'check flight due').exactOptional(),
  })
  .meta({ id: 'Pilot', description: 'A pilot, with what the crew rules ask' });

export const weatherOddsSchema = z
  .strictObject({
    place: placeCode('Strip; listed in `places`', 'XGAN'),
    morningCancel: chance('Chance that a morning flight is cancelled', 0.28),
    afternoonCancel: chance('Chance that an afternoon flight is cancelled', 0.55),
  })
  .meta({ id: 'WeatherOdds', description: 'How often weather cancels a flight to a strip' });
