import { dateWords, type IsoDate } from '@drumline/units';
import type { PassengerRule } from '../aircraft-type.js';
import { countWords } from '../wording.js';

/** An approval or exemption of the authority, as it stands on file. */
export interface AuthorityApproval {
  readonly number: string;
  readonly authority: string;
  /** What it is for, in its own words. */
  readonly scope: string;
  /** Legs it covers, either way; null: every leg. */
  readonly legs: readonly (readonly [string, string])[] | null;
  /** Aircraft it covers; null: all. */
  readonly aircraft: readonly string[] | null;
  readonly mostDrums: number | null;
  readonly mostPassengers: number | null;
  readonly conditions: string;
  readonly from: IsoDate;
  /** Last day on which it holds. */
  readonly until: IsoDate;
  readonly enteredBy: string;
  /** The second person. */
  readonly confirmedBy: string | null;
}

/** A leg as the rule sees it. */
export interface PassengerLeg {
  readonly from: string;
  readonly to: string;
  readonly date: IsoDate;
  readonly aircraft: string;
  readonly passengers: number;
  /** Filled drums and empties that are not cleaned. */
  readonly drums: number;
}

/** Whether passengers and drums may share a leg. */
export type PassengerAnswer =
  | { readonly allowed: true; readonly by: 'nothing to rule on'; readonly words: null }
  /** For the sheet: number, authority and conditions. */
  | { readonly allowed: true; readonly by: AuthorityApproval; readonly words: string }
  | { readonly allowed: false; readonly words: string };

/**
 * The rule of passengers and drums on one leg: refused, unless an approval of the authority that is on file is cited by
 * its number and covers the leg. Whoever asks cannot set it aside by name or reason.
 */
export function passengersAndDrums(
  leg: PassengerLeg,
  rule: PassengerRule,
  cited: { readonly number: string | null; readonly onFile: readonly AuthorityApproval[] },
): PassengerAnswer {
  if (leg.passengers === 0 || leg.drums === 0)
    return { allowed: true, by: 'nothing to rule on', words: null };
  const where = `${leg.from}-${leg.to}: ${countWords(leg.passengers, 'passenger')} and ${countWords(leg.drums, 'drum')}`;
  if (cited.number === null)
    return {
      allowed: false,
      words: `${where} are refused (${rule.reference}). Only an approval of the authority on file sets this aside.`,
    };
  const approval = cited.onFile.find(({ number }) => number === cited.number);
  if (!approval)
    return { allowed: false, words: `${where} are refused: no approval ${cited.number} is on file.` };
  const why = whyNotCovered(approval, leg);
  return why === null
    ? {
        allowed: true,
        by: approval,
        words: `${where} by approval ${approval.number} of ${approval.authority}, until ${dateWords(approval.until)}. Conditions: ${approval.conditions}`,
      }
    : { allowed: false, words: `${where} are refused: approval ${approval.number} ${why}.` };
}

function whyNotCovered(approval: AuthorityApproval, leg: PassengerLeg): string | null {
  const { confirmedBy, enteredBy, legs, aircraft, mostDrums, mostPassengers } = approval;
  if (confirmedBy === null || confirmedBy === enteredBy) return 'waits for a second person to confirm it';
  if (leg.date < approval.from) return `holds from ${dateWords(approval.from)} only`;
  if (leg.date > approval.until) return `ended on ${dateWords(approval.until)}`;
  if (aircraft !== null && !aircraft.includes(leg.aircraft)) return `does not cover ${leg.aircraft}`;
  if (legs !== null && !legs.some((ends) => ends.includes(leg.from) && ends.includes(leg.to)))
    return 'does not cover this leg';
  if (mostDrums !== null && leg.drums > mostDrums) return `covers ${countWords(mostDrums, 'drum')} at most`;
  if (mostPassengers !== null && leg.passengers > mostPassengers)
    return `covers ${countWords(mostPassengers, 'passenger')} at most`;
  return null;
}
