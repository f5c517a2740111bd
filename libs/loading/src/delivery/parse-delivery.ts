import type { SurfaceState } from '@drumline/network';
import { isValidDate } from '@drumline/units';
import {
  conditionWords,
  type DeliveredCondition,
  type DeliveredDrum,
  type DeliveryReport,
} from './delivery-report.js';

const surfaceWords: readonly SurfaceState[] = ['dry', 'damp', 'soft', 'closed'];

export type ParsedDelivery =
  | { readonly ok: true; readonly report: DeliveryReport }
  | { readonly ok: false; readonly faults: readonly string[] };

/** Reads a delivery that was typed or pasted in; capitals or not, spaces and line ends as they come. Every fault at once. */
export function parseDelivery(text: string): ParsedDelivery {
  const words = text
    .toUpperCase()
    .split(/[\s,;]+/)
    .filter((word) => word !== '');
  const reader = new DeliveryReader(words);
  const report = reader.read();
  return reader.faults.length === 0 ? { ok: true, report } : { ok: false, faults: reader.faults };
}

class DeliveryReader {
  readonly faults: string[] = [];
  private at = 0;
  private left: DeliveredDrum[] = [];
  private back: DeliveredDrum[] = [];
  private surface: SurfaceState | null = null;
  private by = '';

  constructor(private readonly words: readonly string[]) {}

  read(): DeliveryReport {
    const head = this.readHead();
    while (this.at < this.words.length) this.readSection();
    const numbers = [...this.left, ...this.back].map(({ number }) => number);
    if (numbers.length === 0) this.fault('No drum is named: write LEFT or BACK and the drum numbers.');
    for (const twice of new Set(numbers.filter((number, index) => numbers.indexOf(number) < index)))
      this.fault(`Drum ${twice} is named twice.`);
    if (this.by === '') this.fault('Nobody is named: end with BY and who reports.');
    return { ...head, left: this.left, back: this.back, surface: this.surface, by: this.by };
  }

  private readHead() {
    const flight = /^([A-Z0-9-]+)\/([1-9]\d?)$/.exec(this.word(0));
    if (!flight) this.fault(`"${this.word(0)}" is no flight and leg: begin as F06/1.`);
    const place = this.word(1);
    if (!/^[A-Z][A-Z0-9]{1,7}$/.test(place))
      this.fault(`"${place}" is no place code: write it after the flight.`);
    const date = this.word(2);
    if (!isValidDate(date)) this.fault(`"${date}" is no date: write it as 2027-06-15.`);
    const time = /^([01]\d|2[0-3]):?([0-5]\d)$/.exec(this.word(3));
    if (!time) this.fault(`"${this.word(3)}" is no local time: write it as 0805.`);
    this.at = 4;
    return {
      flight: flight?.[1] ?? '',
      leg: Number(flight?.[2] ?? 0),
      place,
      date,
      time: time ? `${time[1]}:${time[2]}` : '',
    };
  }

  private readSection(): void {
    const word = this.word(this.at++);
    if (word === 'LEFT') this.readDrums(this.left);
    else if (word === 'BACK') this.readDrums(this.back);
    else if (word === 'SURFACE') this.readSurface();
    else if (word === 'BY') this.by = this.word(this.at++);
    else this.fault(`"${word}" is not understood: use LEFT, BACK, SURFACE or BY.`);
  }

  private readDrums(into: DeliveredDrum[]): void {
    while (this.at < this.words.length) {
      const word = this.word(this.at);
      const condition = conditionWords.find(([, said]) => said === word);
      if (condition) this.setCondition(into, condition[0]);
      // "SEAL BROKEN" in full; "GOOD" after a drum.
      else if (!(word === 'BROKEN' && into.at(-1)?.condition === 'seal broken') && word !== 'GOOD') {
        if (!/^[A-Z]*-?\d[A-Z0-9-]*$/.test(word)) return;
        into.push({ number: word, condition: 'sound' });
      }
      this.at++;
    }
  }

  private setCondition(drums: DeliveredDrum[], condition: DeliveredCondition): void {
    const last = drums.pop();
    if (last) drums.push({ ...last, condition });
    else this.fault(`"${this.word(this.at)}" stands before any drum: write it after the drum's number.`);
  }

  private readSurface(): void {
    const word = this.word(this.at++);
    const surface = surfaceWords.find((name) => name.toUpperCase() === word);
    if (surface) this.surface = surface;
    else this.fault(`"${word}" is no surface: use DRY, DAMP, SOFT or CLOSED.`);
  }

  private word(at: number): string {
    return this.words[at] ?? '';
  }

  private fault(text: string): void {
    this.faults.push(text);
  }
}
