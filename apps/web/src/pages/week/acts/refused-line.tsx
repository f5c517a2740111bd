import type { ApiProblem, Calendar } from '../../../api/index.js';
import { MessageLine, ProblemLine } from '../../../ui/index.js';
import { lastActWords } from '../card/card-words.js';
import type { WeekFlight } from '../week-read.js';

interface RefusedLineProps {
  readonly problem: ApiProblem | undefined;
  /** What was tried: "Decline". */
  readonly act: string;
  readonly flight: WeekFlight | undefined;
  readonly when: Calendar['when'];
}

/** Somebody was quicker: who, what and when. Otherwise the server's own words. */
export const RefusedLine = ({ problem, act, flight, when }: RefusedLineProps) =>
  problem?.kind === 'stale-version' && flight !== undefined ? (
    <QuickerLine act={act} flight={flight} when={when} next="The card shows the flight as it is now." />
  ) : (
    <ProblemLine problem={problem} />
  );

interface QuickerLineProps {
  readonly act: string;
  readonly flight: WeekFlight;
  readonly when: Calendar['when'];
  readonly next: string;
}

export const QuickerLine = ({ act, flight, when, next }: QuickerLineProps) => (
  <MessageLine what={lastActWords(flight, when)} why={`Your ${act} was not sent.`} next={next} />
);
