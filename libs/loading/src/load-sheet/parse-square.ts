import { type IsoDate, isValidDate, kilograms, knots, nauticalMiles, pounds } from '@drumline/units';
import { checkCode } from './check-code.js';
import type { Square, SquareCargo, SquareDrum, SquareLeg, SquareSoft } from './square.js';
import { RecordReader, SquareFault, writeText } from './square-fields.js';
import { squareFormat } from './square-text.js';

export type ParsedSquare =
  | { readonly ok: true; readonly square: Square; readonly checkCode: string }
  | { readonly ok: false; readonly fault: string };

/** Reads the text of a code square; a fault says what is wrong and what to do. */
export function parseSquare(text: string): ParsedSquare {
  try {
    const records = text.trim().split('*');
    const code = records.pop()!;
    if (!/^[A-Z0-9]{4}$/.test(code))
      throw new SquareFault('it ends without a check code, some of it is missing');
    const square = readRecords(records);
    const expected = checkCode(
      records.map((record) => `${record}*`).join(''),
      writeText(square.flight),
      square.version,
    );
    return code === expected
      ? { ok: true, square, checkCode: code }
      : {
          ok: false,
          fault: `The check code is ${code}, the text gives ${expected}: scan or copy it again.`,
        };
  } catch (error) {
    if (error instanceof SquareFault) return { ok: false, fault: `Not a readable load: ${error.message}.` };
    throw error;
  }
}

function readRecords(records: readonly string[]): Square {
  const [head, ...others] = records;
  const kind = (record: string) => record.split('/')[0]!;
  if (head === undefined || !kind(head).startsWith('DL'))
    throw new SquareFault('it is no code square of Drumline');
  if (kind(head) !== squareFormat)
    throw new SquareFault(
      `it is written in format ${kind(head)}, this reads ${squareFormat}: update this phone`,
    );
  const strange = others.find((record) => !['L', 'D', 'C', 'S'].includes(kind(record)));
  if (strange !== undefined) throw new SquareFault(`record "${kind(strange)}" is not known`);
  const all = (name: string) =>
    others.filter((record) => kind(record) === name).map((record) => new RecordReader(record));
  const reader = new RecordReader(head);
  return {
    flight: reader.text('flight'),
    version: reader.number('version'),
    aircraft: reader.text('aircraft'),
    type: reader.text('type'),
    date: readDate(reader.text('date')),
    departs: reader.clock('departure'),
    legs: all('L').map(readLeg),
    drums: readDrums(all('D')),
    cargo: all('C').map(readCargo),
    ifSoft: all('S').map(readSoft),
  };
}

function readDate(field: string): IsoDate {
  const date = `${field.slice(0, 4)}-${field.slice(4, 6)}-${field.slice(6)}`;
  if (!isValidDate(date)) throw new SquareFault(`"${field}" is no date`);
  return date;
}

function readLeg(reader: RecordReader): SquareLeg {
  const [from, to] = [reader.text('from'), reader.text('to')];
  const distanceNm = nauticalMiles(reader.number('distance') / 10);
  const surface = reader.surface('surface');
  const lb = (name: string) => pounds(reader.number(name));
  const weights = {
    loadLb: lb('load'),
    zeroFuelLb: lb('zero fuel'),
    takeoffLb: lb('take-off'),
    landingLb: lb('landing'),
  };
  const limits = { nearest: reader.text('nearest limit'), spareLb: lb('spare') };
  const leave = reader.numberOrNull('leave limit');
  const tailwind = reader.numberOrNull('tailwind');
  const latest = reader.textOrNull('latest leave');
  return {
    from,
    to,
    distanceNm,
    surface,
    ...weights,
    ...limits,
    leaveLimitLb: leave === null ? null : pounds(leave),
    tailwindLimitKt: tailwind === null ? null : knots(tailwind),
    latestLeave: latest === null ? null : `${latest.slice(0, 2)}:${latest.slice(2)}`,
    committalPoint: reader.textOrNull('committal point'),
  };
}

function readDrums(readers: readonly RecordReader[]): SquareDrum[] {
  let batchBefore = '';
  return readers.map((reader) => {
    const number = reader.text('number');
    const position = reader.text('position');
    const batch = reader.text('batch') || batchBefore;
    batchBefore = batch;
    return {
      number,
      position,
      batch,
      grossKg: kilograms(reader.number('kg') / 10),
      lb: pounds(reader.number('lb')),
      offAfterLeg: reader.number('leg'),
    };
  });
}

const readCargo = (reader: RecordReader): SquareCargo => ({
  name: reader.text('name'),
  place: reader.text('place'),
  lb: pounds(reader.number('lb')),
  firstLeg: reader.number('first leg'),
  lastLeg: reader.number('last leg'),
});

const readSoft = (reader: RecordReader): SquareSoft => ({
  leg: reader.number('leg'),
  take: reader.numberOrNull('drums to take'),
  leave: (reader.textOrNull('drums to leave') ?? '').split(' ').filter((number) => number !== ''),
});
