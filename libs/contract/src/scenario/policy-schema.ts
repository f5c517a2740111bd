import { z } from 'zod';
import { fuelPolicySchema, passengerRuleSchema } from './aircraft-type-schema.js';
import { dipTableSchema } from './dip-table-schema.js';
import {
  cents,
  centsPerLitre,
  clockTime,
  days,
  hours,
  kg,
  kgPerLitre,
  lb,
  litres,
  minutes,
  percent,
  text,
} from './field.js';
import { stripClass } from './place-schema.js';
import { countToleranceSchema } from './stock-schema.js';

const drumPolicySchema = z
  .strictObject({
    grossKg: kg('Planning weight, full', 180),
    tareKg: kg('Planning tare', 20),
    emptyKg: kg('Weight of an empty carried home', 20),
    fillLitres: litres('Litres in a filled drum', 200),
    brimLitres: litres('Litres it holds to the brim', 216),
    handlingCost: cents('Handling of a drum landed', 900),
  })
  .meta({ id: 'DrumPolicy', description: 'The figures a drum is planned by' });

const recencySchema = z
  .strictObject({
    stripClass,
    days: days('Oldest last landing at that very strip', 90),
  })
  .meta({ id: 'Recency', description: 'Recency asked at the strips of a class' });

const crewRulesSchema = z
  .strictObject({
    reference: text('Document and revision', 'operations manual, crew, revision 6'),
    flightHoursPerDay: hours('Most flight hours in a day', 7),
    dutyHoursPerDay: hours('Most duty hours in a day', 12),
    flightHoursPer7Days: hours('Most flight hours in any 7 days', 32),
    recencyDays: z.array(recencySchema).meta({ description: 'Classes under the recency rule' }),
  })
  .meta({ id: 'CrewRules', description: 'Hours and recency of pilots' });

const flyingDaySchema = z
  .strictObject({
    firstDeparture: clockTime('No departure before', '07:00'),
    lastLanding: clockTime('No landing after, nor after sunset less the margin', '20:00'),
    daylightMarginMinutes: minutes('Margin before sunset', 30),
  })
  .meta({ id: 'FlyingDay', description: 'Times that flights keep to' });

const twoTotalsSchema = z
  .strictObject({
    toleranceLb: lb('Most that two totals of one flight may differ by', 10),
    reference: text('Document and revision', 'operations manual, loading, revision 3'),
  })
  .meta({ id: 'TwoTotals', description: 'Cross-check of the load and of the take-off weight' });

const overdueSchema = z
  .strictObject({
    afterMinutes: minutes('Time after the expected return', 30),
    reference: text('Document and revision', 'operations manual, flight following, revision 2'),
  })
  .meta({ id: 'Overdue', description: 'When a flight that is not back is overdue' });

const densityToleranceSchema = z
  .strictObject({
    percent: percent('Most that the implied density may differ from the batch’s', 1),
    scaleErrorKg: kg('What the scale may be out by', 0.5),
    dipErrorLitres: litres('What the stick may be out by', 1),
    reference: text('Document and revision', 'fuel manual, drums, revision 1'),
  })
  .meta({
    id: 'DensityTolerance',
    description:
      'When a drum that was weighed and measured is suspect: its density against that of its batch',
  });

export const policySchema = z
  .strictObject({
    drum: drumPolicySchema,
    bookDensityKgPerLitre: kgPerLitre('Density for turning own fuel into litres', 0.8),
    fuel: fuelPolicySchema,
    passengers: passengerRuleSchema,
    crew: crewRulesSchema,
    flyingDay: flyingDaySchema,
    countTolerance: countToleranceSchema,
    twoTotals: twoTotalsSchema.exactOptional(),
    dipTables: z
      .array(dipTableSchema)
      .meta({ description: 'Litres by the stick, the usual one first; absent: dips are written in litres' })
      .exactOptional(),
    densityTolerance: densityToleranceSchema.exactOptional(),
    overdue: overdueSchema.exactOptional(),
    changePrice: cents('Price of removing, moving or changing a standing flight', 10000),
    replacementCostPerLitre: centsPerLitre(
      'Worth of a litre missing from the end target; absent: the dearest delivered cost in the territory',
      450,
    ).exactOptional(),
  })
  .meta({ id: 'Policy', description: "The operator's rules, each with its document" });
