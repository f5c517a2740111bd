import './plan.css';
import { useEffect, useState } from 'react';
import { post, type Read, useAct, useMay, useRead, useSettings } from '../../../api/index.js';
import { Button, Field, Fields, figure, ProblemLine } from '../../../ui/index.js';
import { type CoursePoint, withPoint } from './course.js';
import { CourseGraph } from './course-graph.js';
import { isUnderWay, type ListedPlan, listedPlanSchema } from './plan-read.js';
import { progressWords } from './plan-words.js';

const everyMs = 1000;

/** A run, read again every second while it is under way. */
export const usePlanRun = (id: string): Read<ListedPlan> => {
  const read = useRead(`/api/plans/${encodeURIComponent(id)}/progress`, listedPlanSchema);
  const goesOn = read.value !== undefined && isUnderWay(read.value);
  const { again } = read;
  useEffect(() => {
    if (!goesOn) return;
    const timer = setInterval(again, everyMs);
    return () => clearInterval(timer);
  });
  return read;
};

/** Seconds gone, best cost, floor and gap as they move, and Stop. It goes on when the page is left. */
export const PlanUnderWay = ({ run }: { readonly run: ListedPlan }) => {
  const currency = useSettings().value?.data.currency ?? '';
  const may = useMay();
  const course = useCourse(run);
  const stop = useAct(() => post(`/api/plans/${run.id}/cancel`, {}), `/api/plans/${run.id}`);
  const discard = useAct(() => post(`/api/plans/${run.id}/discard`, {}), `/api/plans/${run.id}`);
  const isSending = stop.isSending || discard.isSending;
  const { seconds } = run.request;
  const words = progressWords(run.progress, currency);
  const stopping = run.cancelAsked ? 'Stopping: the best plan so far is handed in.' : undefined;
  return (
    <section className="plan-under-way" aria-label="Plan under way">
      <p className="read" role="status">
        {run.state === 'queued'
          ? 'It waits for its turn. You may leave this page: it goes on.'
          : 'It is being made. You may leave this page: it goes on.'}
      </p>
      <Fields>
        <Field label="Seconds gone" note={`of ${figure(seconds)} s`}>
          {figure(run.secondsGone)} s
        </Field>
        <Field label="Best plan so far, cost">{words.cost}</Field>
        <Field label="Counted for what falls short">{words.counted}</Field>
        <Field label="Both together">{words.best}</Field>
        <Field label="No plan comes to less">{words.bound}</Field>
        <Field label="Gap">{words.gap}</Field>
      </Fields>
      <CourseGraph course={course} seconds={seconds} gone={run.secondsGone} currency={currency} />
      <p className="slate">
        Cost: flight, fuel and handling. What is short or changed is counted at its price, so that the search
        shuns it; nobody pays that. The graph, its floor and the gap are of both together. After the search
        the plan is made steadier and checked, which takes a few seconds more.
      </p>
      {may('run plan', 'decide') && (
        <>
          <div className="acts">
            <Button press="s" busy={isSending} offBecause={stopping} onPress={() => void stop.run()}>
              Stop, keep the best so far
            </Button>
            <Button busy={isSending} onPress={() => void discard.run()}>
              Discard
            </Button>
          </div>
          <p>
            Discard keeps no plan: what was found is lost. Flights that stand are unchanged, and those let go
            for this plan stay offered.
          </p>
        </>
      )}
      <ProblemLine problem={stop.problem ?? discard.problem} />
    </section>
  );
};

/** The course as this page has heard it, kept over a reload. */
const useCourse = ({ id, progress }: ListedPlan): readonly CoursePoint[] => {
  const name = `drumline.course.${id}`;
  const [course, setCourse] = useState<readonly CoursePoint[]>(() => keptCourse(name));
  const next = withPoint(course, progress);
  useEffect(() => {
    if (next === course) return;
    setCourse(next);
    sessionStorage.setItem(name, JSON.stringify(next));
  });
  return next;
};

const keptCourse = (name: string): readonly CoursePoint[] =>
  JSON.parse(sessionStorage.getItem(name) ?? '[]') as readonly CoursePoint[];
