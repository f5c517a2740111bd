import { checkCode } from './check-code.js';
import type { Square, SquareDrum, SquareLeg } from './square.js';
import { writeNumber, writeSurface, writeText } from './square-fields.js';

/** Name and version of the format; another version gets another name. */
export const squareFormat = 'DL1';

/**
 * The text of the code square. Records end with "*", fields with "/"; weights in lb, kg and NM in tenths, legs from 0:
 *
 *   DL1/flight/version/aircraft/type/yyyymmdd/hhmm
 *   L/from/to/NM/surface/load/zero fuel/take-off/landing/nearest limit/spare/leave limit/tailwind kt/latest leave/committal
 *   D/number/position/batch/kg/lb/off after leg        (batch empty: that of the drum before)
 *   C/name/place/lb/first leg/last leg
 *   S/leg/take/numbers to leave                        (take empty: do not go)
 *   check code
 */
export function squareText(square: Square): string {
  const records = squareRecords(square);
  return `${records}${checkCode(records, writeText(square.flight), square.version)}`;
}

/** The check code that the sheet of this square bears. */
export const codeOfSquare = (square: Square): string => squareText(square).slice(-4);

function squareRecords(square: Square): string {
  const { flight, version, aircraft, type, date, departs, legs, drums, cargo, ifSoft } = square;
  const head = [
    squareFormat,
    writeText(flight),
    writeNumber(version),
    writeText(aircraft),
    writeText(type),
    date.replaceAll('-', ''),
    departs.replace(':', ''),
  ];
  const records = [
    head,
    ...legs.map(legRecord),
    ...drums.map((drum, index) => drumRecord(drum, drums[index - 1])),
    ...cargo.map((one) => [
      'C',
      writeText(one.name),
      writeText(one.place),
      ...[one.lb, one.firstLeg, one.lastLeg].map(writeNumber),
    ]),
    ...ifSoft.map(({ leg, take, leave }) => [
      'S',
      writeNumber(leg),
      writeNumber(take),
      leave.map(writeText).join(' '),
    ]),
  ];
  return records.map((fields) => `${fields.join('/')}*`).join('');
}

const legRecord = (leg: SquareLeg): string[] => [
  'L',
  writeText(leg.from),
  writeText(leg.to),
  writeNumber(leg.distanceNm * 10),
  writeSurface(leg.surface),
  ...[leg.loadLb, leg.zeroFuelLb, leg.takeoffLb, leg.landingLb].map(writeNumber),
  writeText(leg.nearest),
  ...[leg.spareLb, leg.leaveLimitLb, leg.tailwindLimitKt].map(writeNumber),
  (leg.latestLeave ?? '').replace(':', ''),
  writeText(leg.committalPoint ?? ''),
];

const drumRecord = (drum: SquareDrum, before: SquareDrum | undefined): string[] => [
  'D',
  writeText(drum.number),
  writeText(drum.position),
  drum.batch === before?.batch ? '' : writeText(drum.batch),
  ...[drum.grossKg * 10, drum.lb, drum.offAfterLeg].map(writeNumber),
];
