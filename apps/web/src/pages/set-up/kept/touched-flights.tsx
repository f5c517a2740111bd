import { useQuery } from '@tanstack/react-query';
import { useCalendar } from '../../../api/index.js';
import { Lines } from '../../../ui/index.js';
import { askTouched, type TouchedFlight } from './touched-read.js';

interface TouchedFlightsProps {
  readonly kind: string;
  readonly id: string;
  readonly data: unknown;
}

/** Which flights could not be flown any more with a change, asked of the server before it is made. */
export const TouchedFlights = ({ kind, id, data }: TouchedFlightsProps) => {
  const asked = useQuery({
    queryKey: ['touched-flights', kind, id, JSON.stringify(data)],
    queryFn: () => askTouched({ kind, id, data }),
    retry: false,
  });
  const { day } = useCalendar();
  if (asked.data === undefined) return null;
  if (asked.data.length === 0) return <p role="status">No flight that stands or is booked is touched.</p>;
  return (
    <div role="status" className="set-up-touched">
      <Lines<TouchedFlight>
        caption="Flights it touches"
        rows={asked.data}
        keyOf={({ flight }) => flight}
        columns={[
          { head: 'Flight', heads: true, cell: ({ flight }) => flight },
          { head: 'Day', cell: ({ date }) => day(date) },
          { head: 'Is', cell: ({ state }) => state },
          { head: 'Way', cell: ({ aircraft, route }) => `${aircraft} ${route.join('-')}` },
          { head: 'Finding', cell: ({ breaks }) => breaks },
        ]}
      />
      <p>
        <small>The change is taken all the same. Flights that stand are marked "Needs a decision".</small>
      </p>
    </div>
  );
};
