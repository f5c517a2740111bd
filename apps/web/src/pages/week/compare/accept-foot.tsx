import { useState } from 'react';
import { useLocation } from 'wouter';
import { z } from 'zod';
import { newId, post, put, useAct, useCalendar, useList, useMay, useMe } from '../../../api/index.js';
import { Button, Entry, ProblemLine, Tick } from '../../../ui/index.js';
import { RePlan } from '../plan/plan-acts.js';
import type { EndedPlan, FoundPlan } from '../plan/plan-read.js';
import type { Differences } from './differences-read.js';
import { openToLetGo } from './open-to-let-go.js';

const flightSchema = z.object({
  id: z.string(),
  state: z.string(),
  revision: z.number(),
  needsDecision: z.string().nullable(),
});

export type FootFlight = z.output<typeof flightSchema>;

interface AcceptFootProps {
  readonly plan: EndedPlan;
  readonly found: FoundPlan;
  readonly differences: Differences;
}

/** Accept, checked once more on the facts of today by the server; first the frozen flights that cannot be flown. */
export const AcceptFoot = ({ plan, found, differences }: AcceptFootProps) => {
  const may = useMay();
  const { today } = useCalendar();
  const [, navigate] = useLocation();
  const flights = useList(`/api/flights?from=${today}`, flightSchema).value ?? [];
  const stuck = openToLetGo(found, flights);
  const accept = useAct(() => post(`/api/plans/${plan.id}/accept`, {}), '/api/plans');
  if (plan.accepted !== null || !may('accept plan', 'decide')) return null;
  const off =
    stuck.length === 0
      ? undefined
      : `The plan counts on ${stuck.map(({ id }) => id).join(', ')}, which cannot be flown as ${stuck.length === 1 ? 'it stands' : 'they stand'}. Let go and plan again, or keep on the Week board.`;
  return (
    <footer className="compare-foot">
      <ProblemLine problem={accept.problem} />
      {stuck.length > 0 && <LetGo stuck={stuck} note={noteOf(differences)} />}
      <div className="acts">
        <Button
          kind="main"
          press="y"
          busy={accept.isSending}
          offBecause={off}
          onPress={() => void accept.run()}
        >
          {`Accept${linesWords(differences)}`}
        </Button>
        <Button onPress={() => navigate('/week')}>Keep what stands</Button>
        <RePlan kind="plain" />
        <span className="slate">
          Accepting is checked on today's facts. Offered flights are then decided one by one.
        </span>
      </div>
    </footer>
  );
};

const linesWords = ({ removed, moved, added, drumsChanged }: Differences): string => {
  const count = removed.length + moved.length + added.length + drumsChanged.length;
  if (count === 0) return '';
  return count === 1 ? ' line 1' : ` lines 1 to ${count}`;
};

const noteOf = ({ faults }: Differences): string => faults[0]?.text.slice(0, 200) ?? '';

interface LetGoProps {
  readonly stuck: readonly FootFlight[];
  readonly note: string;
}

/** Ticks, a name and a reason: then they are let go in one act, and the plan is made anew without them. */
const LetGo = ({ stuck, note }: LetGoProps) => {
  const { fullName } = useMe();
  const { today } = useCalendar();
  const [, navigate] = useLocation();
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const [why, setWhy] = useState(note);
  const [id] = useState(newId);
  const going = stuck.filter((flight) => ticked.has(flight.id));
  const act = useAct(async () => {
    const flights = going.map(({ id: flight, revision }) => ({ id: flight, revision }));
    await post('/api/flights/let-go', { flights, reason: why.trim() });
    await put(`/api/plans/${id}`, { from: today, seconds: 20, note: why.trim() });
    navigate(`/week/compare/${id}`);
  });
  const off =
    going.length === 0
      ? 'Tick what is let go.'
      : why.trim().length < 3
        ? 'Say why, in a few words.'
        : undefined;
  return (
    <div className="let-go">
      <div className="ticks">
        {stuck.map((flight) => (
          <Tick
            key={flight.id}
            label={`Let go ${flight.id}, ${flight.state}`}
            checked={ticked.has(flight.id)}
            onChange={(on) =>
              setTicked(
                new Set(on ? [...ticked, flight.id] : [...ticked].filter((each) => each !== flight.id)),
              )
            }
          />
        ))}
      </div>
      <Entry
        label={`Why, in the name of ${fullName}`}
        value={why}
        onChange={setWhy}
        input={{ maxLength: 300 }}
      />
      <Button busy={act.isSending} offBecause={off} onPress={() => void act.run()}>
        Let go and plan again
      </Button>
      <ProblemLine problem={act.problem} />
    </div>
  );
};
