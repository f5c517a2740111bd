import { useState } from 'react';
import { useLocation } from 'wouter';
import { newId, post, put, useAct, useCalendar, useMe } from '../../../api/index.js';
import { Button, Entry, ProblemLine, Tick } from '../../../ui/index.js';
import { letGoBeforePlanWords } from '../acts/let-go-words.js';

interface Stuck {
  readonly id: string;
  readonly state: string;
  readonly revision: number;
}

interface LetGoProps {
  readonly stuck: readonly Stuck[];
  /** What stands in their way, to begin the reason with. */
  readonly note: string;
}

/** Ticks, a name and a reason: then they are let go in one act, and the plan is made anew without them. */
export const LetGoFoot = ({ stuck, note }: LetGoProps) => {
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
    await put(`/api/plans/${id}`, {
      from: today,
      seconds: 20,
      letGo: flights.map(({ id }) => id),
      note: why.trim(),
    });
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
      {going.length > 0 && <p>{letGoBeforePlanWords(going)}</p>}
      <Button busy={act.isSending} offBecause={off} onPress={() => void act.run()}>
        Let go and plan again
      </Button>
      <ProblemLine problem={act.problem} />
    </div>
  );
};
