import type { HoldOf } from '@drumline/stock';
import type { IsoInstant } from '@drumline/units';
import { Injectable } from '@nestjs/common';
import { HoldCallsService } from './hold-calls.service.js';
import { HoldsService } from './holds.service.js';
import { StandingHoldsService } from './standing-holds.service.js';

/** A hold of which some places or crews have still to be told by radio. */
export interface OpenCalls {
  readonly hold: string;
  readonly of: HoldOf;
  readonly reason: string;
  readonly by: string;
  readonly at: IsoInstant;
  readonly drums: number;
  /** Codes of places and numbers of flights. */
  readonly toCall: readonly string[];
  readonly called: number;
}

/** The calls that a hold asks for and nobody has made yet. */
@Injectable()
export class OpenCallsService {
  constructor(
    private readonly standing: StandingHoldsService,
    private readonly holds: HoldsService,
    private readonly calls: HoldCallsService,
  ) {}

  /** The oldest hold first. One that a report of something unsound has set has no calls: its crew knows. */
  async all(): Promise<readonly OpenCalls[]> {
    const found: OpenCalls[] = [];
    for (const { id, of, reason, by, at, drums } of (await this.standing.all()).toReversed()) {
      if (id === null) continue;
      const { places, flights } = await this.holds.effect(of);
      const called = new Set((await this.calls.of(id)).map((call) => call.called));
      const names = [...places.map(({ place }) => place), ...flights.map(({ flight }) => flight)];
      const toCall = names.filter((name) => !called.has(name));
      if (toCall.length > 0)
        found.push({ hold: id, of, reason, by, at, drums, toCall, called: names.length - toCall.length });
    }
    return found;
  }
}
