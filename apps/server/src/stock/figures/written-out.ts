import type { IsoInstant } from '@drumline/units';

interface Written {
  readonly minute: IsoInstant;
  readonly json: string;
}

/** JSON text, kept for what it was written from and for a minute: the ages in it are to the minute. */
export class WrittenOut<From extends object> {
  private readonly kept = new WeakMap<From, Written>();

  of(from: From, asOf: IsoInstant, write: (minute: IsoInstant) => string): string {
    const minute = `${asOf.slice(0, 16)}Z`;
    const was = this.kept.get(from);
    if (was?.minute === minute) return was.json;
    const json = write(minute);
    this.kept.set(from, { minute, json });
    return json;
  }
}
