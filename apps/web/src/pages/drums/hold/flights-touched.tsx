import { z } from 'zod';
import { useReads } from '../../../api/index.js';
import { StateWord } from '../../../ui/index.js';
import type { HoldEffect } from '../drums-read.js';

interface FlightsTouchedProps {
  readonly flights: HoldEffect['flights'];
  readonly isHeld: boolean;
}

const flightSchema = z.object({ id: z.string(), state: z.string(), needsDecision: z.string().nullable() });

/** Flights that have drums of it aboard or set aside. */
export const FlightsTouched = ({ flights, isHeld }: FlightsTouchedProps) => {
  const known = flights.filter(({ state }) => state !== null);
  const reads = useReads(
    isHeld ? known.map(({ flight }) => `/api/flights/${encodeURIComponent(flight)}`) : [],
    flightSchema,
  );
  const marked = new Set(reads.flatMap(({ value }) => (value?.needsDecision ? [value.id] : [])));
  return (
    <section className="section" aria-label="Flights touched">
      <h2>
        Flights touched <small>{flights.length}</small>
      </h2>
      {flights.length === 0 && <p>No flight has a drum of it aboard or set aside.</p>}
      <ul className="drums-lines">
        {flights.map(({ flight, state, isAboard, numbers }) => (
          <li key={flight}>
            <b>{flight}</b>
            <span>
              {numbers.join(', ')} <small>{isAboard ? 'aboard' : 'set aside'}</small>
            </span>
            <StateWord state={state ?? 'not in the plan'} needsDecision={marked.has(flight)} />
          </li>
        ))}
      </ul>
      {!isHeld && flights.length > 0 && (
        <small>
          Those that have not left are marked Needs a decision when you press; crews that are away are called.
        </small>
      )}
    </section>
  );
};
