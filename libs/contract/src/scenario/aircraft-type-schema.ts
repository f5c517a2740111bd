import { z } from 'zod';
import {
  cents,
  inches,
  lb,
  lbPerHour,
  minutes,
  order,
  percent,
  placeCode,
  reference,
  speedKt,
  text,
} from './field.js';

const loadPlaceSchema = z
  .strictObject({
    id: text('Name of the place in the cabin', 'R1L'),
    armIn: inches('Arm, aft of the datum', 132),
    limitLb: lb('Floor limit', 450),
    unloadOrder: order('1 comes out of the door first; places with the same number in any order', 3),
  })
  .meta({ id: 'LoadPlace', description: 'A place in the cabin: of a drum, a seat or freight' });

const configurationSchema = z
  .strictObject({
    id: text('Id', 'drums'),
    name: text('Name', 'seats out, drum boards'),
    operatingWeightLb: lb('Weight ready to fly, without payload and fuel', 4250),
    operatingArmIn: inches('Arm of that weight', 138),
    drumPositions: z.array(loadPlaceSchema).meta({ description: 'Standing places of drums, from the front' }),
    seats: z.array(loadPlaceSchema).meta({ description: 'Seats' }),
    freightPlaces: z.array(loadPlaceSchema).meta({ description: 'Places for freight' }),
  })
  .meta({ id: 'CabinConfiguration', description: 'Seats in or out, boards, nets' });

const envelopePointSchema = z
  .strictObject({
    weightLb: lb('Weight', 5600),
    forwardIn: inches('Forward limit', 131),
    aftIn: inches('Aft limit', 143.8),
  })
  .meta({ id: 'EnvelopePoint', description: 'Balance limits at a weight; linear between two points' });

export const aircraftTypeSchema = z
  .strictObject({
    id: text('Type', 'A'),
    name: text('Name', 'single turboprop STOL'),
    maxTakeoffLb: lb('Maximum take-off weight', 7150),
    maxLandingLb: lb('Maximum landing weight', 7000),
    maxZeroFuelLb: lb('Maximum zero-fuel weight', 6650),
    cruiseKt: speedKt('Cruise, true airspeed', 140),
    fuelFlowLbPerHour: lbPerHour('Fuel flow in cruise', 330),
    climbAllowanceLb: lb('Added to the trip fuel of each leg', 25),
    taxiFuelLb: lb('Burned before the first take-off of a flight', 25),
    fuelCapacityLb: lb('Usable fuel', 1900),
    fuelArmIn: inches('Arm of the fuel', 142),
    envelope: z.array(envelopePointSchema).min(2).meta({ description: 'Balance limits, by rising weight' }),
    configurations: z.array(configurationSchema).min(1).meta({ description: 'Cabin configurations' }),
    drumConfiguration: text('Configuration of flights that carry drums', 'drums'),
    tipArmIn: inches('Arm behind which it sits on its tail', 150)
      .nullable()
      .meta({
        description: 'Centre of gravity behind which it sits on its tail; null: not published, not checked',
        unit: 'in',
        examples: [150],
      }),
    costPerBlockHour: cents('Cost of a block hour, fuel included', 98000),
    landingFee: cents('Fee of a landing', 0),
    turnRoundMinutes: minutes('Time on the ground at a landing', 35),
    reference: text('Document and revision that the figures come from', 'invented type card A, revision 3'),
    note: text('Anything else', 'double cargo door, left').exactOptional(),
  })
  .meta({ id: 'AircraftType', description: "One aeroplane type, as the operator's approved tables give it" });

const softPenaltySchema = z
  .strictObject({
    takeoffLessLb: lb('Off the take-off limit when soft', 500),
    landingLessLb: lb('Off the landing limit when soft', 450),
  })
  .meta({ id: 'SoftPenalty', description: 'What a soft surface takes off the limits' });

export const stripLimitSchema = z
  .strictObject({
    place: placeCode('Where; listed in `places`', 'XLOR'),
    type: reference('aircraftTypes', 'Type', 'A'),
    takeoffLb: lb('Take-off limit, dry or damp', 6900),
    landingLb: lb('Landing limit, dry or damp', 6900),
    whenSoft: z
      .union(
        [softPenaltySchema, z.literal('closed')],
        'give "closed", or { "takeoffLessLb": ..., "landingLessLb": ... } in lb',
      )
      .meta({ description: 'What a soft surface takes off the limits, or "closed"', examples: ['closed'] }),
    reference: text('Table and revision', 'strip table, revision 12'),
  })
  .meta({ id: 'StripLimit', description: 'A type at a place. A type without a line is not approved there' });

export const fuelPolicySchema = z
  .strictObject({
    reference: text('Document and revision', 'operations manual, fuel, revision 4'),
    contingencyPercent: percent('Contingency, on the trip fuel', 10),
    contingencyFloorMinutes: minutes(
      'Contingency is never less than this time at cruise flow; absent: no floor',
      5,
    ).exactOptional(),
    finalReserveMinutes: minutes('Final reserve', 45),
    roundUpToLb: lb('Ramp fuel is rounded up to this step', 10),
    fixedMinutesPerLeg: minutes('Added to the air time of a leg for the block time', 3),
  })
  .meta({ id: 'FuelPolicy', description: "The operator's fuel policy" });

export const passengerRuleSchema = z
  .strictObject({
    drumsWithPassengers: z
      .literal('refused')
      .meta({ description: 'A leg with a passenger carries no drum', examples: ['refused'] }),
    reference: text('Document and revision', 'operations manual, cargo, revision 2'),
  })
  .meta({ id: 'PassengerRule', description: 'Passengers and drums on one leg' });
