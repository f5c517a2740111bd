import { useState } from 'react';
import { useCalendar, useList, useMay } from '../../../api/index.js';
import { CountForm } from '../../../counting/count-form.js';
import { ageInWords, Button, Choice, EmptyLine, Field, Fields, figure, inWords } from '../../../ui/index.js';
import type { NamedCache } from '../cache-list.js';
import { coverWords, dayNames, minimumGap } from '../cache-words.js';
import type { Cache, Caches } from '../caches-read.js';
import { DrawForm } from '../forms/draw-form.js';
import { MinimumForm } from '../forms/minimum-form.js';
import { ProgrammeForm } from '../forms/programme-form.js';
import { DayTable } from '../table/day-table.js';
import { askedWords } from './asked-words.js';
import { CasePanel } from './case-panel.js';
import { caseSchema } from './case-read.js';
import { LastClosedCase } from './last-closed-case.js';
import { RemedyPanel } from './remedy-panel.js';

interface CacheSideProps {
  readonly named: NamedCache;
  readonly caches: Caches;
  readonly onService: (level: '90' | '95' | '99') => void;
}

type Open = 'count' | 'draw' | 'minimum' | 'programme';

/** The chosen cache in full: three stock figures, what they rest on, each day, and what can be done. */
export const CacheSide = ({ named, caches, onService }: CacheSideProps) => {
  const [open, setOpen] = useState<Open>();
  const [done, setDone] = useState<string>();
  const { cache } = named;
  const cases = useList('/api/cases', caseSchema).value;
  const difference = cases?.find(({ place }) => place === cache.place);
  const remedy = caches.slingRemedies.find(({ place }) => place === cache.place);
  const close = (words?: string) => {
    setOpen(undefined);
    setDone(words);
  };
  return (
    <>
      <div className="cache-title">
        <h2>{cache.place}</h2>
        <b className="key">{named.name}</b>
        <span className="slate">{kindWords(named)}</span>
      </div>
      {/* At the top: the focus comes back here when a form goes. */}
      <p role="status" className="cache-done">
        {done}
      </p>
      <ThreeFigures cache={cache} />
      <StandsOn cache={cache} />
      {remedy !== undefined && open === undefined && (
        <RemedyPanel remedy={remedy} onMoved={() => close(`${cache.place}: the sling is moved.`)} />
      )}
      <Minimum cache={cache} caches={caches} onService={onService} />
      {cases === undefined && <p className="checking">Checking for difference cases...</p>}
      {cases !== undefined && difference === undefined && <LastClosedCase place={cache.place} />}
      {difference !== undefined && <CasePanel difference={difference} />}
      <DayTable cache={cache} caches={caches} />
      <Ahead cache={cache} caches={caches} />
      {open === 'count' && <CountForm place={cache.place} drums={drumsOf(cache)} onClose={close} />}
      {open === 'draw' && <DrawForm cache={cache} onClose={close} />}
      {open === 'minimum' && <MinimumForm cache={cache} onClose={close} />}
      {open === 'programme' && <ProgrammeForm cache={cache} dates={caches.dates} onClose={close} />}
      {open === undefined && <Acts onOpen={setOpen} />}
    </>
  );
};

const drumsOf = ({ stock: { sealedDrums, partUsedDrums, emptyDrums } }: Cache) => ({
  sealed: String(sealedDrums),
  open: String(partUsedDrums),
  empty: String(emptyDrums),
});

const kindWords = ({ kind, stripClass }: NamedCache): string =>
  stripClass === null ? kind : `${kind}, class ${stripClass}`;

const ThreeFigures = ({ cache: { stock } }: { readonly cache: Cache }) => (
  <div className="cache-three">
    <Fields>
      <Field label="Book">{figure(stock.bookLitres)} L</Field>
      <Field label="Count" state={stock.lastCount === null ? 'stale' : 'plain'}>
        {stock.lastCount === null ? 'none' : `${figure(stock.lastCount.countedLitres)} L`}
      </Field>
      <Field label="Usable">{figure(stock.usableLitres)} L</Field>
    </Fields>
  </div>
);

const StandsOn = ({ cache }: { readonly cache: Cache }) => {
  const { stock, medevacReserveLitres, capacityDrums } = cache;
  const held = [
    ...(stock.heldLitres > 0 ? [`${inWords(stock.heldLitres, 'L')} held`] : []),
    ...(stock.pastRetestLitres > 0 ? [`${inWords(stock.pastRetestLitres, 'L')} past retest`] : []),
  ];
  return (
    <p className="cache-words">
      {stock.bookLitres === 0 && <b>No fuel here by the book. </b>}
      <CountWords cache={cache} /> {held.length === 0 ? 'Nothing held.' : `${held.join(', ')}.`}{' '}
      {medevacReserveLitres > 0 && (
        <>
          <b>{figure(medevacReserveLitres)} L</b> are medevac reserve, locked:{' '}
          <b>{figure(stock.drawableLitres)} L</b> may be drawn.{' '}
        </>
      )}
      {inWords(stock.sealedDrums, 'drums')} sealed, {stock.partUsedDrums} part used, {stock.emptyDrums} empty;
      room for {inWords(capacityDrums, 'drums')}
      {stock.isOverCapacity && <b className="plum">: more stand here than the site may hold</b>}. Confidence{' '}
      <b>{stock.confidence}</b>
      {stock.why.length > 0 && `: ${stock.why.join(' ')}`}
      <NotReported cache={cache} />
    </p>
  );
};

/** What was to be drawn on a day that is over: it may be gone. */
const NotReported = ({ cache: { notReported } }: { readonly cache: Cache }) => {
  const { day } = useCalendar();
  if (notReported.length === 0) return null;
  const draws = notReported.map(
    ({ date, helicopter, programme, litres }) =>
      `${inWords(litres, 'L')} ${day(date)}, ${helicopter} for ${programme}`,
  );
  return <> Planned and not reported: {draws.join('; ')}. Usable still has it in it.</>;
};

const CountWords = ({ cache: { stock } }: { readonly cache: Cache }) => {
  const { day, time } = useCalendar();
  const last = stock.lastCount;
  if (last === null) return <>Last count: none.</>;
  const { at, by, seenFrom } = last.count;
  return (
    <>
      Counted {day(at)} {time(at)} by {by}, {seenFrom === 'ground' ? 'on the ground' : 'from the air'},{' '}
      {ageInWords(last.ageHours)} old.
    </>
  );
};

const Minimum = ({ cache, caches, onService }: Omit<CacheSideProps, 'named'> & { readonly cache: Cache }) => {
  const { leadTimeUseLitres, safetyStockLitres, reserveLitres, litres } = cache.suggestedMinimum;
  return (
    <div className="cache-minimum">
      <p className="cache-words">
        Minimum <b>{figure(cache.minimumLitres)} L</b>, critical <b>{figure(cache.criticalLitres)} L</b>.
        Suggested minimum <b>{figure(litres)} L</b> = {figure(leadTimeUseLitres)} L use until help comes +{' '}
        {figure(safetyStockLitres)} L for bad luck + {figure(reserveLitres)} L reserve; yours is{' '}
        {minimumGap(cache)}.
      </p>
      <Choice
        label="Suggested to hold in"
        value={String(caches.serviceLevelPercent) as '95'}
        options={[
          ['90', '90 of 100'],
          ['95', '95 of 100'],
          ['99', '99 of 100'],
        ]}
        onChange={onService}
      />
    </div>
  );
};

/** What needs a decision, and where the cache goes without any delivery. */
const Ahead = ({ cache, caches }: Pick<CacheSideProps, 'caches'> & { readonly cache: Cache }) => {
  const { day } = useCalendar();
  const dayName = dayNames(caches.dates, day);
  const asked = askedWords(cache.deliveries);
  return (
    <p className="cache-words">
      {asked !== '' && (
        <>
          <b className="plum">?</b> {asked}{' '}
        </>
      )}
      {coverWords(cache, dayName)}
      {cache.agedOut.length > 0 &&
        ` ${inWords(cache.agedOut.length, 'drums')} fit today will be past retest before the plan would use them: ${cache.agedOut.map(({ number }) => number).join(', ')}.`}{' '}
      {cache.deliveries.length === 0 && <EmptyNote />}
    </p>
  );
};

const EmptyNote = () => <>No flight brings drums here in these days.</>;

const Acts = ({ onOpen }: { readonly onOpen: (open: Open) => void }) => {
  const may = useMay();
  const acts = [
    may('count', 'enter') && (
      <Button key="count" small kind="main" press="c" onPress={() => onOpen('count')}>
        Enter count
      </Button>
    ),
    may('draw', 'enter') && (
      <Button key="draw" small press="d" onPress={() => onOpen('draw')}>
        Add draw
      </Button>
    ),
    may('programme', 'enter') && (
      <Button key="programme" small press="p" onPress={() => onOpen('programme')}>
        Change task or sling
      </Button>
    ),
    may('minimums', 'enter') && (
      <Button key="minimum" small press="m" onPress={() => onOpen('minimum')}>
        Change minimum
      </Button>
    ),
  ].filter(Boolean);
  if (acts.length === 0) return <EmptyLine>You may look here, and enter nothing.</EmptyLine>;
  return <div className="cache-acts">{acts}</div>;
};
