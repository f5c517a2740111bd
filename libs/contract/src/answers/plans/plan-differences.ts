import { z } from 'zod';
import { type Answer, hours, instant, isoDate, litres } from '../field.js';
import { baseUse, moneyParts, plannedFlight } from '../planned.js';

export const flightChangeAnswer = z
  .strictObject({
    before: plannedFlight,
    after: plannedFlight,
  })
  .meta({ id: 'FlightChange' });

export const planTotalsAnswer = z
  .strictObject({
    flights: z.number(),
    drums: z.number(),
    litres: litres,
    blockHours: hours,
    cost: moneyParts,
    drumsFromBase: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.number(),
      }),
    ),
  })
  .meta({ id: 'PlanTotals' });

export const planDifferencesAnswer = z
  .strictObject({
    asOf: instant,
    lastOfferedDay: isoDate.describe(
      'Last day whose flights are offered when the plan is accepted; later ones stay ideas.',
    ),
    lastDay: isoDate,
    faults: z
      .array(
        z.strictObject({
          flight: z.string(),
          text: z.string(),
        }),
      )
      .describe('What stands in the way of a flight that stood, by the facts of the run.'),
    bases: z.strictObject({
      before: z.array(baseUse),
      after: z.array(baseUse),
    }),
    cannotKeep: z
      .array(z.strictObject({ text: z.string(), blockedBy: z.string() }))
      .describe('What is short all the same, with what stands in the way.'),
    remarks: z.array(z.string()).describe('What it rests on, and what was not used.'),
    expectedDrums: z
      .strictObject({
        before: z.number(),
        after: z.number(),
      })
      .describe('Drums that the weather is likely to let land, if every flight flies in its half day.'),
    levels: z.array(
      z.strictObject({
        place: z.string(),
        dates: z.array(isoDate),
        before: z.array(z.number()),
        after: z.array(z.number()),
      }),
    ),
    removed: z.array(plannedFlight),
    added: z.array(plannedFlight),
    moved: z.array(flightChangeAnswer),
    drumsChanged: z.array(flightChangeAnswer),
    same: z.array(flightChangeAnswer),
    pilotChanged: z.array(flightChangeAnswer).describe('Those of `same` that another pilot flies.'),
    totals: z.strictObject({
      before: planTotalsAnswer,
      after: planTotalsAnswer,
    }),
    lowest: z.array(
      z.strictObject({
        place: z.string(),
        beforeLitres: litres,
        afterLitres: litres,
        minimumLitres: litres,
        criticalLitres: litres,
        withIdeas: z
          .strictObject({ beforeLitres: litres, afterLitres: litres })
          .describe('With the later ideas of each plan as well.'),
      }),
    ),
    laterIdeas: z
      .strictObject({ before: z.number(), after: z.number() })
      .describe('Flights of each plan later than those it offers: no level counts them.'),
    mayLeaveOut: z
      .array(z.string())
      .describe(
        "Keys of the lines that can be left out: the flight's number in the plan, of a removed one its own.",
      ),
    leftOut: z.array(z.string()).describe('Keys of the lines that were asked to be left out.'),
    faultsAfter: z
      .array(z.strictObject({ flights: z.array(z.string()), text: z.string() }))
      .describe('What stands in the way of the plan with those lines left out, by the facts of the run.'),
  })
  .meta({
    id: 'PlanDifferencesAnswer',
    description:
      'A plan beside what stood when it was asked for: the flights then standing, and after their days what the plan accepted last had in mind. Money, drums and hours are of the whole plans, ideas included; levels are with approved and offered flights, as on every page. With lines left out the lists are those of the whole plan still, and all that is added up is of what would be accepted.',
  });
export type PlanDifferencesAnswer = Answer<typeof planDifferencesAnswer>;

export type LowestBeside = PlanDifferencesAnswer['lowest'][number];
