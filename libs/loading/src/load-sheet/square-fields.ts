import type { SurfaceState } from '@drumline/network';

/*
 * Fields of the code square. A QR code holds 45 signs most compactly: 0-9 A-Z space $ % * + - . / :. Of these "*" ends a
 * record, "/" a field, and "%" begins a sign that is not among them (four hexadecimal digits).
 */

/** A text in capitals, with every other sign as %XXXX. */
export const writeText = (text: string): string =>
  text
    .toUpperCase()
    .replace(/[^0-9A-Z $+\-.:]/g, (sign) =>
      [...Array(sign.length).keys()]
        .map((at) => `%${sign.charCodeAt(at).toString(16).toUpperCase().padStart(4, '0')}`)
        .join(''),
    );

export const readText = (field: string): string =>
  field.replace(/%([0-9A-F]{4})/g, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));

/** A whole number; empty for null. Negative with a minus. */
export const writeNumber = (value: number | null): string =>
  value === null ? '' : String(Math.round(value));

const surfaces: readonly (readonly [SurfaceState, string])[] = [
  ['dry', 'D'],
  ['damp', 'P'],
  ['soft', 'S'],
  ['closed', 'C'],
];

export const writeSurface = (surface: SurfaceState): string =>
  surfaces.find(([name]) => name === surface)![1];

/** Reads the fields of one record in order; every fault names the record and the field. */
export class RecordReader {
  private next = 1;
  private readonly fields: readonly string[];

  constructor(record: string) {
    this.fields = record.split('/');
  }

  text(name: string): string {
    const field = this.fields[this.next++];
    if (field === undefined) throw new SquareFault(`record ${this.fields[0]} has no ${name}`);
    return readText(field);
  }

  number(name: string): number {
    const field = this.text(name);
    if (!/^-?\d+$/.test(field))
      throw new SquareFault(`record ${this.fields[0]}: ${name} is "${field}", not a whole number`);
    return Number(field);
  }

  numberOrNull(name: string): number | null {
    return this.fields[this.next] === '' ? this.skip() : this.number(name);
  }

  textOrNull(name: string): string | null {
    return this.text(name) || null;
  }

  clock(name: string): string {
    const field = this.text(name);
    if (!/^([01]\d|2[0-3])[0-5]\d$/.test(field))
      throw new SquareFault(`record ${this.fields[0]}: ${name} is "${field}", not a time as 0710`);
    return `${field.slice(0, 2)}:${field.slice(2)}`;
  }

  surface(name: string): SurfaceState {
    const field = this.text(name);
    const found = surfaces.find(([, sign]) => sign === field);
    if (!found) throw new SquareFault(`record ${this.fields[0]}: ${name} is "${field}"`);
    return found[0];
  }

  private skip(): null {
    this.next++;
    return null;
  }
}

/** The text is no square, or a damaged one. */
export class SquareFault extends Error {}
