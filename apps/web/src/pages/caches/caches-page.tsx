import '../../styles/landscape-print.css';
import '../../styles/level-graph.css';
import './styles/caches.css';
import { useCallback, useDeferredValue, useMemo } from 'react';
import { useLocation, useSearchParams } from 'wouter';
import { type Read, useCalendar, useList, useRead } from '../../api/index.js';
import type { PageProps } from '../../pages.js';
import {
  Button,
  bothOf,
  EmptyLine,
  NotSetUp,
  Picture,
  PrintLink,
  TitleBlock,
  useIsPrinting,
} from '../../ui/index.js';
import { type Choices, chosen, named, onlys, sorts } from './cache-list.js';
import { CachesFields } from './caches-fields.js';
import { type Caches, cachesSchema, type Place, placeSchema } from './caches-read.js';
import { CachesTools } from './caches-tools.js';
import { CacheGrid } from './graph/cache-grid.js';
import { CacheSide } from './side/cache-side.js';
import { AllAsTables } from './table/all-as-tables.js';

export const CachesPage = ({ at }: PageProps) => {
  const { span } = useCalendar();
  const [search, setSearch] = useSearchParams();
  const level = search.get('service') ?? '95';
  const read = useRead(`/api/projections?serviceLevel=${level}`, cachesSchema);
  const places = useList('/api/places', placeSchema);
  const isTables = search.get('view') === 'tables';
  const change = (name: string, value: string) =>
    setSearch(
      (before) => {
        const after = new URLSearchParams(before);
        if (value === '') after.delete(name);
        else after.set(name, value);
        return after;
      },
      { replace: true },
    );
  const [first, last] = [read.value?.dates[0], read.value?.dates.at(-1)];
  return (
    <>
      <TitleBlock
        title="Caches"
        sub={first && last && span(first, last)}
        acts={
          <>
            <Button small press="t" onPress={() => change('view', isTables ? '' : 'tables')}>
              {isTables ? 'As graphs' : 'All as tables'}
            </Button>
            <Button small onPress={() => window.print()}>
              Print
            </Button>
            {at[0] !== undefined && (
              <PrintLink href={`/api/caches/${encodeURIComponent(at[0])}/board.pdf`}>
                {`Print board of ${at[0]}`}
              </PrintLink>
            )}
          </>
        }
      >
        {read.value !== undefined && <CachesFields caches={read.value} />}
      </TitleBlock>
      <Picture read={bothOf(read, places as Read<readonly { readonly data: Place }[]>)}>
        {([caches, list]) => (
          <OpenCaches
            caches={caches}
            places={list.map(({ data }) => data)}
            isTables={isTables}
            at={at[0]}
            onChange={change}
          />
        )}
      </Picture>
    </>
  );
};

interface OpenCachesProps {
  readonly caches: Caches;
  readonly places: readonly Place[];
  readonly isTables: boolean;
  readonly at: string | undefined;
  readonly onChange: (name: string, value: string) => void;
}

const OpenCaches = ({ caches, places, isTables, at, onChange }: OpenCachesProps) => {
  const [search] = useSearchParams();
  const [, navigate] = useLocation();
  const isPrinting = useIsPrinting();
  const choices = choicesOf(search);
  const key = useDeferredValue(JSON.stringify(choices));
  const all = useMemo(() => named(caches.items, places), [caches, places]);
  const shown = useMemo(() => chosen(all, JSON.parse(key) as Choices), [all, key]);
  const select = useCallback(
    (place: string) => navigate(`/caches/${place}${window.location.search}`, { replace: true }),
    [navigate],
  );
  const selected = all.find(({ cache }) => cache.place === at) ?? shown[0];
  if (all.length === 0)
    return (
      <div className="work">
        <NotSetUp
          what="No cache is set up yet"
          why="A cache is a place where drums are kept, with its minimum, critical level and reserve."
          step="caches"
          stepWords="Set-up, Caches"
        />
      </div>
    );
  return (
    <div className="work-and-side on-landscape caches">
      <div className="work">
        <CachesTools
          choices={choices}
          shown={shown.length}
          all={all.length}
          onChange={(changed) => {
            for (const [name, value] of Object.entries(changed))
              onChange(name, isUsual(name, value) ? '' : value);
          }}
        />
        {shown.length === 0 && (
          <EmptyLine>No cache is like that. {all.length} are there: Show all.</EmptyLine>
        )}
        {isTables || isPrinting ? (
          <AllAsTables caches={caches} shown={shown} isPrinting={isPrinting} />
        ) : (
          <CacheGrid caches={caches} shown={shown} selected={selected?.cache.place} onSelect={select} />
        )}
      </div>
      <aside className="side cache-side" aria-label="The chosen cache">
        {selected !== undefined && (
          <CacheSide
            key={selected.cache.place}
            named={selected}
            caches={caches}
            onService={(level) => onChange('service', level === '95' ? '' : level)}
          />
        )}
      </aside>
    </div>
  );
};

const choicesOf = (search: URLSearchParams): Choices => ({
  text: search.get('text') ?? '',
  sort: oneOf(sorts, search.get('sort')) ?? 'first',
  only: oneOf(onlys, search.get('only')) ?? 'all',
  kind: oneOf(['strip', 'pad', 'base'] as const, search.get('kind')) ?? 'all',
});

const oneOf = <Value extends string>(values: readonly Value[], value: string | null): Value | undefined =>
  values.find((each) => each === value);

const isUsual = (name: string, value: string): boolean =>
  value === '' || (name === 'sort' ? value === 'first' : value === 'all');
