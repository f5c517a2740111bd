import { FaultTable } from '../files/fault-table.js';
import { faultWhere } from './limit-cells.js';
import { changedDrums, type DrumsFrom, type LimitFault } from './payload-read.js';

interface DraftFindingsProps {
  readonly faults: readonly LimitFault[];
  readonly inForce: readonly DrumsFrom[];
  readonly draft: readonly DrumsFrom[];
  readonly isDraft: boolean;
}

/** Faults first, then what the draft would change in drums. */
export const DraftFindings = ({ faults, inForce, draft, isDraft }: DraftFindingsProps) => {
  if (!isDraft) return null;
  const changes = changedDrums(inForce, draft);
  return (
    <section className="section" aria-label="What the draft would change">
      <h2>What the draft would change</h2>
      <FaultTable caption="Faults" faults={faults.map((fault) => ({ ...fault, path: faultWhere(fault) }))} />
      {faults.length === 0 && (
        <div role="status" className="read">
          {changes.length === 0 ? (
            <p>No flight carries more or fewer drums.</p>
          ) : (
            <ul>
              {changes.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          )}
        </div>
      )}
    </section>
  );
};
