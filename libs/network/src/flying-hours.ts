import type { ClockTime } from '@drumline/units';

/** When the flights of a day are flown, in local time. */
export interface FlyingHours {
  /** IANA name. */
  readonly timeZone: string;
  readonly firstDeparture: ClockTime;
  readonly lastLanding: ClockTime;
}
