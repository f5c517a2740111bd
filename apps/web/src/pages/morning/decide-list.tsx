import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { newId, put, useAct, useMay } from '../../api/index.js';
import { MoveSling } from '../../slings/move-sling.js';
import { Button, EmptyLine, ProblemLine } from '../../ui/index.js';
import type { DecideRow } from './decide-row.js';

interface DecideListProps {
  readonly rows: readonly DecideRow[];
  /** Nothing to decide: the last known fact. */
  readonly empty: string;
}

/** The first row holds the focus and its acts; arrows move, Enter opens. */
export const DecideList = ({ rows, empty }: DecideListProps) => {
  const [chosen, setChosen] = useState<string>();
  const list = useRef<HTMLOListElement>(null);
  useFocusOnFirst(list, rows.length > 0);
  if (rows.length === 0) return <EmptyLine>{empty}</EmptyLine>;
  const current = rows.find(({ key }) => key === chosen) ?? rows[0]!;
  return (
    <ol className="morning-rows" ref={list} onKeyDown={(event) => moveByArrow(event, list.current)}>
      {rows.map((row) => (
        <li key={row.key} className="morning-row" aria-current={row === current ? 'true' : undefined}>
          <span className="time">{row.time}</span>
          <div>
            <Head row={row} isCurrent={row === current} onFocus={() => setChosen(row.key)} />
            <p className="said">{row.words}</p>
            {row === current && <Acts row={row} />}
          </div>
        </li>
      ))}
    </ol>
  );
};

interface HeadProps {
  readonly row: DecideRow;
  readonly isCurrent: boolean;
  readonly onFocus: () => void;
}

const Head = ({ row, isCurrent, onFocus }: HeadProps) => {
  const [, navigate] = useLocation();
  const path = 'path' in row.act ? row.act.path : undefined;
  return (
    <button
      type="button"
      className="head"
      tabIndex={isCurrent ? 0 : -1}
      onFocus={onFocus}
      onClick={() => path !== undefined && isCurrent && navigate(path)}
    >
      <b>{row.head}</b> {row.needsDecision && <span className="band">Needs a decision</span>} {row.state}
    </button>
  );
};

const Acts = ({ row: { act, canReplan } }: { readonly row: DecideRow }) => {
  const [, navigate] = useLocation();
  const may = useMay();
  const agree = useAct((id: string) => put(`/api/proposals/${id}/agreement`, {}), '/api/morning');
  const see = useAct(
    (raised: string) =>
      put(`/api/raised-acts/${newId()}`, { raised, act: 'seen', words: 'Seen in the morning.' }),
    '/api/morning',
  );
  return (
    <div className="acts">
      {act.kind === 'open' && (
        <Button small kind="main" onPress={() => navigate(act.path)}>
          {act.label}
        </Button>
      )}
      {act.kind === 'agree' && (
        <Button
          small
          kind="main"
          busy={agree.isSending}
          offBecause={act.mayAgree ? undefined : 'Somebody else with the right has to agree.'}
          onPress={() => void agree.run(act.proposal)}
        >
          Agree
        </Button>
      )}
      {act.kind === 'seen' && may('look at raised', 'enter') && (
        <Button small kind="main" busy={see.isSending} onPress={() => void see.run(act.raised)}>
          Seen
        </Button>
      )}
      {act.kind === 'seen' && act.path !== undefined && (
        <Button small onPress={() => navigate(act.path!)}>
          Open cache
        </Button>
      )}
      {act.kind === 'move sling' && (
        <>
          <MoveSling remedy={act.remedy} />
          <Button small onPress={() => navigate(act.path)}>
            Open cache
          </Button>
        </>
      )}
      {canReplan && may('run plan', 'decide') && (
        <Button small onPress={() => navigate('/week')}>
          Re-plan on the week
        </Button>
      )}
      <ProblemLine problem={agree.problem ?? see.problem} />
    </div>
  );
};

const heads = (list: HTMLElement | null): readonly HTMLElement[] => [
  ...(list?.querySelectorAll<HTMLElement>('.head') ?? []),
];

const moveByArrow = (event: KeyboardEvent, list: HTMLElement | null): void => {
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (step === undefined) return;
  const all = heads(list);
  const at = all.findIndex((each) => each.tabIndex === 0);
  event.preventDefault();
  all[Math.min(all.length - 1, Math.max(0, at + step))]?.focus();
};

/** Once, when the rows are first there, and only where nothing else has the focus. */
const useFocusOnFirst = (list: { readonly current: HTMLElement | null }, areThere: boolean): void => {
  useEffect(() => {
    const { activeElement } = document;
    if (areThere && (activeElement === document.body || activeElement?.id === 'page'))
      heads(list.current)[0]?.focus();
  }, [areThere, list]);
};
