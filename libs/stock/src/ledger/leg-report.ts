import type { BroughtHome, LeftAt, Loaded, Movement } from './movement.js';

/** What is said of a drum on a leg of a flight. */
export type Report = Loaded | LeftAt | BroughtHome;

export function isReport(movement: Movement): movement is Report {
  const { kind } = movement;
  return kind === 'loaded' || kind === 'left at' || kind === 'brought home';
}

/** Reports of one drum with the same are reports of one event. */
export const legOf = ({ kind, leg, flight }: Report): string => `${kind} ${leg} ${flight}`;
