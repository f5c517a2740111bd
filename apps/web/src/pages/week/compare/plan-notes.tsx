import type { Calendar } from '../../../api/index.js';
import { figure, inWords, MessageLine } from '../../../ui/index.js';
import { undoneWords } from '../board/taken-off.js';
import type { EndedPlan, FoundPlan } from '../plan/plan-read.js';
import { offeredWords, targetWords } from '../plan/plan-words.js';
import type { Differences } from './differences-read.js';
import { keptByIdeasWords } from './lowest-words.js';

/** That it is in force, and what became of its flights. */
export const AcceptedLine = ({
  plan: { accepted },
  differences: { removed, drumsChanged },
}: {
  readonly plan: EndedPlan;
  readonly differences: Differences;
}) => {
  if (accepted === null) return null;
  const { acceptedByName, flights, calledOff, leftOut, changed } = accepted;
  const booked = [...removed, ...drumsChanged.map(({ before }) => before)].filter(
    ({ kind }) => kind === 'booked',
  );
  const gone = undoneWords(calledOff, new Map(booked.map(({ id, drums }) => [id, drums])));
  const left = leftOut.length === 0 ? '' : ` Lines left out: ${leftOut.length}.`;
  const numbers = flights.length === 0 ? 'No flight is new.' : offeredWords(flights);
  return (
    <MessageLine kind="note" what={`Accepted by ${acceptedByName}`} why={`${numbers}${gone}${left}`}>
      {changed.length > 0 && <small>Changed between the plan and its acceptance: {changed.join(' ')}</small>}
    </MessageLine>
  );
};

interface PlanNotesProps {
  readonly found: FoundPlan;
  readonly differences: Differences;
  readonly calendar: Calendar;
}

/** What cannot be kept with the lines that are taken, with the smallest changes that would; what accepting it does not touch. */
export const PlanNotes = ({ found, differences, calendar }: PlanNotesProps) => {
  const { lastOfferedDay, lastDay, cannotKeep, remarks, leftOut } = differences;
  const keptByIdeas = keptByIdeasWords(differences.lowest);
  return (
    <div className="compare-notes">
      {(cannotKeep.length > 0 || keptByIdeas !== null) && (
        <section className="section">
          <h2>
            What it cannot keep, {figure(cannotKeep.length)}
            {leftOut.length > 0 && <small> with the lines that are taken</small>}
          </h2>
          <ul>
            {cannotKeep.map(({ text, blockedBy }) => (
              <li key={text}>
                {text} <span className="slate">Blocked by: {blockedBy}</span>
              </li>
            ))}
            {keptByIdeas !== null && <li>{keptByIdeas}</li>}
          </ul>
        </section>
      )}
      <section className="section">
        <h2>Good to know</h2>
        <ul>
          <li>Target: {targetWords(found.endTarget)}.</li>
          {lastOfferedDay < lastDay && (
            <li>
              Accepting offers the flights to {calendar.day(lastOfferedDay)}; later ones stay ideas, to{' '}
              {calendar.day(lastDay)}.
            </li>
          )}
          {remarks.map((remark) => (
            <li key={remark} className="remark">
              {remark}
            </li>
          ))}
          <li className="on-paper">
            {inWords(remarks.length, 'assumptions and remarks')} of the plan stand on the page, not on this
            print.
          </li>
        </ul>
      </section>
    </div>
  );
};
