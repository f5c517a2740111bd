import { useRef, useState } from 'react';
import { useCalendar, useList, useRead } from '../../../api/index.js';
import { Button, bothOf, EmptyLine, Picture, useFocusBack } from '../../../ui/index.js';
import { PickOne } from '../../../ui/pick-one.js';
import type { Go } from '../address.js';
import {
  batchSchema,
  type HoldEffect,
  holdEffectSchema,
  type StandingHold,
  standingHoldSchema,
} from '../drums-read.js';
import { FlightsTouched } from './flights-touched.js';
import { HeldFoot } from './held-foot.js';
import { HoldForm } from './hold-form.js';
import {
  cachesWords,
  consequencePath,
  latestReleasePath,
  type Subject,
  sizeWords,
  standingHoldOf,
  subjectWords,
} from './hold-words.js';
import { NotHeard, ToHear } from './not-heard.js';
import { PlacesTable } from './places-table.js';
import { latestReleaseSchema, type Release, Released } from './released.js';
import { Scripts } from './scripts.js';

interface HoldSheetProps {
  readonly batch: string | null;
  /** A single drum, where no batch is named. */
  readonly drum: string | null;
  readonly go: Go;
}

/** What a hold does, before it is set; and what it has done, until two people release it. */
export const HoldSheet = ({ batch, drum, go }: HoldSheetProps) => {
  const of: Subject | null = batch !== null ? { batch } : drum !== null ? { drum } : null;
  return (
    <div className="drums-hold">
      {of === null || 'batch' in of ? <ChooseBatch batch={batch} go={go} /> : null}
      {of !== null && <Consequence key={subjectWords(of)} of={of} go={go} />}
    </div>
  );
};

const ChooseBatch = ({ batch, go }: { readonly batch: string | null; readonly go: Go }) => {
  const batches = useList('/api/batches', batchSchema).value;
  const { date } = useCalendar();
  const part = useRef<HTMLDivElement>(null);
  useFocusBack(part);
  const close = () => go({ act: null, batch: null });
  return (
    <div ref={part}>
      <PickOne
        label="Batch to hold"
        value={batch}
        options={batches?.map(({ data }) => [data.id, `${data.id}, filled ${date(data.filledOn)}`] as const)}
        onChange={(chosen) => go({ batch: chosen })}
        onLeave={close}
        placeholder="Type its number"
        nothing="No such batch"
        autoFocus={batch === null}
      />
      {batch === null && (
        <div className="drums-acts">
          <Button onPress={close}>Leave it</Button>
        </div>
      )}
    </div>
  );
};

const Consequence = ({ of, go }: { readonly of: Subject; readonly go: Go }) => {
  const effect = useRead(consequencePath(of), holdEffectSchema);
  const holds = useList('/api/holds', standingHoldSchema);
  const latest = useRead(latestReleasePath(of), latestReleaseSchema);
  return (
    <Picture read={bothOf(bothOf(effect, holds), latest)}>
      {([[found, holding], { release }]) => (
        <Sheet of={of} effect={found} standing={standingHoldOf(holding, of)} release={release} go={go} />
      )}
    </Picture>
  );
};

interface SheetProps {
  readonly of: Subject;
  readonly effect: HoldEffect;
  readonly standing: StandingHold | undefined;
  /** The last one, of before where a hold stands. */
  readonly release: Release | null;
  readonly go: Go;
}

const Sheet = ({ of, effect, standing, release, go }: SheetProps) => {
  const [againAfter, setAgainAfter] = useState<string>();
  const close = () => go({ act: null, batch: null });
  if (standing === undefined && release !== null && release.at !== againAfter)
    return <Released of={of} release={release} onHold={() => setAgainAfter(release.at)} onClose={close} />;
  const places = effect.places.map(({ place }) => place);
  if (effect.drums === 0 && standing === undefined)
    return (
      <EmptyLine>No drum with fuel of {subjectWords(of)} stands anywhere. Nothing would be held.</EmptyLine>
    );
  const isHeld = standing !== undefined;
  const scripts = <Scripts effect={effect} of={of} hold={standing?.id ?? null} />;
  return (
    <>
      <div className="drums-follows">
        <Heading of={of} standing={standing} />
        <p className="drums-finding">
          <b className="plum">{sizeWords(effect)}</b> {cachesWords(effect)} The book does not change.
        </p>
        {/* Once it is held, the calls are what is to be done. */}
        {isHeld && scripts}
        <PlacesTable effect={effect} isHeld={isHeld} />
        <div className="drums-two">
          <FlightsTouched flights={effect.flights} isHeld={isHeld} />
          {standing?.id ? <NotHeard hold={standing.id} /> : <ToHear people={effect.toHear} places={places} />}
        </div>
        {!isHeld && scripts}
      </div>
      {isHeld ? (
        <HeldFoot of={of} drums={effect.drums} onClose={close} />
      ) : (
        <HoldForm of={of} effect={effect} onClose={close} />
      )}
    </>
  );
};

const Heading = ({ of, standing }: Pick<SheetProps, 'of' | 'standing'>) => {
  const { when } = useCalendar();
  if (standing === undefined)
    return (
      <h2>
        Hold {subjectWords(of)} <small>before you press, this is what follows</small>
      </h2>
    );
  const words = subjectWords(of);
  return (
    <h2>
      {words.charAt(0).toUpperCase() + words.slice(1)} is held{' '}
      <small>
        {standing.reason}, {standing.by}, {when(standing.at)}
      </small>
    </h2>
  );
};
