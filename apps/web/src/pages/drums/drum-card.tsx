import { useState } from 'react';
import { useCalendar, useList, useMay, useRead } from '../../api/index.js';
import { Button, Field, Fields, LevelMark, MessageLine, Picture } from '../../ui/index.js';
import { CondemnForm } from './acts/condemn-form.js';
import { CorrectForm } from './acts/correct-form.js';
import { RetestForm } from './acts/retest-form.js';
import { WeighForm } from './acts/weigh-form.js';
import type { Go } from './address.js';
import { DrumTimeline } from './drum-timeline.js';
import { batchSchema, type DrumLife, drumLifeSchema } from './drums-read.js';
import { factsOf } from './facts.js';
import { printSheet } from './print-sheet.js';
import { Tag } from './tag.js';

/** One drum: three facts, and what happened to it. */
export const DrumCard = ({ number, go }: { readonly number: string; readonly go: Go }) => {
  const read = useRead(`/api/drums/${encodeURIComponent(number)}`, drumLifeSchema);
  return <Picture read={read}>{(drum) => <OpenDrum drum={drum} go={go} />}</Picture>;
};

type Doing =
  | { readonly act: 'weigh' | 'retest' | 'condemn' }
  | { readonly act: 'correct'; readonly id: string };

const OpenDrum = ({ drum, go }: { readonly drum: DrumLife; readonly go: Go }) => {
  const [doing, setDoing] = useState<Doing | null>(null);
  const batch = useList('/api/batches', batchSchema).value?.find(({ data }) => data.id === drum.batch)?.data;
  const close = () => setDoing(null);
  return (
    <article className="drums-card" aria-label={`Drum ${drum.number}`}>
      <header>
        <h2 className="drums-number">{drum.number}</h2>
        <b className="key">{drum.batch ?? 'batch not known'}</b>
        {drum.alsoKnownAs.length > 0 && <small>also known as {drum.alsoKnownAs.join(', ')}</small>}
      </header>
      <Facts drum={drum} />
      {drum.raised.map((raised) => (
        <MessageLine key={raised.id} kind="note" what={raised.what} why={raised.whatNext} />
      ))}
      <Acts drum={drum} go={go} onDo={(act) => setDoing({ act })} />
      {doing?.act === 'weigh' && <WeighForm drum={drum} batch={batch} onClose={close} />}
      {doing?.act === 'retest' && (
        <RetestForm of={{ drum: drum.number }} batch={drum.batch} onClose={close} />
      )}
      {doing?.act === 'condemn' && <CondemnForm drum={drum} onClose={close} />}
      {doing?.act === 'correct' && (
        <CorrectForm
          entry={[...drum.timeline, ...drum.batchTimeline].find(({ movement }) => movement.id === doing.id)!}
          onClose={close}
        />
      )}
      <DrumTimeline drum={drum} onCorrect={(id) => setDoing({ act: 'correct', id })} />
      <Tag drum={drum} batch={batch} />
    </article>
  );
};

const Facts = ({ drum }: { readonly drum: DrumLife }) => {
  const { today, date } = useCalendar();
  const facts = factsOf(drum, today, date);
  return (
    <div className="drums-facts">
      <Fields>
        <Field label="Where">{facts.where}</Field>
        <Field label="What is in it">{facts.content}</Field>
        <Field label="May it be used" note={facts.because} state={facts.use === 'fit' ? 'plain' : 'grave'}>
          {facts.use === 'HOLD' ? <LevelMark level="held" /> : facts.use}
        </Field>
      </Fields>
    </div>
  );
};

interface ActsProps {
  readonly drum: DrumLife;
  readonly go: Go;
  readonly onDo: (act: 'weigh' | 'retest' | 'condemn') => void;
}

const Acts = ({ drum, go, onDo }: ActsProps) => {
  const may = useMay();
  const mayHold = may('hold', 'enter');
  const notHere = drum.where.kind === 'at' ? undefined : 'It is at no place now.';
  return (
    <div className="drums-acts">
      <Button small press="t" onPress={() => printSheet('tag')}>
        Print tag
      </Button>
      {may('fill', 'enter') && (
        <Button small press="w" offBecause={notHere} onPress={() => onDo('weigh')}>
          Weigh
        </Button>
      )}
      {may('release hold', 'decide') && (
        <Button small onPress={() => onDo('retest')}>
          Retest passed
        </Button>
      )}
      {may('count', 'enter') && (
        <Button small onPress={() => go({ act: 'join' })}>
          Bring together
        </Button>
      )}
      {mayHold && (
        <Button small kind="grave" onPress={() => go({ act: 'hold', batch: null })}>
          Hold this drum
        </Button>
      )}
      {mayHold && drum.batch !== null && (
        <Button small kind="grave" onPress={() => go({ act: 'hold', batch: drum.batch })}>
          Hold its batch
        </Button>
      )}
      {mayHold && drum.condemned === null && (
        <Button small kind="grave" onPress={() => onDo('condemn')}>
          Condemn
        </Button>
      )}
    </div>
  );
};
