import { useState } from 'react';
import { useList, useMay } from '../../../api/index.js';
import { Button } from '../../../ui/index.js';
import { proposalSchema } from '../drums-read.js';
import { Agreement } from './agreement.js';
import { releaseOf, type Subject, subjectWords } from './hold-words.js';
import { ReleaseForm } from './release-form.js';

interface HeldFootProps {
  readonly of: Subject;
  readonly drums: number;
  readonly onClose: () => void;
}

/** What can be done with a hold that stands: two of fuel quality release it, the first proposes and the second agrees. */
export const HeldFoot = ({ of, drums, onClose }: HeldFootProps) => {
  const may = useMay();
  const [isReleasing, setIsReleasing] = useState(false);
  const proposals = useList('/api/proposals', proposalSchema).value;
  const open = proposals && releaseOf(proposals, of);
  const mayRelease = may('release hold', 'decide');
  if (open === undefined && isReleasing)
    return <ReleaseForm of={of} drums={drums} onClose={() => setIsReleasing(false)} />;
  return (
    <>
      {open !== undefined && <Agreement proposal={open} drums={drums} />}
      <div className="drums-acts">
        <Button small onPress={onClose}>
          Close
        </Button>
        {open === undefined && mayRelease && (
          <Button small onPress={() => setIsReleasing(true)}>
            Release {subjectWords(of)}
          </Button>
        )}
      </div>
      {open === undefined && !mayRelease && may('hold', 'view') && (
        <p className="drums-note">Two people of fuel quality release it. Nobody has proposed that yet.</p>
      )}
    </>
  );
};
