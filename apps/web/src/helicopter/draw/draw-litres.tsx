import type { DrumToOpen } from '@drumline/stock';
import { litres, print } from '@drumline/units';
import { useState } from 'react';
import { Link, useLocation } from 'wouter';
import { clockNow, Keypad, Main, NotKept, Page, Press } from '../../phone/index.js';
import { type CacheView, cacheView, programmeOfTheDay } from '../cache-view.js';
import { FigureBox } from '../figure-box.js';
import { movementsOf } from '../own-movements.js';
import { afterThese } from '../places-now.js';
import { type DrawReport, drawReport } from '../reports.js';
import { figure } from '../words.js';
import { checkedWords, gaugeKept, type JudgedDraw, judgeDraw } from './draw.js';
import { DrawDoubts } from './draw-doubts.js';
import { nextToOpen } from './draw-draft.js';
import { ForWhat } from './draw-for-what.js';
import { DrawLeft } from './draw-left.js';
import type { DrawStep } from './draw-page.js';
import { leftByStick, stickWaits, stickWords } from './draw-stick.js';
import { DrawnDrums } from './drawn-drums.js';

/** What the keys write into. */
export type Box = 'litres' | 'beforeLb' | 'afterLb' | 'leftCm';

export interface LitresStep extends DrawStep {
  readonly rows: readonly DrumToOpen[];
  readonly view: CacheView;
}

/** How much, from which drums, for what; the engine's gauge beside it. */
export const DrawLitres = (step: LitresStep) => {
  const { here, place, draft, setDraft, keeping, rows, view } = step;
  const [box, setBox] = useState<Box | null>('litres');
  const [, go] = useLocation();
  const judged = judgedOf(step);
  const report = reportOf(step, judged);
  const waits = whyItWaits(step, judged) ?? stickWaits(step, judged);
  const next = nextToOpen(view, draft.drums);
  const isAnyway = rows.some(({ fitness }) => fitness !== 'fit');
  const keep = async (): Promise<void> => {
    if (report === null) return;
    if (!(await keeping.keepReport((reporter) => drawReport(reporter, report)))) return;
    setDraft(null);
    go(`/at/${place}`);
  };
  const boxProps = (name: Exclude<Box, 'leftCm'>) => ({
    value: draft[name],
    now: box === name,
    onPress: () => setBox(box === name ? null : name),
  });
  return (
    <Page
      above={`Draw at ${place} · ${here.places.helicopter?.id ?? ''}`}
      title="How much, from which?"
      acts={
        <>
          <NotKept words={keeping.notKept} />
          <Main
            waits={waits}
            small={
              report === null
                ? ''
                : `${print(litres(figure(draft.litres) ?? 0), 'L')}, then ${print(usableAfter(step, report), 'L')} usable at ${place}`
            }
            onPress={() => void keep()}
          >
            {isAnyway ? 'Keep anyway' : 'Keep'}
          </Main>
        </>
      }
    >
      <DrawnDrums rows={rows} judged={judged} />
      <div className="grid tight">
        <div className={next === undefined ? '' : 'two'}>
          <FigureBox label="Drawn" unit="L" {...boxProps('litres')} />
          {next !== undefined && (
            <Press onPress={() => setDraft({ ...draft, checking: next.drum.number, ticked: [] })}>
              Another drum: {next.drum.number}
            </Press>
          )}
        </div>
        <div className="two">
          <FigureBox label="Fuel gauge before" unit="lb" {...boxProps('beforeLb')} />
          <FigureBox label="Fuel gauge after" unit="lb" {...boxProps('afterLb')} />
        </div>
      </div>
      {box !== null && box !== 'leftCm' && (
        <Keypad value={draft[box]} onType={(typed) => setDraft({ ...draft, [box]: typed })} />
      )}
      <DrawLeft step={step} judged={judged} box={box} setBox={setBox} />
      <DrawDoubts step={step} judged={judged} />
      <ForWhat {...step} />
      <Link className="btn inset back" href={`/at/${place}`} onClick={() => setDraft(null)}>
        Draw nothing after all
      </Link>
    </Page>
  );
};

const judgedOf = ({ draft, rows, view, here }: LitresStep): JudgedDraw =>
  judgeDraw(view, rows, {
    draw: {
      litres: figure(draft.litres) ?? 0,
      beforeLb: figure(draft.beforeLb),
      afterLb: figure(draft.afterLb),
    },
    density: here.places.bookDensityKgPerLitre,
  });

const programmeOf = ({ draft, here, place }: LitresStep): string | null =>
  draft.programme ?? programmeOfTheDay(here, place);

const reportOf = (step: LitresStep, judged: JudgedDraw): DrawReport | null => {
  const { split, fromReserveLitres } = judged;
  const { here, person, place, draft, rows } = step;
  const programme = programmeOf(step);
  if (split.draws.length === 0 || programme === null) return null;
  const drawn = rows.filter(({ drum }) => split.draws.some(({ number }) => number === drum.number));
  const isIntoReserve = draft.isDrawnAllTheSame && draft.medevac === null && fromReserveLitres > 0;
  return {
    place,
    helicopter: here.places.helicopter?.id ?? person.crew ?? person.fullName,
    split,
    programme,
    leftByStick: leftByStick(draft, step),
    medevac: draft.medevac === null || draft.medevac.trim() === '' ? null : draft.medevac.trim(),
    note: [
      checkedWords(drawn),
      isIntoReserve ? 'Into the reserve, and for no medevac.' : '',
      gaugeKept(draft),
      stickWords(step, judged),
    ]
      .filter((words) => words !== '')
      .join(' '),
  };
};

const whyItWaits = (step: LitresStep, { fromReserveLitres }: JudgedDraw): string | null => {
  const { draft } = step;
  if ((figure(draft.litres) ?? 0) === 0) return 'Litres first';
  if (programmeOf(step) === null) return 'Choose the programme';
  if (draft.medevac?.trim() === '') return 'Say what the medevac is';
  if (fromReserveLitres > 0 && draft.medevac === null && !draft.isDrawnAllTheSame)
    return 'Into the reserve: say for what';
  return null;
};

/** By the same rules as after Keep. */
const usableAfter = ({ here, place }: LitresStep, report: DrawReport) => {
  const kept = drawReport({ by: '', clock: clockNow(), newId: () => '' }, report);
  return cacheView(afterThese(here, movementsOf(kept)), place).stock.usableLitres;
};
