import { isJetFuelDensity, type KilogramsPerLitre } from '@drumline/units';
import { printFigure } from '../print-figure.js';
import { across, each, type Finding, type Rule } from '../rule.js';

const lbPerKg = 2.2046226;
/** Fuel in the drum by the scale, and by the litres. */
const mostDrumDifferenceKg = 8;

/** Figures that look as if they were written in another unit. */
export const unitDoubts: readonly Rule[] = [
  each('drums', ['policy'], function* (drum, { policy }) {
    const fuelKg = drum.grossKg - drum.tareKg;
    const byLitresKg = drum.litres * policy.bookDensityKgPerLitre;
    if (fuelKg >= 0 && Math.abs(fuelKg - byLitresKg) > mostDrumDifferenceKg)
      yield [
        ['grossKg'],
        `drum ${drum.number} weighs ${printFigure(fuelKg, 'kg')} over its tare; ${printFigure(drum.litres, 'L')} weigh about ${byLitresKg.toFixed(0)} kg.`,
        'Look for lb in place of kg, for water, or for wrong litres.',
      ];
  }),
  across(['policy'], function* ({ policy: { drum, bookDensityKgPerLitre } }) {
    const fullKg = drum.tareKg + drum.fillLitres * bookDensityKgPerLitre;
    if (Math.abs(drum.grossKg - fullKg) > 0.1 * fullKg)
      yield [
        ['policy', 'drum', 'grossKg'],
        `${printFigure(drum.grossKg, 'kg')} for a drum whose tare and fuel weigh ${fullKg.toFixed(0)} kg.`,
        'Look for lb in place of kg.',
      ];
  }),
  // Of the day's temperature: a wider range than at 15 °C.
  across(['policy'], ({ policy: { bookDensityKgPerLitre: book } }) =>
    book < 0.6 || book > 0.9 ? [noFuelOf(book, ['policy', 'bookDensityKgPerLitre'])] : [],
  ),
  each('batches', [], ({ densityAt15KgPerLitre: at15 }) =>
    isJetFuelDensity(at15) ? [] : [noFuelOf(at15, ['densityAt15KgPerLitre'], ' at 15 °C')],
  ),
  each('stripLimits', ['aircraftTypes'], function* (limit, { aircraftTypes }) {
    const type = aircraftTypes.find(({ id }) => id === limit.type);
    const cabin = type?.configurations.find(({ id }) => id === type.drumConfiguration);
    if (cabin === undefined) return;
    for (const field of ['takeoffLb', 'landingLb'] as const)
      if (limit[field] < cabin.operatingWeightLb)
        yield [
          [field],
          `${printFigure(limit[field], 'lb')} at ${limit.place} is less than type ${limit.type} weighs empty, ${printFigure(cabin.operatingWeightLb, 'lb')}.`,
          `Look for kg in place of lb (${printFigure(Math.round(limit[field] * lbPerKg), 'lb')}).`,
        ];
  }),
  each('bookedFlights', [], (flight) =>
    flight.legs.flatMap(({ passengers, passengersKg }, index) => {
      const eachKg = passengersKg / passengers;
      return passengers > 0 && (eachKg < 35 || eachKg > 160)
        ? [
            [
              ['legs', index, 'passengersKg'],
              `${printFigure(Math.round(eachKg), 'kg')} a passenger.`,
              'Look for lb in place of kg.',
            ] as const,
          ]
        : [];
    }),
  ),
  each('bases', [], function* ({ pricePerLitre }) {
    if (pricePerLitre > 0 && pricePerLitre < 10)
      yield [
        ['pricePerLitre'],
        `a price of ${printFigure(pricePerLitre, 'cent/L')}.`,
        `Look for whole units in place of hundredths (${printFigure(pricePerLitre * 100, 'cent/L')}).`,
      ];
  }),
  each('aircraftTypes', [], function* ({ costPerBlockHour }) {
    if (costPerBlockHour < 10_000)
      yield [
        ['costPerBlockHour'],
        `a block hour for ${printFigure(costPerBlockHour, 'cent')}.`,
        'Look for whole units in place of hundredths.',
      ];
  }),
  each('helicopterTasks', ['helicopters'], function* (task, { helicopters }) {
    const helicopter = helicopters.find(({ id }) => id === task.helicopter);
    if (helicopter === undefined) return;
    const byHours = task.hours * helicopter.fuelLitresPerHour;
    if (Math.abs(task.litres - byHours) > 0.25 * byHours)
      yield [
        ['litres'],
        `${printFigure(task.litres, 'L')} in ${printFigure(task.hours, 'h')}; ${task.helicopter} burns about ${byHours.toFixed(0)} L.`,
        'Look at the hours, and for kg or lb in place of litres.',
      ];
  }),
];

const noFuelOf = (density: KilogramsPerLitre, path: Finding[0], at = ''): Finding => [
  path,
  `${printFigure(density, 'kg/L')}${at} is no density of turbine fuel.`,
  'Look at the decimal point, and for lb per US gallon or kg per cubic metre in place of kg per litre.',
];
