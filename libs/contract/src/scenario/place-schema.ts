import { z } from 'zod';
import {
  clockTime,
  drums,
  elevationFt,
  feet,
  hours,
  instant,
  isoDate,
  kt,
  latitudeDeg,
  longitudeDeg,
  nm,
  placeCode,
  signedKt,
  text,
} from './field.js';

export const surfaceState = z
  .enum(['dry', 'damp', 'soft', 'closed'])
  .meta({ description: 'Surface; damp uses the dry figures', examples: ['dry'] });

export const stripClass = z
  .union([z.literal(1), z.literal(2), z.literal(3), z.literal(4)], 'a strip class is 1, 2, 3 or 4')
  .meta({ description: 'Strip class; 1 easiest to 4 hardest', examples: [2] });

const position = {
  latitudeDeg: latitudeDeg('Latitude, WGS84; north is plus', 65.3333),
  longitudeDeg: longitudeDeg('Longitude, WGS84; east is plus', -4.5),
};

const runwaySchema = z
  .strictObject({
    lengthFt: feet('Length', 1900),
    slopePercent: z
      .number()
      .meta({ description: 'Slope along the landing direction', unit: '%', examples: [4] }),
    material: text('What it is made of', 'gravel'),
    oneWay: z.boolean().meta({ description: 'Landed on in one direction only', examples: [false] }),
    approachFromDeg: z
      .number()
      .min(0)
      .lt(360)
      .meta({
        description: 'True bearing of the side from which a one-way strip is approached; drawn on the map',
        unit: 'deg',
        examples: [180],
      })
      .exactOptional(),
    tailwindLimitKt: kt('Most tailwind for landing', 5),
    committalPoint: text(
      'Point on the approach after which landing must be completed',
      '0.7 NM final, scree edge',
    )
      .nullable()
      .meta({
        description: 'Point on the approach after which landing must be completed; null: none',
        examples: ['0.7 NM final, scree edge'],
      }),
  })
  .meta({ id: 'Runway', description: 'The landing ground of a base or a strip' });

const surfacePolicySchema = z
  .strictObject({
    staleAfterHours: hours('Hours after which a surface report no longer counts', 12),
    expected: surfaceState.meta({ description: 'What the planner expects without a fresh report' }),
  })
  .meta({
    id: 'SurfacePolicy',
    description: 'How long a report of the surface holds, and what is expected without one',
  });

export const placeSchema = z
  .strictObject({
    code: placeCode('Code; four capital letters', 'XLOR'),
    name: text('Name', 'Lorn Moss'),
    kind: z.enum(['base', 'strip', 'pad']).meta({
      description: 'base: fuel is drummed here; strip: aeroplanes land; pad: helicopters only',
      examples: ['strip'],
    }),
    ...position,
    elevationFt: elevationFt('Elevation', 760),
    stripClass: stripClass.nullable().meta({
      description: "Strip class; the operator's grade, 1 easiest to 4 hardest; null at a pad",
      examples: [2],
    }),
    runway: runwaySchema.nullable().meta({ description: 'The runway; null at a pad' }),
    landingCapacityDrumsPerDay: drums('Drums that can be unloaded in a day', 6).nullable().meta({
      description:
        'Landing capacity, a day; drums that can be unloaded with the hands present; null: no limit',
      unit: 'drums',
    }),
    surface: surfacePolicySchema,
    helper: text('Who helps with drums there, and when', 'daily').exactOptional(),
    radioTime: clockTime('Daily radio call', '06:50').exactOptional(),
    remarks: text('Anything else', 'rut near the windsock').exactOptional(),
  })
  .meta({ id: 'Place', description: 'A base, a strip or a pad' });

export const surfaceReportSchema = z
  .strictObject({
    place: placeCode('Where; listed in `places`', 'XLOR'),
    state: surfaceState.meta({ description: 'What was reported' }),
    at: instant('When it was said', '2027-06-14T05:50Z'),
    by: text('Who said it', 'strip helper'),
    untilDate: isoDate(
      'Last day on which it is expected to hold; absent: while fresh',
      '2027-06-16',
    ).exactOptional(),
  })
  .meta({ id: 'SurfaceReport', description: 'One word about a surface, with time and source' });

export const hazardNoticeSchema = z
  .strictObject({
    id: text('Number of the notice', 'H-12'),
    places: z
      .array(placeCode('Place; listed in `places`', 'XBIR'))
      .meta({ description: 'Places closed by it', examples: [['XBIR']] }),
    circle: z
      .strictObject({ ...position, radiusNm: nm('Radius', 5) })
      .meta({ id: 'Circle', description: 'An area that is not flown through' })
      .exactOptional(),
    from: instant('Start', '2027-06-15T06:00Z'),
    until: instant('End', '2027-06-16T18:00Z'),
    source: text('Who issued it', "operator's safety desk"),
    text: text('What it says', 'blasting above the strip'),
  })
  .meta({ id: 'HazardNotice', description: 'Places, or everything within a circle, not used for a time' });

export const givenDistanceSchema = z
  .strictObject({
    between: z
      .tuple([placeCode('One end', 'XMER'), placeCode('Other end', 'XLOR')])
      .meta({ description: 'The two places; listed in `places`', examples: [['XMER', 'XLOR']] }),
    distanceNm: nm('Distance, both ways; wins over the computed geodesic', 89),
  })
  .meta({ id: 'GivenDistance', description: 'A distance that the operator has measured or published' });

export const plannedWindSchema = z
  .strictObject({
    from: placeCode('Leg from; listed in `places`', 'XMER'),
    to: placeCode('Leg to; listed in `places`', 'XLOR'),
    dates: z
      .array(isoDate('Day', '2027-06-15'))
      .min(1)
      .meta({ description: 'Days it is planned for; absent: every day', examples: [['2027-06-15']] })
      .exactOptional(),
    componentKt: signedKt('Component along the leg; plus is tailwind', -15),
  })
  .meta({
    id: 'PlannedWind',
    description: 'The wind planned on a leg; without one the plan is made in still air',
  });
