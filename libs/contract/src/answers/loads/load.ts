import { z } from 'zod';
import { type Answer, inches, instant, lb } from '../field.js';
import { whoIsFitAnswer } from '../flights/flight-card.js';
import { flightInShort, flightLastDone } from '../flights/flight-in-short.js';
import { surfaceReport } from '../planned.js';
import { flightKind } from '../words.js';
import { balanceFaultAnswer, blindMomentAnswer, unloadOrStayAnswer } from './balance.js';
import { fallbackAnswer } from './go-back.js';
import { blindSheetAnswer } from './load-sheet.js';
import { payloadBarAnswer } from './payload-bar.js';
import { preparationListAnswer } from './preparation-list.js';
import { blindLegAnswer } from './sheet-leg.js';

export const drumInPosition = z.strictObject({ drum: z.string(), position: z.string() });

export const loadStandingAnswer = z
  .strictObject({
    holds: z.boolean(),
    faults: z.array(z.string()),
    balanceFaults: z.array(balanceFaultAnswer),
    moments: z.array(blindMomentAnswer).describe('By leg and moment; weights are the sums of the bar.'),
    mend: z
      .strictObject({
        words: z.string(),
        positions: z.array(drumInPosition),
      })
      .nullable()
      .describe('The least handling that mends it; null: nothing to mend, or nothing mends it.'),
  })
  .meta({ id: 'LoadStanding', description: 'Whether the drums may stand so, and what would mend it.' });
export type LoadStanding = Answer<typeof loadStandingAnswer>;

export const loadPictureAnswer = loadStandingAnswer
  .extend({
    sheet: blindSheetAnswer,
    bars: z.array(payloadBarAnswer),
    fallbacks: z
      .array(fallbackAnswer)
      .describe('What is left to do when a strip is soft, by leg where drums come off.'),
  })
  .meta({ id: 'LoadPicture', description: 'The load of a flight as it stands, drawn by leg.' });
export type LoadPicture = Answer<typeof loadPictureAnswer>;

export const plannedLoadAnswer = blindSheetAnswer
  .pick({ assumptions: true, fuelWords: true, cautions: true })
  .extend({
    legs: z.array(blindLegAnswer.pick({ from: true, to: true, distanceNm: true })),
    bars: z.array(payloadBarAnswer),
  })
  .meta({
    id: 'PlannedLoad',
    description:
      'The planned drums of a flight by leg, each at the planning weight: before they have numbers.',
  });
export type PlannedLoad = Answer<typeof plannedLoadAnswer>;

export const nextDrumAnswer = z
  .strictObject({
    number: z.string(),
    batch: z.string(),
    kg: z.number(),
  })
  .meta({ id: 'NextDrum' });

export const crewSaidAnswer = z
  .strictObject({
    flight: z.string(),
    kind: z.string(),
    at: instant,
    by: z.string(),
    words: z.string(),
  })
  .meta({ id: 'CrewSaid' });
export type CrewSaid = Answer<typeof crewSaidAnswer>;

export const loadingAnswer = z
  .strictObject({
    version: z.number().describe('Of the sheet it was loaded by.'),
    at: instant.describe('When it was loaded.'),
    by: z.string().describe('Who reports it.'),
    means: z.enum(['screen', 'phone', 'radio', 'paper']),
    witnesses: z.array(z.string()),
    load: z.strictObject({ bySheetLb: lb, byHandLb: lb, differenceLb: lb }),
    takeOff: z.strictObject({ bySheetLb: lb, byAircraftLb: lb, differenceLb: lb }),
    signed: z
      .strictObject({ by: z.string(), reason: z.string(), second: z.string().nullable() })
      .nullable()
      .describe('Who accepted a difference; null: nobody had to.'),
    checkCode: z.string().nullable().describe('Read off paper; null: not told.'),
    raised: z.array(z.string()),
  })
  .meta({ id: 'Loading', description: 'The totals that a flight was loaded by, from two hands each.' });
export type Loading = Answer<typeof loadingAnswer>;

export const loadAnswer = z
  .strictObject({
    ...flightInShort,
    ...flightLastDone,
    kind: flightKind,
    state: z.string(),
    revision: z.number(),
    pilot: z.string().nullable(),
    asOf: instant,
    type: z.strictObject({
      id: z.string(),
      note: z.string().nullable(),
      maxZeroFuelLb: lb,
      envelope: z.array(
        z.strictObject({
          weightLb: lb,
          forwardIn: inches,
          aftIn: inches,
        }),
      ),
    }),
    cabin: preparationListAnswer.nullable().describe('What the loader prepares; places front to back.'),
    load: loadPictureAnswer.nullable().describe('Null: `why` says why there is no load to show.'),
    why: z.string().nullable(),
    planned: plannedLoadAnswer
      .nullable()
      .describe('Where there is no load yet; null: there is one, or the flight carries nothing.'),
    toFill: z.number().describe('Drums still to be filled.'),
    nextOldest: z
      .array(
        z.strictObject({
          place: z.string(),
          drum: nextDrumAnswer.nullable(),
        }),
      )
      .describe('By stop: the oldest fit drum at the base that no flight has; null: none.'),
    insteadOfHeld: z
      .strictObject({
        held: z.array(z.string()).describe('Drums of the flight that are held.'),
        fit: z
          .array(z.string())
          .describe('The oldest fit drums at the base that no flight has, in their place.'),
        setAside: z
          .array(z.strictObject({ flight: z.string(), drums: z.number() }))
          .describe('Where too few are free: fit drums there that offered flights have, by flight.'),
        stops: z
          .array(z.strictObject({ place: z.string(), drums: z.number(), numbers: z.array(z.string()) }))
          .describe('The stops with them, as an amendment takes them.'),
      })
      .nullable()
      .describe('What could fly in the place of drums that are held; null: none is held.'),
    asPlanned: z
      .array(unloadOrStayAnswer)
      .describe('Unload or stay with every drum at its planning weight, as the plan has it.'),
    planningKg: z.number(),
    crew: z.array(whoIsFitAnswer),
    stops: z.array(
      z.strictObject({
        place: z.string(),
        drums: z.array(z.string()),
      }),
    ),
    reported: z.array(surfaceReport).describe('What was said of the places on the way, the newest first.'),
    crewsSaid: z
      .array(crewSaidAnswer)
      .describe(
        'Flights that did not go, or turned back, at these places, in the words of their crews; the newest first.',
      ),
    toleranceLb: lb.nullable().describe('Null: the operator has not said by how much two totals may differ.'),
    loadings: z
      .array(loadingAnswer)
      .describe(
        'What crews reported of its loading, the newest first; of a version still to be loaded, none.',
      ),
  })
  .meta({
    id: 'LoadAnswer',
    description:
      'Answer of GET /api/flights/:id/sheet: one flight as it is loaded, without the totals that are typed blind.',
  });
export type LoadAnswer = Answer<typeof loadAnswer>;
