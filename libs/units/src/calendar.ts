/** A calendar day in the scenario's time zone, `YYYY-MM-DD`. */
export type IsoDate = string;

/** An instant in UTC, `YYYY-MM-DDTHH:MM(:SS)Z`. */
export type IsoInstant = string;

/** A local clock time, `HH:MM`. */
export type ClockTime = string;
