import { z } from 'zod';
import { aircraftTypeSchema, stripLimitSchema } from './aircraft-type-schema.js';
import { horizonDays, instant, isoDate, text } from './field.js';
import { aircraftSchema, helicopterSchema, pilotSchema, weatherOddsSchema } from './fleet-schema.js';
import { dangerousGoodsSchema, tieDownSchema } from './loading-schema.js';
import {
  givenDistanceSchema,
  hazardNoticeSchema,
  placeSchema,
  plannedWindSchema,
  surfaceReportSchema,
} from './place-schema.js';
import { policySchema } from './policy-schema.js';
import {
  approvalSchema,
  bookedFlightSchema,
  helicopterTaskSchema,
  programmeSchema,
  slingMoveSchema,
  standingFlightSchema,
} from './programme-schema.js';
import {
  baseStockSchema,
  batchSchema,
  cacheSchema,
  countSchema,
  drawSchema,
  drumSchema,
} from './stock-schema.js';

const list = <T extends z.ZodType>(of: T, description: string) => z.array(of).meta({ description });

/** The scenario document, version 1. Unknown fields are refused. */
export const scenarioSchema = z
  .strictObject({
    format: z
      .literal('drumline-scenario/1')
      .meta({ description: 'Always this text', examples: ['drumline-scenario/1'] }),
    title: text('Title', 'Hollowtarn Uplands, 14 June 2027'),
    note: text('Anything a reader should know first', 'All names are invented.').exactOptional(),
    timeZone: text('IANA time zone; days and clock times are local to it', 'Etc/GMT'),
    asOf: instant('The moment of the picture: what was written later is not known yet', '2027-06-14T06:00Z'),
    firstDay: isoDate('Day 1', '2027-06-14'),
    days: horizonDays('Days looked ahead', 14),
    offeredDays: horizonDays('Days offered to the dispatcher, from day 1', 7),
    currency: text('What money is printed in', 'cr'),
    policy: policySchema,
    places: list(placeSchema, 'Bases, strips and pads'),
    distances: list(givenDistanceSchema, 'Distances that win over the computed geodesic; may be empty'),
    winds: list(plannedWindSchema, 'Planned winds; empty: still air'),
    surfaceReports: list(surfaceReportSchema, 'Reports of surfaces'),
    notices: list(hazardNoticeSchema, 'Hazard notices'),
    noFlyingDays: list(isoDate('Day', '2027-06-20'), 'Days without flying'),
    weather: list(weatherOddsSchema, 'Chances of cancellation by strip'),
    aircraftTypes: list(aircraftTypeSchema, 'Types'),
    stripLimits: list(stripLimitSchema, "The operator's strip table"),
    aircraft: list(aircraftSchema, 'Tails'),
    helicopters: list(helicopterSchema, 'Helicopters'),
    pilots: list(pilotSchema, 'Pilots of aeroplanes'),
    batches: list(batchSchema, 'Batches of fuel'),
    drums: list(drumSchema, 'Every drum with fuel, by number'),
    caches: list(cacheSchema, 'Places where drums are kept'),
    bases: list(baseStockSchema, 'Bulk fuel and filling'),
    counts: list(countSchema, 'Counts and dips'),
    programmes: list(programmeSchema, 'Programmes that use fuel'),
    helicopterTasks: list(helicopterTaskSchema, 'Helicopter work ahead'),
    slings: list(slingMoveSchema, 'Sling moves ahead'),
    plannedUplifts: list(drawSchema, 'Fuel that aeroplanes will take from caches'),
    bookedFlights: list(bookedFlightSchema, 'Flights that fly anyway'),
    approvals: list(approvalSchema, 'Approvals of the authority on file').exactOptional(),
    tieDown: list(tieDownSchema, 'How loads are tied, by type of aeroplane').exactOptional(),
    dangerousGoods: dangerousGoodsSchema.exactOptional(),
    flights: list(standingFlightSchema, 'Positioning flights that already stand'),
    handPlan: list(standingFlightSchema, 'The plan made by hand, to compare with; empty: none'),
  })
  .meta({ title: 'Drumline scenario', description: 'Everything a plan is made from' });
